/** Methods that measure the air of fresh concrete, as designations are written. */
import { defineTable } from '../model/table.ts';

export interface AirTest {
  readonly designation: string;
  readonly measures: string;
}

const scope = { edition: 'current', clause: 'scope' } as const;

export const airTests = defineTable<AirTest>({
  origin: { document: 'ASTM C231/C231M', ...scope, known: 'seen second hand' },
  rows: [
    { designation: 'ASTM C231', measures: 'pressure, dense aggregate' },
    {
      designation: 'ASTM C173',
      measures: 'volume, lightweight or porous aggregate',
      origin: { document: 'ASTM C173/C173M', ...scope, known: 'seen second hand' },
    },
    {
      designation: 'AASHTO T 152',
      measures: 'pressure',
      origin: { document: 'AASHTO T 152', ...scope, known: 'seen second hand' },
    },
    {
      designation: 'AASHTO T 196',
      measures: 'volume',
      origin: { document: 'AASHTO T 196', ...scope, known: 'seen second hand' },
    },
    {
      designation: 'AASHTO T 395',
      measures: 'sequential pressure',
      origin: { document: 'AASHTO T 395', ...scope, known: 'from memory' },
    },
    {
      designation: 'CSA A23.2-4C',
      measures: 'pressure',
      origin: { document: 'CSA A23.2', ...scope, clause: '4C', known: 'from memory' },
    },
    {
      designation: 'EN 12350-7',
      measures: 'pressure',
      origin: { document: 'EN 12350-7', ...scope, known: 'from memory' },
    },
  ],
});
