/** A quantity in both unit systems as the trade prints it: "4500 psi (31 MPa)", "3/4 in. (19 mm)", "50 °F (10 °C)". */
import { convert, convertDifference, type Dimension, type Quantity, quantity, type Unit } from '../model/quantity.ts';
import { type StrengthPair, strengthPair } from '../tables/strength-pair.ts';
import { customaryPairs, type PairedUnits, type Rounding, roundings, softLengths } from '../tables/unit-pairs.ts';

/** A quantity of whichever dimension. */
export interface AnyQuantity {
  readonly dimension: Dimension;
  readonly amount: number;
  readonly unit: Unit;
}

export type UnitSystem = 'ip' | 'si' | 'both';

/** Inch-pound first, the metric twin in brackets; a quantity without a twin is said once. */
export function bothUnits(value: AnyQuantity): string {
  return inSystem(value, 'both');
}

export function inSystem(value: AnyQuantity, system: UnitSystem): string {
  const other = twin(value);
  if (!other) return say(value);
  const [inchPound, metric] = isInchPound(value) ? [value, other] : [other, value];
  if (system === 'ip') return say(inchPound);
  return system === 'si' ? say(metric) : `${say(inchPound)} (${say(metric)})`;
}

/** A temperature difference: 50 °F of cooling is 28 °C, not 10 °C. */
export function differenceInSystem(amount: number, unit: 'degF' | 'degC', system: UnitSystem): string {
  const degrees = (to: 'degF' | 'degC') =>
    say(quantity(to === unit ? amount : Math.round(convertDifference(amount, unit, to)), to));
  if (system === 'ip') return degrees('degF');
  return system === 'si' ? degrees('degC') : `${degrees('degF')} (${degrees('degC')})`;
}

/** The quantity in the other unit system, by the customary pair where there is one, else converted and rounded. */
export function twin(value: AnyQuantity): AnyQuantity | undefined {
  const units = unitsOf(value);
  if (!units) return undefined;
  const [from, to] = isInchPound(value) ? (['inchPound', 'metric'] as const) : (['metric', 'inchPound'] as const);
  const pair = units.pairs.find((each) => isSame(each[from], value.amount));
  return quantity(pair ? pair[to] : roughly(value.amount, units, from), units[to]);
}

/** A strength with its customary twin. */
export function pairOf(value: Quantity<'stress'>): StrengthPair {
  const other = (twin(value) ?? value).amount;
  return value.unit === 'psi' ? strengthPair(value.amount, other) : strengthPair(other, value.amount);
}

/** "4500 psi", "3/4 in.", "50 °F", "7 days", "6 percent", "0.45". */
export function say(value: AnyQuantity): string {
  const { dimension, amount, unit } = value;
  if (dimension === 'ratio') return amount.toFixed(2);
  const number = unit === 'in' ? sayInches(amount) : sayNumber(amount);
  const name = words[unit] ?? unit;
  return `${number} ${amount === 1 && name.endsWith('s') ? name.slice(0, -1) : name}`;
}

/** Inches as a mixed fraction down to sixteenths, "1-1/2"; what is no such fraction stays decimal. */
export function sayInches(amount: number): string {
  const whole = Math.floor(amount);
  let [top, bottom] = [(amount - whole) * 16, 16];
  if (!Number.isInteger(top)) return sayNumber(amount);
  if (top === 0) return String(whole);
  while (top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  return whole === 0 ? `${top}/${bottom}` : `${whole}-${top}/${bottom}`;
}

const words: Readonly<Partial<Record<Unit, string>>> = {
  in: 'in.',
  min: 'minutes',
  h: 'hours',
  d: 'days',
  degF: '°F',
  degC: '°C',
  'sack/yd3': 'sacks/yd3',
};

/** Whole thousands, tenths of hundreds, else at most three decimals: no trace of arithmetic, 5076 psi and not 5076.321. */
function sayNumber(amount: number): string {
  const decimals = 1000 <= amount ? 0 : 100 <= amount ? 1 : 3;
  return String(Number(amount.toFixed(decimals)));
}

const unitsOf = ({ unit }: AnyQuantity): PairedUnits | undefined =>
  customaryPairs.find(({ inchPound, metric }) => unit === inchPound || unit === metric);

const isInchPound = ({ unit }: AnyQuantity): boolean => customaryPairs.some(({ inchPound }) => unit === inchPound);

const isSame = (a: number, b: number): boolean => Math.abs(a - b) < 1e-6;

function roughly(amount: number, units: PairedUnits, from: 'inchPound' | 'metric'): number {
  const to = from === 'inchPound' ? 'metric' : 'inchPound';
  const soft = softLengths.find(({ inchPound }) => inchPound === units.inchPound);
  const inchPound = from === 'inchPound' ? amount : convert(amount, units.metric, units.inchPound);
  if (!soft || inchPound < soft.from) return rounded(convert(amount, units[from], units[to]), units[to]);
  return rounded(from === 'inchPound' ? amount * soft.factor : amount / soft.factor, units[to]);
}

function rounded(amount: number, unit: Unit): number {
  const rounding = roundings.find((each) => each.unit === unit) as Rounding;
  const step = rounding.steps.find(({ under }) => amount < under)?.to ?? 1;
  return Number((Math.round(amount / step) * step).toPrecision(9));
}
