/** The words that would stand in place of a value that falls short: the required value as the author writes values. */
import { type AnyQuantity, inSystem, say, twin } from '../formulas/unit-twins.ts';
import type { Measure } from '../model/measure.ts';
import type { SuggestedClause } from '../model/rule.ts';

/** A value in words, and as it stands in a table cell whose head gives the unit. */
export interface InWords {
  readonly words: string;
  readonly bare: string;
}

/** A bound written behind the value stays there; a figure without a unit, as in a table, is replaced by one. */
export function instead(written: Measure, right: AnyQuantity | InWords): SuggestedClause {
  const bound = boundBehind.exec(written.asWritten)?.[0] ?? '';
  const isBare = !/[a-z%°]/i.test(written.asWritten.slice(0, written.asWritten.length - bound.length));
  const put = (words: string): string => `${words}${bound}`;
  if ('words' in right) {
    const words = put(isBare ? right.bare : right.words);
    return { inchPound: words, metric: words };
  }
  if (!isBare) return { inchPound: put(inSystem(right, 'ip')), metric: put(inSystem(right, 'si')) };
  const own = right.unit === written.unit ? right : (twin(right) ?? right);
  const figure = put(say(own).split(' ')[0] as string);
  return { inchPound: figure, metric: figure };
}

const boundBehind =
  /[\s,]*\(?\b(?:max(?:imum)?|min(?:imum)?|or (?:less|more|lower|higher|greater)|and (?:under|over))\b\.?\)?$/i;
