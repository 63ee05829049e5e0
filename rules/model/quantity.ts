/** Numbers with their unit; the dimension is in the type, so days cannot be compared with megapascals. */

/**
 * Every unit the trade's text uses, with its dimension and the factor to that dimension's base unit.
 * Factors are exact or those of NIST SP 811 (2008) Appendix B. Temperatures have an offset: value = (x - zero) * factor.
 */
export const units = {
  '': { dimension: 'ratio', factor: 1, zero: 0 },
  percent: { dimension: 'share', factor: 1, zero: 0 },
  psi: { dimension: 'stress', factor: 0.00689475729, zero: 0 },
  MPa: { dimension: 'stress', factor: 1, zero: 0 },
  in: { dimension: 'length', factor: 25.4, zero: 0 },
  ft: { dimension: 'length', factor: 304.8, zero: 0 },
  mm: { dimension: 'length', factor: 1, zero: 0 },
  m: { dimension: 'length', factor: 1000, zero: 0 },
  min: { dimension: 'duration', factor: 1 / 1440, zero: 0 },
  h: { dimension: 'duration', factor: 1 / 24, zero: 0 },
  d: { dimension: 'duration', factor: 1, zero: 0 },
  degF: { dimension: 'temperature', factor: 5 / 9, zero: 32 },
  degC: { dimension: 'temperature', factor: 1, zero: 0 },
  'lb/yd3': { dimension: 'content', factor: 0.593276421, zero: 0 },
  'kg/m3': { dimension: 'content', factor: 1, zero: 0 },
  'sack/yd3': { dimension: 'content', factor: 0.593276421 * 94, zero: 0 },
  'gal/sack': { dimension: 'water-per-sack', factor: 1, zero: 0 },
  'gal/yd3': { dimension: 'water-per-volume', factor: 4.95113, zero: 0 },
  'L/m3': { dimension: 'water-per-volume', factor: 1, zero: 0 },
  'lb/ft2/h': { dimension: 'evaporation', factor: 4.88242764, zero: 0 },
  'kg/m2/h': { dimension: 'evaporation', factor: 1, zero: 0 },
  'ft2/gal': { dimension: 'coverage', factor: 0.0245424, zero: 0 },
  'm2/L': { dimension: 'coverage', factor: 1, zero: 0 },
  'in/ft': { dimension: 'slope', factor: 100 / 12, zero: 0 },
  lb: { dimension: 'mass', factor: 0.45359237, zero: 0 },
  kg: { dimension: 'mass', factor: 1, zero: 0 },
  gal: { dimension: 'volume', factor: 3.785411784, zero: 0 },
  L: { dimension: 'volume', factor: 1, zero: 0 },
  mph: { dimension: 'speed', factor: 1.609344, zero: 0 },
  'km/h': { dimension: 'speed', factor: 1, zero: 0 },
} as const;

export type Unit = keyof typeof units;
export type Dimension = (typeof units)[Unit]['dimension'];
export type UnitOf<D extends Dimension> = {
  [U in Unit]: (typeof units)[U]['dimension'] extends D ? U : never;
}[Unit];
export type DimensionOf<U extends Unit> = (typeof units)[U]['dimension'];

/** An amount in a unit of one dimension; frozen. */
export interface Quantity<D extends Dimension = Dimension> {
  readonly dimension: D;
  readonly amount: number;
  readonly unit: UnitOf<D>;
}

export function quantity<U extends Unit>(amount: number, unit: U): Quantity<DimensionOf<U>> {
  return Object.freeze({
    dimension: units[unit].dimension,
    amount,
    unit,
  }) as unknown as Quantity<DimensionOf<U>>;
}

/** The same quantity expressed in another unit of its dimension. `inUnit(days(7), 'psi')` does not compile. */
export function inUnit<D extends Dimension>(value: Quantity<D>, unit: UnitOf<D>): number {
  return convert(value.amount, value.unit as Unit, unit as Unit);
}

/** The amount `from` one unit `to` another of the same dimension; throws a RangeError where the dimensions differ. */
export function convert(amount: number, from: Unit, to: Unit): number {
  if (from === to) return amount;
  const [a, b] = [units[from], units[to]];
  if (a.dimension !== b.dimension) throw new RangeError(`${from} is a unit of ${a.dimension}, ${to} of ${b.dimension}`);
  return ((amount - a.zero) * a.factor) / b.factor + b.zero;
}

/** A temperature difference of `amount` in the other unit: no zero point, so 50 °F of cooling is 28 °C, not 10 °C. */
export function convertDifference(amount: number, from: 'degF' | 'degC', to: 'degF' | 'degC'): number {
  return (amount * units[from].factor) / units[to].factor;
}

export const ratio = (amount: number): Quantity<'ratio'> => quantity(amount, '');
export const percent = (amount: number): Quantity<'share'> => quantity(amount, 'percent');
export const psi = (amount: number): Quantity<'stress'> => quantity(amount, 'psi');
export const megapascals = (amount: number): Quantity<'stress'> => quantity(amount, 'MPa');
export const inches = (amount: number): Quantity<'length'> => quantity(amount, 'in');
export const millimetres = (amount: number): Quantity<'length'> => quantity(amount, 'mm');
export const days = (amount: number): Quantity<'duration'> => quantity(amount, 'd');
export const hours = (amount: number): Quantity<'duration'> => quantity(amount, 'h');
export const fahrenheit = (amount: number): Quantity<'temperature'> => quantity(amount, 'degF');
export const celsius = (amount: number): Quantity<'temperature'> => quantity(amount, 'degC');
