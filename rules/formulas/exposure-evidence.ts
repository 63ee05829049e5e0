/** How surely an element stands outdoors and freezes: the points of its cues, counted once a line of the scale. */
import type { Cue } from '../model/specification.ts';
import type { Step } from '../model/worked.ts';
import { type CuePoints, cuePoints, type EvidenceBand, evidenceBands } from '../tables/evidence.ts';

export interface CountedCue {
  readonly cue: Cue;
  readonly points: number;
}

export interface ExposureEvidence {
  readonly points: number;
  readonly band: EvidenceBand;
  /** The cues that gave the points, in the order they were read. */
  readonly counted: readonly CountedCue[];
  readonly steps: readonly Step[];
}

/** Of each line of the scale the strongest cue counts; a finish speaks only where no noun says where the element is. */
export function exposureEvidence(cues: readonly Cue[]): ExposureEvidence {
  const scored = cues.map((cue) => ({ cue, row: rowOf(cue) }));
  const isPlaced = scored.some(({ row }) => row.says === 'noun');
  const heard = isPlaced ? scored.filter(({ row }) => row.says !== 'finish') : scored;
  const counted = strongestPerLine(heard).map(({ cue, row }) => ({ cue, points: row.points }));
  const points = counted.reduce((sum, each) => sum + each.points, 0);
  const { band } = evidenceBands.find(({ from }) => from <= points) as (typeof evidenceBands)[number];
  return { points, band, counted, steps: working(counted, points, band) };
}

const rowOf = ({ kind }: Cue): (typeof cuePoints)[number] =>
  cuePoints.find((row) => row.kind === kind) as (typeof cuePoints)[number];

interface Scored {
  readonly cue: Cue;
  readonly row: CuePoints;
}

/** Repeats are not added: of equals the first counts. */
function strongestPerLine(heard: readonly Scored[]): readonly Scored[] {
  const best = new Map<CuePoints['line'], Scored>();
  for (const each of heard) {
    const known = best.get(each.row.line);
    if (!known || Math.abs(known.row.points) < Math.abs(each.row.points)) best.set(each.row.line, each);
  }
  return heard.filter((each) => best.get(each.row.line) === each);
}

function working(counted: readonly CountedCue[], points: number, band: EvidenceBand): readonly Step[] {
  const [{ origin }] = cuePoints as readonly [(typeof cuePoints)[number]];
  const lines = counted.map(({ cue, points }) => ({
    text: `"${cue.words}"${cue.place ? ` (${cue.place})` : ''}: ${signed(points)}`,
  }));
  return [...lines, { text: `${signed(points)} points: ${band}`, origin }];
}

const signed = (points: number): string => (0 < points ? `+${points}` : String(points).replace('-', '−'));
