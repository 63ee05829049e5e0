/** Headings of a specification: section, part and article lines, with and without Markdown signs. */
import type { Region } from '../../rules/model/specification.ts';
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

const sectionLine = /^SECTION\s+(\d{2}\s?\d{2}\s?\d{2}(?:[.\s]\d{2})?|\d{5})\b[\s:.–—-]*(.*)$/i;
const partLine = /^PART\s+(\d|I{1,3}|ONE|TWO|THREE)\b[\s:.–—-]*(.*)$/i;
const endLine = /^END\s+OF\s+(?:SECTION|DOCUMENT)\b/i;
const numbered =
  /^(?:ARTICLE\s+|§+\s*|SEC(?:TION|\.)\s+)?(\d{1,4}\s?\.\s?\d{1,3}|\d{1,2}-\d{1,2}[A-Z]?(?:-\d{1,2}|\.\d{1,2})?)(\.|\b)[\s:–—-]*(?=[^\d\s])(.*)$/i;
const partNumbers: Readonly<Record<string, string>> = { I: '1', II: '2', III: '3', ONE: '1', TWO: '2', THREE: '3' };

/** A heading in a line of plain text: by its number, or by being short and in capitals. */
export function plainHeading(line: string): Heading | undefined {
  const section = sectionLine.exec(line);
  if (section) return heading('section', spaced(section[1] as string), line, section[2] as string);
  if (endLine.test(line)) return heading('end', '', line, line);
  const part = partLine.exec(line);
  if (part && isTitle(part[2] as string)) {
    const number = (part[1] as string).toUpperCase();
    return heading('part', partNumbers[number] ?? number, line, part[2] as string);
  }
  return articleHeading(line) ?? (isCapitals(line) ? heading('article', '', line, line) : undefined);
}

/** A heading in a Markdown heading line: a number as above, else an article by its words. */
export function markedHeading(line: string, depth: number): Heading | undefined {
  const plain = plainHeading(line);
  if (plain) return plain;
  const named = /^(?:\w+\s+)?(\d{2} \d{2} \d{2}(?:[. ]\d{2})?)\b[\s:–—-]*(.*)$/.exec(line);
  if (named) return heading('section', named[1] as string, line, named[2] as string);
  return line.trim() === '' ? undefined : heading(depth === 1 ? 'section' : 'article', '', line, line);
}

function articleHeading(line: string): Heading | undefined {
  const match = numbered.exec(line);
  if (!match) return undefined;
  const rest = match[3] as string;
  const number = (match[1] as string).replace(/\s/g, '');
  // "1.5 in. of cover", "0.45 maximum" and "4.5 MPa" open with a value, not with a number.
  if (
    !/^[A-Z"'([<*]/.test(rest) ||
    /^(?:MPa|PSI|IN\b|MM\b|FT\b|KG\b|LB\b|PERCENT|ASTM\b)/.test(rest) ||
    number.startsWith('0.')
  )
    return undefined;
  return heading('article', number, line, rest);
}

function heading(kind: HeadingKind, number: string, line: string, rest: string): Heading {
  const titleStart = line.length - rest.length;
  const length = kind === 'article' ? titleLength(rest) : rest.trimEnd().length;
  const title = rest
    .slice(0, length)
    .replace(/[\s:.]+$/, '')
    .replace(/\s+/g, ' ');
  return { kind, number, title, titleStart, titleEnd: titleStart + length };
}

/** "3.07 CURING: Cure slabs …" and "3.11 TOLERANCES A. Slope …" carry text: the title ends at the colon or the label. */
function titleLength(rest: string): number {
  const label = /\s(?:[A-Z]|1)\.\s+(?=[A-Z])/.exec(rest);
  if (label && isCapitals(rest.slice(0, label.index))) return label.index;
  const colon = rest.indexOf(':');
  if (0 <= colon && colon < 60 && rest.slice(colon + 1).trim() !== '') return colon + 1;
  const stop = /[.;]\s+(?=[A-Z])/.exec(rest);
  if (stop && stop.index < 60) return stop.index + 1;
  return rest.trimEnd().length;
}

const isTitle = (text: string): boolean => text.length < 80 && !/[.;]\s/.test(text);

/** A line of capitals of at most eight words that is no sentence. */
function isCapitals(line: string): boolean {
  const text = line.trim().replace(/:$/, '');
  if (text.length < 4 || 70 < text.length || /[.;!?]$/.test(text) || /[a-z]/.test(text)) return false;
  const words = text.split(/\s+/);
  return words.length <= 8 && 3 < text.replace(/[^A-Z]/g, '').length && !/^\d|[%=|]|\d\s*(?:PSI|MPA)\b/.test(text);
}

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
