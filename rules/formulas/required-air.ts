/** The air that a freezing class asks for, by aggregate size and strength. */
import { inUnit, type Quantity } from '../model/quantity.ts';
import type { AirBand } from '../model/requirement.ts';
import type { Row } from '../model/table.ts';
import type { Step, Worked } from '../model/worked.ts';
import { type AirTarget, airReduction, airTargets, airTolerance, largestUsualAggregate } from '../tables/air.ts';
import type { AciEdition } from '../tables/exposure.ts';
import { sizeTolerance } from '../tables/judgment.ts';
import { isStrengthAbove, isStrengthAtLeast } from './comparison.ts';
import { bothUnits } from './unit-twins.ts';

export type FreezingClass = 'F1' | 'F2' | 'F3';

export interface AirInput {
  readonly class: FreezingClass;
  readonly edition: AciEdition;
  /** Nominal maximum size; absent: what holds for every usual size. */
  readonly aggregate?: Quantity<'length'>;
  /** Specified f'c, for the permitted reduction. */
  readonly strength?: Quantity<'stress'>;
}

/** With no size, or one between two rows, the most lenient band: the lowest target, and the widest ends. */
export function requiredAir(input: AirInput): Worked<AirBand> {
  const rows = rowsFor(input);
  const targets = rows.map((row) => row[input.class]);
  const [target, most] = [Math.min(...targets), Math.max(...targets)];
  const [low, high] = [target - airTolerance.value, most + airTolerance.value];
  const reduction = permittedReduction(input);
  const reducedTarget = reduction && target - reduction.points;
  const { origin } = rows[0];
  return {
    value: { target, low, high, ...(reducedTarget !== undefined && { reducedTarget }), origin },
    steps: [
      { text: `Class ${input.class}, ${saySizes(input, rows)}: ${target} percent total air`, origin },
      {
        text: `tolerance ± ${airTolerance.value} points as delivered: ${low} to ${high} percent`,
        origin: airTolerance.origin,
      },
      ...(reduction ? [reduction.step] : []),
    ],
  };
}

type Rows = readonly [Row<AirTarget>, ...Row<AirTarget>[]];

/** The row of the size, its two neighbours where it is between rows, or all usual rows where it is not given. */
function rowsFor({ edition, aggregate }: AirInput): Rows {
  const table = airTargets[edition];
  if (!aggregate)
    return table.filter(({ size }) => size.amount <= largestUsualAggregate.value.amount) as unknown as Rows;
  const size = inUnit(aggregate, 'mm');
  const exact = table.find(({ metric }) => Math.abs(metric.amount - size) <= sizeTolerance.value * metric.amount);
  if (exact) return [exact];
  const smaller = table.findLast(({ metric }) => metric.amount < size);
  const larger = table.find(({ metric }) => size < metric.amount);
  return [smaller, larger].filter((row) => row !== undefined) as unknown as Rows;
}

function saySizes({ aggregate }: AirInput, rows: Rows): string {
  const sizes = rows.map(({ size }) => bothUnits(size));
  if (!aggregate)
    return `aggregate not given, what holds for every size up to ${bothUnits(largestUsualAggregate.value)}`;
  if (rows.length === 1) return `${sizes[0]} aggregate`;
  return `${bothUnits(aggregate)} aggregate, between ${sizes.join(' and ')}`;
}

function permittedReduction({ edition, strength }: AirInput): { points: number; step: Step } | undefined {
  if (!strength) return undefined;
  const { value, origin } = airReduction[edition];
  const reaches = value.from === 'above' ? isStrengthAbove : isStrengthAtLeast;
  if (!reaches(strength, value.strength)) return undefined;
  const text = `f'c of ${bothUnits(strength)} is ${value.from} ${bothUnits(value.strength.inchPound)}: the target may be ${value.points} point lower`;
  return { points: value.points, step: { text, origin } };
}
