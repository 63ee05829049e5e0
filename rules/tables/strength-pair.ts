/** A strength in inch-pound and the metric number that goes with it. */
import { megapascals, psi, type Quantity } from '../model/quantity.ts';

export interface StrengthPair {
  readonly inchPound: Quantity<'stress'>;
  readonly metric: Quantity<'stress'>;
}

export const strengthPair = (inchPound: number, metric: number): StrengthPair =>
  Object.freeze({ inchPound: psi(inchPound), metric: megapascals(metric) });
