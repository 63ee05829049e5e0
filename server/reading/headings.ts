/** Headings of a specification: section, part and article lines, with and without Markdown signs. */
import type { Region } from '../../rules/model/specification.ts';
import { isCapitals, isTitle, titleLength } from './titles.ts';
import { regionWords } from './words/regions.ts';

export type HeadingKind = 'section' | 'part' | 'article' | 'end';

export interface Heading {
  readonly kind: HeadingKind;
  /** "03 30 00", "2", "2.03"; empty for a heading without a number. */
  readonly number: string;
  readonly title: string;
  /** Where the title begins and ends in the line; text after it belongs to the first paragraph. */
  readonly titleStart: number;
  readonly titleEnd: number;
}

const sectionLine = /^(SECTION)\s+(\d{2}\s?\d{2}\s?\d{2}(?:[.\s]\d{2})?|\d{5})\b[\s:.–—-]*(.*)$/i;
/** Items of highway work and chapters of a city's code. */
const itemLine = /^(?:SECTION|ITEM|CHAPTER)\s+(\d{3,4}|\d{1,3}\.\d{1,3})\s*(?:[:–—-]\s*|\s(?=[A-Z]))(\S.*)$/;
const partLine = /^(PART)\s+(\d|I{1,3}|ONE|TWO|THREE)\b[\s:.–—-]*(.*)$/i;
const endLine = /^END\s+OF\s+(?:SECTION|DOCUMENT)\b/i;
const partNumbers: Readonly<Record<string, string>> = { I: '1', II: '2', III: '3', ONE: '1', TWO: '2', THREE: '3' };

/**
 * A heading in a line of plain text: by its number, or by being short and in capitals. `under` is the number of the open
 * article: what is numbered below it is a paragraph of it.
 */
export function plainHeading(line: string, under = ''): Heading | undefined {
  if (endLine.test(line)) return heading('end', '', line, line, line.length);
  return (
    sectionHeading(line) ??
    partHeading(line) ??
    articleHeading(line, under) ??
    (isCapitals(line) ? heading('article', '', line, line, line.trimEnd().length) : undefined)
  );
}

/** A heading in a Markdown heading line: a number as above, else an article by its words. */
export function markedHeading(line: string, depth: number): Heading | undefined {
  if (line.trim() === '') return undefined;
  const plain = plainHeading(line);
  if (plain && plain.number !== '') return plain;
  const named = /^(?:\w+\s+)?(\d{2} \d{2} \d{2}(?:[. ]\d{2})?)\b[\s:–—-]*(.*)$/.exec(line);
  if (named) return wholeLine('section', named[1] as string, line, named[2] as string);
  const numbers = /^(\d{1,2}(?:\s?\.\s?\d{1,3}){0,4}|[A-Z])(?:[.)]\s*|\s+)(?=\S)(.*)$/.exec(line);
  if (numbers && /^[A-Z"'([]/.test(numbers[2] as string) && /[\d]|[.)]/.test(line.slice(0, 2)))
    return wholeLine('article', bare(numbers[1] as string), line, numbers[2] as string);
  return plain ?? wholeLine(depth === 1 ? 'section' : 'article', '', line, line);
}

/** Where in running text a part or article heading in capitals begins: "… at dusk. 3.11 TOLERANCES A. Slope: …" */
export function headingInside(words: string): number | undefined {
  insideText.lastIndex = 0;
  for (let match = insideText.exec(words); match; match = insideText.exec(words)) {
    const at = match.index + match[0].length;
    const rest = words.slice(at, at + 200);
    const title = articleHeading(rest, '')?.title ?? '';
    if (rest.startsWith('PART') || (title !== '' && title === title.toUpperCase())) return at;
  }
  return undefined;
}

const insideText =
  /(?:[.:;)]|[A-Z]{3}|\s)\s{1,4}(?=PART\s{1,4}(?:[1-3]|I{1,3})\s{0,3}(?:[-–—:]|GENERAL|PRODUCTS|MATERIALS|EXECUTION)|[1-9]\d{0,3}\.\d{2}\s{1,4}[A-Z]{3})/g;

function sectionHeading(line: string): Heading | undefined {
  const section = sectionLine.exec(line);
  if (section) {
    const [, word, number, rest] = section as unknown as [string, string, string, string];
    // "Section 03 30 00 covers walks." speaks of a section.
    return word === 'SECTION' || rest === '' || (/^[A-Z]/.test(rest) && isTitle(rest) && !/[.;,]$/.test(rest.trim()))
      ? wholeLine('section', spaced(number), line, rest)
      : undefined;
  }
  const item = itemLine.exec(line);
  return item && isCapitals(item[2] as string)
    ? wholeLine('section', item[1] as string, line, item[2] as string)
    : undefined;
}

