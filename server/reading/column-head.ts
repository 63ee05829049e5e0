/** A column's head gives its cells what they leave out: the unit, and a tolerance that holds for the whole column. */
import type { Measure } from '../../rules/model/measure.ts';
import { type Unit, units } from '../../rules/model/quantity.ts';
import { type MeasureRead, measuresIn } from './measure.ts';
import { tokensOf } from './tokens.ts';
import { unitAt } from './unit-at.ts';

/** A bare "6" under "Total air, % (tolerance ± 1.5)" is 6 ± 1.5 percent. */
export function underHead(value: MeasureRead, header: string): MeasureRead {
  if (header === '' || value.measure.unit !== '') return value;
  const { target, min, max } = value.measure;
  const amount = target ?? max ?? min ?? 0;
  const unit = unitIn(header, amount);
  if (!unit) return value;
  const tolerance = value.measure.plus === undefined && target !== undefined ? toleranceIn(header) : undefined;
  const measure = {
    ...value.measure,
    unit,
    dimension: units[unit].dimension,
    ...(tolerance !== undefined && { plus: tolerance, minus: tolerance }),
  };
  return { ...value, measure: measure as Measure };
}

/** The first unit in the head; a ratio has none. */
function unitIn(header: string, amount: number): Unit | undefined {
  if (/w ?\/ ?c|ratio/i.test(header)) return undefined;
  const tokens = tokensOf(header, 0, header.length);
  for (let at = 0; at < tokens.length; at++) {
    const before = tokens[at - 1]?.text === '-' ? tokens[at - 2] : tokens[at - 1];
    // A unit in a head stands behind a comma, a bracket or its noun: "Air, %", "Strength (psi)", "days".
    const found = unitAt(tokens, at, { value: amount, fraction: true });
    if (
      found &&
      found.times === 1 &&
      !(before?.kind === 'number') &&
      (found.to - at > 1 || (tokens[at]?.text.length ?? 0) > 1 || tokens[at]?.text === '%')
    )
      return found.unit;
  }
  return undefined;
}

function toleranceIn(header: string): number | undefined {
  const tokens = tokensOf(header, 0, header.length);
  const found =
    measuresIn(header, tokens, new Set()).find(
      ({ measure }) => measure.plus !== undefined && measure.target === undefined,
    ) ?? bareTolerance(header);
  return typeof found === 'number' ? found : found?.measure.plus;
}

const bareTolerance = (header: string): number | undefined => {
  const match = /(?:±|\+\/-|plus or minus)\s*(\d+(?:\.\d+)?)/.exec(header);
  return match ? Number(match[1]) : undefined;
};
