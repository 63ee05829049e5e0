/** Offsets into a text as the lines and columns that people and programs name. */
import type { Span } from '../../rules/model/source.ts';

/** Line and column from 1, offset from 0; all in UTF-16 units. */
export interface Place {
  readonly line: number;
  readonly column: number;
  readonly offset: number;
}

export interface Range {
  readonly start: Place;
  readonly end: Place;
}

/** Finds lines and columns in the texts of a run; each text is cut into lines once. */
export function locator(texts: ReadonlyMap<string, string>): (span: Span) => Range {
  const known = new Map<string, readonly number[]>();
  return ({ path, start, end }) => {
    const starts = known.get(path) ?? lineStarts(texts.get(path) ?? '');
    known.set(path, starts);
    return { start: placeAt(starts, start), end: placeAt(starts, end) };
  };
}

function lineStarts(text: string): readonly number[] {
  const starts = [0];
  for (const { index, 0: end } of text.matchAll(/\r\n|\r|\n/g)) starts.push(index + end.length);
  return starts;
}

/** The last line that starts at or before the offset, by halving. */
function placeAt(starts: readonly number[], offset: number): Place {
  let [low, high] = [0, starts.length];
  while (low + 1 < high) {
    const middle = (low + high) >> 1;
    if (starts[middle]! <= offset) low = middle;
    else high = middle;
  }
  return { line: low + 1, column: offset - starts[low]! + 1, offset };
}