function partHeading(line: string): Heading | undefined {
  const part = partLine.exec(line);
  if (!part) return undefined;
  const [, word, written, rest] = part as unknown as [string, string, string, string];
  if (80 <= rest.length || /[.;]\s/.test(rest) || (word !== 'PART' && /^[^A-Z]|[.,;]$/.test(rest.trim())))
    return undefined;
  const number = written.toUpperCase();
  return wholeLine('part', partNumbers[number] ?? number, line, rest);
}

const numbered =
  /^((?:ARTICLE|§+|SEC(?:TION|\.))\s*)?(\d{1,4}(?:\s?\.\s?\d{1,3}){1,4}|\d{1,2}-\d{1,2}[A-Z]?(?:-\d{1,2})?(?:\.\d{1,3})?|\d{3,4}-\d{1,2}\.\d{1,3})(\.|\b)[\s:–—-]*(?=\D)(.*)$/i;
/** A number without a point needs its word: "§ 12 Curing", "ARTICLE 3 - CURING", "Sec. 4. Curing." */
const counted = /^((?:ARTICLE|§+|SEC(?:TION|\.))\s*)(\d{1,4})(\.|\b)[\s:–—-]*(?=[^\d\s])(.*)$/i;
const valueWords = /^(?:MPa|PSI|IN\b|INCH|MM\b|FT\b|FEET|KG\b|LBS?\b|PERCENT|ASTM\b|DEGREES|HOURS|DAYS|[CF]\b(?!\.))/i;

function articleHeading(line: string, under: string): Heading | undefined {
  const match = numbered.exec(line) ?? counted.exec(line);
  if (!match) return undefined;
  const [, prefix = '', written, , rest] = match as unknown as [string, string | undefined, string, string, string];
  const number = bare(written);
  if (labelBehind.test(rest) && /\S/.test(line[line.length - rest.length - 1] as string))
    return heading('article', number, line, rest, 0);
  if (isValue(number, rest)) return undefined;
  const length = titleLength(rest);
  const below = prefix === '' && under !== '' && number.startsWith(`${under}.`);
  // "4.3 Execution" below 4 opens an article of its own, "4.3.2 Curing" where its title says what it is about.
  const isOwn = length === rest.trimEnd().length && (/^\d+\.\d+$/.test(number) || !isPlain(rest));
  if (length === 0 || (below && !isOwn)) return undefined;
  return heading('article', number, line, rest, length);
}

/** "1.5 in. of cover", "0.45 maximum" and "4.5 MPa" open with a value, not with a number. */
export const isValue = (number: string, words: string): boolean =>
  !/^["'[<*]*[A-Z]/.test(words) || valueWords.test(words) || number.startsWith('0.');

/** "3-17.3(3) The walk …": the label of a paragraph stands at the article's number. */
const labelBehind = /^\((?:[a-z]{1,4}|[A-Z]|\d{1,2})\)/;

const isPlain = (title: string): boolean => ['other', 'summary'].includes(regionOf(title));

const wholeLine = (kind: HeadingKind, number: string, line: string, rest: string): Heading =>
  heading(
    kind,
    number,
    line,
    rest,
    kind === 'article' ? titleLength(rest) || rest.trimEnd().length : rest.trimEnd().length,
  );

function heading(kind: HeadingKind, number: string, line: string, rest: string, length: number): Heading {
  const titleStart = line.length - rest.length;
  const title = rest
    .slice(0, length)
    .replace(/[\s:.]+$/, '')
    .replace(/\s+/g, ' ');
  return { kind, number, title, titleStart, titleEnd: titleStart + length };
}

const bare = (number: string): string => number.replace(/\s/g, '');

const spaced = (number: string): string => {
  const digits = number.replace(/\D/g, '');
  if (digits.length === 5) return digits;
  return [digits.slice(0, 2), digits.slice(2, 4), digits.slice(4, 6), digits.slice(6)].filter(Boolean).join(' ');
};

/** What an article is about, by the first word list that its title meets. */
export function regionOf(title: string): Region {
  const text = title.toLowerCase();
  return regionWords.find(({ words }) => words.test(text))?.region ?? 'other';
}
