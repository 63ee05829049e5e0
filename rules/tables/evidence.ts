/** Points of the evidence that an element stands outdoors and freezes, and the bands they fall into. */
import type { Cue } from '../model/specification.ts';
import { defineTable } from '../model/table.ts';
import { practice } from './documents.ts';

export interface CuePoints {
  readonly kind: Cue['kind'];
  readonly points: number;
  /** Cues of one line are not added: the strongest counts. */
  readonly line:
    | 'freeze class'
    | 'no-freeze class'
    | 'noun'
    | 'weather'
    | 'section'
    | 'indoors'
    | 'broomed'
    | 'trowelled';
  /** `noun`: says where the element is. `finish`: counts only where no noun does. */
  readonly says: 'class' | 'noun' | 'surroundings' | 'finish';
}

export const cuePoints = defineTable<CuePoints>({
  origin: practice('evidence of exposure'),
  rows: [
    { kind: 'freeze-class', points: 10, line: 'freeze class', says: 'class' },
    { kind: 'outdoor-noun', points: 6, line: 'noun', says: 'noun' },
    { kind: 'either-noun', points: 4, line: 'noun', says: 'noun' },
    { kind: 'weather-word', points: 4, line: 'weather', says: 'surroundings' },
    { kind: 'outdoor-section', points: 3, line: 'section', says: 'surroundings' },
    { kind: 'outdoor-finish', points: 2, line: 'broomed', says: 'finish' },
    { kind: 'indoor-finish', points: -2, line: 'trowelled', says: 'finish' },
    { kind: 'indoor-noun', points: -4, line: 'indoors', says: 'noun' },
    { kind: 'no-freeze-class', points: -10, line: 'no-freeze class', says: 'class' },
  ],
});

export type EvidenceBand = 'strong exterior' | 'medium exterior' | 'unknown' | 'medium interior' | 'strong interior';

/** From this many points upward, best first. */
export const evidenceBands = defineTable<{ readonly band: EvidenceBand; readonly from: number }>({
  origin: practice('evidence of exposure'),
  rows: [
    { band: 'strong exterior', from: 6 },
    { band: 'medium exterior', from: 3 },
    { band: 'unknown', from: -2 },
    { band: 'medium interior', from: -5 },
    { band: 'strong interior', from: Number.NEGATIVE_INFINITY },
  ],
});
