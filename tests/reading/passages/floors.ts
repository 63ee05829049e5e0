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

export const floors: Readonly<Partial<Record<FactKind, Floor>>> = {};
