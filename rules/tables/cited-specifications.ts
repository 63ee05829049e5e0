/** Which duties a specification supplies when a section cites it as a requirement: a cited specification speaks. */
import { defineTable } from '../model/table.ts';

/** Something a section would otherwise have to say itself. */
export type Duty =
  | 'exposure'
  | 'air'
  | 'w-cm'
  | 'strength'
  | 'air-tolerance'
  | 'air-test'
  | 'site-water'
  | 'curing'
  | 'cold-weather'
  | 'evaporation'
  | 'hold-off'
  | 'surface-water';

const contents = {
  document: 'contents of the cited document',
  edition: 'any',
  clause: 'whole',
  known: 'seen second hand',
} as const;

/** Designations as the reader gives them; a guide (302.1R, 305R, 306R, 308R, 201.2R) supplies nothing and is not here. */
export const citedSpecifications = defineTable<{ readonly designation: string; readonly supplies: readonly Duty[] }>({
  origin: contents,
  rows: [
    { designation: 'ACI 306.1', supplies: ['cold-weather'] },
    { designation: 'ACI 305.1', supplies: ['evaporation'] },
    { designation: 'ACI 308.1', supplies: ['curing'] },
    { designation: 'ASTM C94', supplies: ['air-tolerance', 'site-water'] },
    {
      designation: 'ACI 301',
      supplies: ['curing', 'cold-weather', 'evaporation', 'air-tolerance', 'air-test', 'site-water'],
    },
    {
      designation: 'CSA A23.1',
      supplies: ['curing', 'cold-weather', 'evaporation', 'air-tolerance', 'air-test', 'site-water'],
    },
    {
      designation: 'EN 206',
      supplies: ['curing', 'cold-weather', 'evaporation', 'air-tolerance', 'air-test', 'site-water'],
    },
    {
      // A public agency's standard specifications answer for the mixture, its tests and the weather; we ask one question instead.
      designation: 'agency standard specifications',
      supplies: [
        'exposure',
        'air',
        'w-cm',
        'strength',
        'air-tolerance',
        'air-test',
        'site-water',
        'curing',
        'cold-weather',
        'evaporation',
        'hold-off',
        'surface-water',
      ],
    },
  ],
});
