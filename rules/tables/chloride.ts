/** Water-soluble chloride that new concrete may contain, by corrosion class. */
import { defineTable, type Row } from '../model/table.ts';
import { aci318of14, aci318of19 } from './documents.ts';
import type { AciEdition } from './exposure.ts';

export interface ChlorideMaximum {
  readonly class: string;
  /** Percent by mass. */
  readonly nonprestressed: number;
  readonly prestressed: number;
  readonly of: 'cementitious materials' | 'cement';
}

const limits = [
  { class: 'C0', nonprestressed: 1, prestressed: 0.06 },
  { class: 'C1', nonprestressed: 0.3, prestressed: 0.06 },
  { class: 'C2', nonprestressed: 0.15, prestressed: 0.06 },
] as const;

export const chlorideMaxima: Readonly<Record<AciEdition, readonly Row<ChlorideMaximum>[]>> = {
  'aci-318-19': defineTable<ChlorideMaximum>({
    origin: aci318of19('Table 19.3.2.1'),
    rows: limits.map((row) => ({ ...row, of: 'cementitious materials' })),
  }),
  'aci-318-14': defineTable<ChlorideMaximum>({
    origin: aci318of14('Table 19.3.2.1', 'from memory'),
    rows: limits.map((row) => ({ ...row, of: 'cement' })),
  }),
};
