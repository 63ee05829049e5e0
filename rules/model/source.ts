/** Where words stand: one coordinate from the reader to the report. */

/** A half-open range of UTF-16 offsets into the author's own text of one file. */
export interface Span {
  readonly path: string;
  readonly start: number;
  readonly end: number;
}

/** One section file as text. */
export interface Source {
  readonly path: string;
  readonly text: string;
}

/** True where the two ranges share at least one character of the same file. */
export function overlap(a: Span, b: Span): boolean {
  return a.path === b.path && a.start < b.end && b.start < a.end;
}

/** Order of reading: by file, then by start. */
export function inReadingOrder(a: Span, b: Span): number {
  if (a.path !== b.path) return a.path < b.path ? -1 : 1;
  return a.start - b.start || a.end - b.end;
}
