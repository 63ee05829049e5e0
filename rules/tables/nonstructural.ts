/** Lawful minimum strength of concrete that carries no structure, by freezing class: IBC 1904.2. */
import { defineTable } from '../model/table.ts';
import { aci318of14, aci318of19, ibc } from './documents.ts';
import type { AciEdition } from './exposure.ts';
import { figure } from './figure.ts';
import { type StrengthPair, strengthPair } from './strength-pair.ts';

export interface NonstructuralStrength {
  readonly class: string;
  /** Inch-pound as printed; the metric number is the exact one printed beside it. */
  readonly strength: StrengthPair;
}

/** Air is entrained as ACI 318 asks; no w/cm is asked for. */
export const nonstructuralStrengths = defineTable<NonstructuralStrength>({
  origin: ibc('1904.2'),
  rows: [
    { class: 'F0', strength: strengthPair(2500, 17.2) },
    { class: 'F1', strength: strengthPair(3000, 20.7) },
    { class: 'F2', strength: strengthPair(3500, 24.1) },
    { class: 'F3', strength: strengthPair(3500, 24.1) },
  ],
});

/** Where ACI 318 itself leaves slabs on ground out. */
export const groundSlabsLeftOut = {
  'aci-318-19': figure('slabs on ground that carry no structure are left out', aci318of19('1.4.8')),
  'aci-318-14': figure('slabs on ground that carry no structure are left out', aci318of14('1.4', 'from memory')),
} as const satisfies Record<AciEdition, unknown>;
