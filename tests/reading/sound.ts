/** What must hold of the reading of any text whatever: nothing thrown, one length, every span inside the text. */
import { parse } from '../../server/reading/markdown.ts';
import { mask } from '../../server/reading/mask.ts';
import { read } from '../../server/reading/read.ts';
import type { OutlineItem } from '../../server/reading/reading.ts';

/** Empty for a sound reading; the text is quoted from where the trouble is. */
export function faultsOf(text: string): readonly string[] {
  try {
    const reading = read({ path: 'cut.md', text });
    return [
      ...spansIn(reading).flatMap(([where, start, end]) => faultOf(where, start, end, text.length)),
      ...reading.outline.flatMap(faultsOfItem),
      ...(reading.clauses < reading.unread.length ? ['more clauses unread than there are'] : []),
      ...reading.unread
        .filter(({ words, reason }) => !words.trim() || !reason)
        .map(({ span }) => `unread without words or reason at ${span.start}`),
    ];
  } catch (error) {
    return [`threw ${(error as Error).stack}`];
  }
}

/** The mask against the text it is of: its length and its line ends. */
export function maskFault(text: string): string | undefined {
  const masked = mask(text, parse(text)).text;
  if (masked.length !== text.length) return `${masked.length} characters for ${text.length}: ${JSON.stringify(text)}`;
  const ends = (each: string): string => each.replace(/[^\r\n]/g, ' ');
  return ends(masked) === ends(text) ? undefined : `line ends moved: ${JSON.stringify(text)}`;
}

function faultOf(where: string, start: number, end: number, length: number): readonly string[] {
  const sound = Number.isInteger(start) && Number.isInteger(end) && 0 <= start && start <= end && end <= length;
  return sound ? [] : [`${where}: ${start} to ${end} in a text of ${length}`];
}

/** A title stands inside its item, and so does what the item holds. */
function faultsOfItem(item: OutlineItem): readonly string[] {
  const { start, end, titleStart, titleEnd, place, children } = item;
  const inside = (from: number, to: number): boolean => start <= from && to <= end;
  return [
    ...(inside(titleStart, titleEnd) ? [] : [`the title of ${place} stands outside it`]),
    ...children.filter((child) => !inside(child.start, child.end)).map((child) => `${child.place} outside ${place}`),
    ...children.flatMap(faultsOfItem),
  ];
}

/** Every start and end in what was read, by where it is kept; places for new words are ranges of no length. */
function spansIn(value: unknown, where = 'reading'): readonly (readonly [string, number, number])[] {
  if (typeof value !== 'object' || value === null || value instanceof Set) return [];
  const { start, end, at, titleStart, titleEnd } = value as Readonly<Record<string, unknown>>;
  return [
    ...(typeof start === 'number' && typeof end === 'number' ? [[where, start, end] as const] : []),
    ...(typeof titleStart === 'number' && typeof titleEnd === 'number'
      ? [[`${where} title`, titleStart, titleEnd] as const]
      : []),
    ...(typeof at === 'number' ? [[where, at, at] as const] : []),
    ...Object.entries(value).flatMap(([key, inner]) => spansIn(inner, /^\d+$/.test(key) ? where : key)),
  ];
}
