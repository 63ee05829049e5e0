/** A value as a specification states it: bounds, target and tolerance in the unit that was written. */
import { convert, type Dimension, type Unit, type UnitOf } from './quantity.ts';

/**
 * Normal form: "6 percent" is a target; "not over 0.45" a max; "5 to 8" min and max; "6 ± 1.5" target, plus, minus.
 * All numbers are in `unit`. A bare value stays a target: whether it is meant as a minimum is for rules to say.
 */
export interface Measure<D extends Dimension = Dimension> {
  readonly dimension: D;
  readonly unit: UnitOf<D>;
  readonly min?: number;
  readonly max?: number;
  readonly target?: number;
  readonly plus?: number;
  readonly minus?: number;
  readonly asWritten: string;
  /** The same value in the other unit system, as written beside it. */
  readonly also?: readonly Measure<D>[];
}

/** The lowest amount the text accepts, in `unit` (default: the measure's own); undefined where it sets no floor. */
export function lowest<D extends Dimension>(measure: Measure<D>, unit?: UnitOf<D>): number | undefined {
  const own = measure.min ?? (measure.target === undefined ? undefined : measure.target - (measure.minus ?? 0));
  return own === undefined ? undefined : convert(own, measure.unit as Unit, (unit ?? measure.unit) as Unit);
}

/** The highest amount the text accepts, in `unit`; undefined where it sets no ceiling. */
export function highest<D extends Dimension>(measure: Measure<D>, unit?: UnitOf<D>): number | undefined {
  const own = measure.max ?? (measure.target === undefined ? undefined : measure.target + (measure.plus ?? 0));
  return own === undefined ? undefined : convert(own, measure.unit as Unit, (unit ?? measure.unit) as Unit);
}

/** The measure with its dimension in the type, or undefined where it is of another dimension. */
export function asOf<D extends Dimension>(measure: Measure, dimension: D): Measure<D> | undefined {
  return (measure.dimension as Dimension) === dimension ? (measure as unknown as Measure<D>) : undefined;
}
