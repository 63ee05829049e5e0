/** Is it a title or a sentence, and where in its line does the title end? A sentence taken for a title would never be read. */
import { stem } from './stem.ts';
import { imperatives } from './words/verbs.ts';

/**
 * Characters of the title at the start of `rest`, 0 where it is a sentence. "CURING: Cure slabs …", "Purpose. The walks …"
 * and "TOLERANCES A. Slope …" carry text: the title ends at the colon, the stop, the label, or with its capitals.
 */
export function titleLength(rest: string): number {
  const whole = rest.trimEnd().length;
  const capitals = capitalRun(rest);
  if (0 < capitals && capitals < whole) return capitals;
  if (capitals === whole) return whole;
  const colon = rest.indexOf(':');
  if (0 <= colon && colon < longest && rest.slice(colon + 1).trim() !== '')
    return isTitle(rest.slice(0, colon), mostWords) ? colon + 1 : 0;
  const stop = /[.;](?:\s+(?=["'(]?[A-Z])|\s*$)/.exec(rest);
  if (!stop) return isTitle(rest, mostWords) ? whole : 0;
  if (longest <= stop.index) return 0;
  const carries = stop.index + stop[0].length < whole;
  return isTitle(rest.slice(0, stop.index), carries ? mostBeforeText : mostBeforeStop) ? stop.index + 1 : 0;
}

const longest = 60;
/** Words of a title in small letters: alone in its line, before text of its own, and with a stop but no text. */
const mostWords = 10;
const mostBeforeText = 6;
const mostBeforeStop = 4;

/** Short, and without the verbs of a sentence. */
export function isTitle(text: string, most = mostWords): boolean {
  const words = text.trim().split(/\s+/);
  if (longest < text.trim().length || most < words.length || verbs.test(text)) return false;
  const first = (words[0] ?? '').replace(/[^A-Za-z-]/g, '');
  return words.length < 3 || !isOrder(first);
}

const verbs =
  /\b(?:shall|must|may|will|should|can|is|are|was|were|be|been|has|have|had|do|does|not|comply|complies|conforms?)\b/i;

/** "Cure slabs for 7 days" orders; "Curing of slabs" names. */
const isOrder = (word: string): boolean =>
  !/(?:ing|ion|ment|ed|s)$/i.test(word) && imperatives.has(stem(word.toLowerCase()));

/** A line of capitals of at most eight words that is no sentence. */
export function isCapitals(line: string): boolean {
  const text = line.trim().replace(/:$/, '');
  if (text.length < 4 || 70 < text.length || /[.;:!?]\s|[.;!?]$/.test(text) || /[a-z]/.test(text)) return false;
  const words = text.split(/\s+/);
  const letters = text.replace(/[^A-Z]/g, '').length;
  return words.length <= 8 && 3 < letters && !/^\d|[%=|]|\d\s*(?:PSI|MPA)\b/.test(text) && !verbs.test(text);
}

/** Characters of the capitals that open `rest`, with the colon or stop behind them: all of it, or as far as text begins. */
function capitalRun(rest: string): number {
  const run = capitals.exec(rest)?.[0] ?? '';
  if (run.replace(/[^A-Z]/g, '').length < 4 || verbs.test(run)) return 0;
  const behind = rest.slice(run.length);
  if (/^[.:;]?\s*$/.test(behind)) return rest.trimEnd().length;
  const text = opensText.exec(behind);
  return text ? run.length + (text[1] as string).length : 0;
}

const capitals = /^(?:["'([]*[A-Z][A-Z'&/-]+[\])",]*(?:\s+(?:[-–&]\s+)?(?=["'([]*[A-Z]{2})|$|(?=[\s.:;])))+/;
/** A sentence, a label, or "A curing compound"; "ASTM C94" and "PLACING concrete" do not end a title. */
const opensText = /^([.:;]?)\s+(?:["'([]?[A-Z]["'a-z]|A\s[a-z]|[A-Z0-9]{1,2}[.)]\s|\([a-zA-Z0-9]{1,3}\)\s)/;
