/** One finding as a specifier reads it: where, how much it matters, what to do, and on whose word. */
import type { Severity } from '../../rules/model/project.ts';
import type { Finding } from '../checking.ts';
import { count, heading, indented, labelled, list, type Page, wrap } from './layout.ts';
import { sayCitation, sayStep } from './words.ts';

export interface FindingOptions {
  readonly working: 'shown' | 'folded';
}

/** Columns from the margin to the labels, and from there to the text. */
const margin = 4;
const labelWidth = 10;

export function findingLines(finding: Finding, page: Page, { working }: FindingOptions): readonly string[] {
  const { style, width } = page;
  const [place] = heading(finding.place, page);
  const rows = [...points(finding), ...(working === 'shown' ? workings(finding) : [])];
  return [
    `  ${place}  ${style[finding.severity](levelWords[finding.severity])}`,
    ...indented(wrap(finding.message, width - margin), margin),
    ...rows.flatMap(([label, text]) => pointLines(label, text, width)),
    ...indented([style.faint(`rule ${finding.rule}`)], margin),
  ];
}

export const levelWords: Readonly<Record<Severity, string>> = {
  must: 'MUST change',
  should: 'SHOULD change',
  note: 'NOTE',
};

type Point = readonly [label: string, text: string];

function pointLines(label: string, text: string, width: number): readonly string[] {
  return indented(labelled(label, text, width - margin, labelWidth), margin);
}

/** What every reader wants: found, required, why, on whose word, and the words to write instead. */
function points({ elements, found, required, detail, because, citations, suggestion }: Finding): readonly Point[] {
  return [
    ...(1 < elements.length ? [['For', list(elements)] as const] : []),
    ...(found ? [['Found', found] as const] : []),
    ...(required ? [['Required', required] as const] : []),
    ...(detail ? [['Why', detail] as const] : []),
    ...because.map(({ place, message }): Point => ['See', [place, message].filter(Boolean).join(': ')]),
    ...citations.map((citation, index): Point => [index === 0 ? 'By' : '', sayCitation(citation)]),
    ...(suggestion ? [['Write', sayEdits(suggestion, found)] as const] : []),
  ];
}

function sayEdits({ title, edits }: NonNullable<Finding['suggestion']>, found: string | undefined): string {
  const text = edits.map((edit) => edit.text.trim()).join('\n');
  if (text === '') return title;
  const replaces = found !== undefined && edits.every(({ span }) => span.start < span.end);
  // A value alone says too little; a whole clause says it all.
  return replaces && text.length <= shortWords ? `${text} in place of ${found}` : text;
}

const shortWords = 60;

/** How the required value was reached, and why the element counts as exterior. */
function workings({ steps, evidence }: Finding): readonly Point[] {
  const reached = steps.map((step, index): Point => [index === 0 ? 'Working' : '', sayStep(step)]);
  const counted = evidence.map(({ element, band, points, cues }, index): Point => {
    const because = cues.map((cue) => `${cue.words} (${[cue.place, signed(cue.points)].filter(Boolean).join(', ')})`);
    const words = `${element}: ${band}, ${count(points, 'point')}`;
    return [index === 0 ? 'Exposure' : '', because.length === 0 ? words : `${words}: ${because.join('; ')}`];
  });
  return [...reached, ...counted];
}

const signed = (points: number): string => (points < 0 ? `${points}` : `+${points}`);
