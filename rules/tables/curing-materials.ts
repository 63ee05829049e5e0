/** Standards for the materials that cure: membranes and sheets, as designations are written. */
import { defineTable } from '../model/table.ts';
import { astmC309 } from './documents.ts';

export interface CuringMaterial {
  readonly designation: string;
  readonly material: 'compound' | 'sheet';
}

export const curingMaterials = defineTable<CuringMaterial>({
  origin: astmC309('scope'),
  rows: [
    { designation: 'ASTM C309', material: 'compound' },
    {
      designation: 'ASTM C1315',
      material: 'compound',
      origin: { document: 'ASTM C1315', edition: '19', clause: 'scope', known: 'seen second hand' },
    },
    {
      designation: 'AASHTO M 148',
      material: 'compound',
      origin: { document: 'AASHTO M 148', edition: 'current', clause: 'scope', known: 'seen second hand' },
    },
    {
      designation: 'ASTM C171',
      material: 'sheet',
      origin: { document: 'ASTM C171', edition: '20', clause: 'scope', known: 'seen second hand' },
    },
  ],
});
