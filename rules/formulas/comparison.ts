/** How a stated number is held against a limit: near enough counts as met, and a soft metric twin counts as equal. */
import { convert, type Quantity } from '../model/quantity.ts';
import { airRounding, strengthTolerance, wcmTolerance } from '../tables/judgment.ts';
import type { StrengthPair } from '../tables/strength-pair.ts';

/** Binary arithmetic must not decide: 0.455 is 0.45 and the tolerance. */
const noise = 1e-9;

export const isWcmAbove = (stated: number, limit: number): boolean => limit + wcmTolerance.value + noise < stated;

/** Compared in the unit that was written: 31 MPa is not short of 4500 psi. */
export function isStrengthBelow(stated: Quantity<'stress'>, minimum: StrengthPair): boolean {
  const least = (stated.unit === 'psi' ? minimum.inchPound : minimum.metric).amount;
  return stated.amount + noise < least * (1 - strengthTolerance.value);
}

/** Reaches the strength in either unit; without tolerance, for thresholds that a code states exactly. */
export function isStrengthAtLeast(stated: Quantity<'stress'>, threshold: StrengthPair): boolean {
  return threshold.inchPound.amount <= convert(stated.amount, stated.unit, 'psi') + noise;
}

/** Exceeds the strength, compared in the unit that was written. */
export function isStrengthAbove(stated: Quantity<'stress'>, threshold: StrengthPair): boolean {
  return (stated.unit === 'psi' ? threshold.inchPound : threshold.metric).amount + noise < stated.amount;
}

/** Percent of air, or any other share that is read to a tenth. */
export const isAirBelow = (stated: number, floor: number): boolean => stated + airRounding.value + noise < floor;

export const isAirAbove = (stated: number, ceiling: number): boolean => ceiling + airRounding.value + noise < stated;

/** Shares with no tolerance: caps on supplementary materials, chloride. */
export const isShareAbove = (stated: number, cap: number): boolean => cap + noise < stated;

/** Days are exact. */
export const isShorter = (stated: number, least: number): boolean => stated + noise < least;
