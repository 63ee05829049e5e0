/** Amounts as messages print them. */
import { say } from '../formulas/unit-twins.ts';
import type { Measure } from '../model/measure.ts';
import { percent, ratio } from '../model/quantity.ts';
import type { AirBand } from '../model/requirement.ts';

/** "4.5 to 7.5 percent". */
export const sayBand = ({ low, high }: AirBand): string => `${low} to ${say(percent(high))}`;

/** "6 ± 1.5 percent"; a document that gives a range is quoted with its range. */
export function sayTarget(band: AirBand): string {
  return band.byRange ? sayBand(band) : `${band.target} ± ${say(percent(band.target - band.low))}`;
}

/** "0.45". */
export const sayRatio = (amount: number): string => say(ratio(amount));

/** "25 percent". */
export const sayShare = (amount: number): string => say(percent(amount));

/** A value in its author's words; a figure from a table cell gets the unit that the column's head gives it. */
export function sayWritten({ asWritten, target, dimension, unit }: Measure): string {
  return target === undefined || /[^\d.,\s]/.test(asWritten) ? asWritten : say({ dimension, unit, amount: target });
}
