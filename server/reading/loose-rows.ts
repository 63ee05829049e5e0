/** Tables that are none to Markdown: lines of `| cell | cell |` without a ruling, and columns set with blanks or tabs. */
import type { Cell, TableRow } from './lines.ts';

type Line = readonly [start: number, end: number];

export const looseRows = (text: string, lines: readonly Line[]): readonly TableRow[] => [
  ...lines.flatMap((line) => barred(text, line) ?? []),
  ...columns(text, lines),
];

function barred(text: string, [start, end]: Line): TableRow | undefined {
  const line = text.slice(start, end);
  if (!/^\s*\|.+\|\s*$/.test(line) || /^[\s|:-]+$/.test(line)) return undefined;
  const bars = [...line.matchAll(/\|/g)].map(({ index }) => start + index);
  const cells = bars.slice(0, -1).map((bar, at) => ({ start: bar + 1, end: bars[at + 1] as number }));
  return { start, end, cells, header: [] };
}

const fewestColumns = 3;

/** A line of short heads without figures, and below it lines of as many cells, some of them figures. */
function columns(text: string, lines: readonly Line[]): TableRow[] {
  const rows: TableRow[] = [];
  let header: readonly Cell[] = [];
  for (const [start, end] of lines) {
    const cells = cellsOf(text, start, end);
    if (cells.length === header.length && cells.slice(1).some((cell) => isFigure(text, cell)))
      rows.push({ start, end, cells, header });
    else header = fewestColumns <= cells.length && cells.every((cell) => isHead(text, cell)) ? cells : [];
  }
  return rows;
}

/** Words parted by a tab, or by three blanks and more. */
function cellsOf(text: string, start: number, end: number): readonly Cell[] {
  const line = text.slice(start, end);
  if (500 < line.length || line.includes('|')) return [];
  return [...line.matchAll(/\S(?:[^\t]*?\S)??(?=\s*\t|\s{3}|\s*$)/g)].map(({ index, 0: words }) => ({
    start: start + index,
    end: start + index + words.length,
  }));
}

const wordsOf = (text: string, { start, end }: Cell): string => text.slice(start, end);
const isFigure = (text: string, cell: Cell): boolean =>
  /^[\d.,]+\s*(?:%|±|to\b|-|–|\w{1,4}$|$)/.test(wordsOf(text, cell));
const isHead = (text: string, cell: Cell): boolean => {
  const words = wordsOf(text, cell);
  return (
    words.length <= 40 && /^[A-Za-z]./.test(words) && !/\d{3}|[.;:]$/.test(words.replace(/\bmax\.$|\bmin\.$/i, ''))
  );
};
