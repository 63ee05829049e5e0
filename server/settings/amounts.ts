/** Amounts as people type them in settings and on the command line: "3/4 in", "19 mm", "5000 psi". */
import { type Dimension, type Quantity, quantity, type Unit, type UnitOf, units } from '../../rules/model/quantity.ts';
import { aggregateSizes } from '../../rules/tables/aggregate-size.ts';

/** The amount that `text` states in a unit of the dimension, or undefined where it states none. */
export function parseAmount<D extends Dimension>(text: string, dimension: D): Quantity<D> | undefined {
  const [, figures, unitWord] = /^\s*([\d.,/\s½¼¾⅜-]*[\d½¼¾⅜])\s*-?\s*(\S.*?)\s*$/u.exec(text) ?? [];
  if (figures === undefined || unitWord === undefined) return undefined;
  const amount = parseFigures(figures);
  const unit = findUnit(unitWord, dimension);
  if (amount === undefined || unit === undefined) return undefined;
  return quantity(amount, unit as Unit) as unknown as Quantity<D>;
}

/** A nominal maximum aggregate size: a length, or the size number that a supplier names, "No. 57". */
export function parseAggregate(text: string): Quantity<'length'> | undefined {
  const [, number] = /^\s*(?:(?:size\s*)?(?:no\.?|number|#)\s*)?(\d{1,3})\s*$/i.exec(text) ?? [];
  const known = aggregateSizes.find((row) => row.number === number);
  return known ? known.nominalMaximum : parseAmount(text, 'length');
}

const glyphs: Readonly<Record<string, string>> = { '½': '1/2', '¼': '1/4', '¾': '3/4', '⅜': '3/8' };

/** "1-1/2", "1 1/2", "1½", "5,000", "0.75". */
function parseFigures(figures: string): number | undefined {
  const plain = figures.replace(/[½¼¾⅜]/gu, (glyph) => ` ${glyphs[glyph]}`).trim();
  const mixed = /^(?:(\d+)(?:\s+|\s*-\s*))?(\d+)\/(\d+)$/.exec(plain);
  if (mixed) {
    const [, whole, top, bottom] = mixed;
    return Number(bottom) === 0 ? undefined : Number(whole ?? 0) + Number(top) / Number(bottom);
  }
  const decimal = /^(?:\d{1,3}(?:,\d{3})+|\d+)(?:\.\d+)?$|^\.\d+$/.exec(plain);
  return decimal ? Number(plain.replaceAll(',', '')) : undefined;
}

/** Ways of writing a unit besides its token. */
const spellings: Readonly<Record<string, Unit>> = {
  inch: 'in',
  inches: 'in',
  '"': 'in',
  '”': 'in',
  millimeter: 'mm',
  millimeters: 'mm',
  millimetre: 'mm',
  millimetres: 'mm',
  'n/mm2': 'MPa',
  'n/mm²': 'MPa',
  day: 'd',
  days: 'd',
  hour: 'h',
  hours: 'h',
  '%': 'percent',
};

function findUnit<D extends Dimension>(word: string, dimension: D): UnitOf<D> | undefined {
  const plain = word.toLowerCase().replace(/\.$/, '');
  const tokens = Object.keys(units) as Unit[];
  const unit = spellings[plain] ?? tokens.find((token) => token !== '' && token.toLowerCase() === plain);
  return unit !== undefined && units[unit].dimension === dimension ? (unit as UnitOf<D>) : undefined;
}
