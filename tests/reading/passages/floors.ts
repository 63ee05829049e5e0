/** What is reached in whole percent, by kind of fact, where there is something to count; it may only rise. */
import type { FactKind } from '../../../rules/model/fact.ts';

export interface Floor {
  /** Of what the passages say, with its value, force and subject. */
  readonly found?: number;
  /** Of what was read. */
  readonly right?: number;
  /** Of the silences asked for. */
  readonly silent?: number;
}

export const floors: Readonly<Partial<Record<FactKind, Floor>>> = {
  accelerator: { found: 100, right: 100, silent: 100 },
  'aggregate-size': { found: 100, right: 100, silent: 100 },
  'air-content': { found: 100, right: 100, silent: 100 },
  'air-entrainment': { found: 83, right: 100, silent: 100 },
  'bleed-water': { found: 100, right: 100, silent: 100 },
  'cement-content': { silent: 100 },
  chloride: { silent: 100 },
  choice: { found: 100, right: 100, silent: 100 },
  'cold-protection': { silent: 100 },
  'cold-weather': { found: 100, right: 100, silent: 100 },
  'concrete-temperature': { silent: 100 },
  curing: { silent: 100 },
  'curing-duration': { found: 94, right: 100, silent: 100 },
  'curing-method': { found: 93, right: 93, silent: 95 },
  'curing-strength': { silent: 100 },
  'curing-temperature': { found: 100, right: 100, silent: 100 },
  'deicer-hold-off': { found: 100, right: 100, silent: 100 },
  'deicer-use': { found: 100, right: 100, silent: 100 },
  deicers: { found: 100, right: 100, silent: 100 },
  'dry-cement': { found: 100, right: 100, silent: 100 },
  'dry-shake': { right: 0, silent: 100 },
  drying: { silent: 100 },
  elsewhere: { found: 100, right: 100 },
  evaporation: { silent: 100 },
  'evaporation-retarder': { found: 100, right: 100, silent: 100 },
  'exposure-class': { found: 100, right: 100, silent: 100 },
  finish: { found: 91, right: 97, silent: 100 },
  'finishing-tool': { silent: 100 },
  fogging: { found: 100, right: 100, silent: 100 },
  'over-finishing': { found: 100, right: 100, silent: 100 },
  scm: { found: 100, right: 100, silent: 100 },
  sealer: { found: 100, right: 100 },
  'sealer-instead': { found: 100, right: 100, silent: 100 },
  season: { found: 100, right: 100 },
  'site-water': { found: 100, right: 100, silent: 100 },
  slope: { silent: 100 },
  slump: { found: 100, right: 100, silent: 100 },
  strength: { found: 95, right: 100, silent: 100 },
  'surface-water': { found: 91, right: 100, silent: 100 },
  test: { found: 100, right: 100, silent: 100 },
  'w-cm': { found: 100, right: 100, silent: 100 },
};
