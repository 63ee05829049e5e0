/** The text as lines: what each line is before any numbering is understood, with page furniture taken out. */
import { furnitureAmong, sectionIn } from './furniture.ts';
import { looseRows } from './loose-rows.ts';
import type { Root, RootContent } from './markdown.ts';
import type { Masked } from './mask.ts';
import { notesAmong } from './notes.ts';

export interface Line {
  readonly start: number;
  readonly end: number;
  readonly kind: 'text' | 'blank' | 'heading' | 'row' | 'furniture' | 'note';
  /** Depth of a Markdown heading. */
  readonly depth: number;
  /** Wording of the line, from its first to its last character that is not blank. */
  readonly textStart: number;
  readonly textEnd: number;
}

/** A table as the parser found it, or lines of `| cell | cell |` without a ruling. */
export interface TableRow {
  readonly start: number;
  readonly end: number;
  /** Empty for the heading row itself. */
  readonly cells: readonly Cell[];
  /** Cells of the heading row over this one; empty where the table has none. */
  readonly header: readonly Cell[];
}

export interface Cell {
  readonly start: number;
  readonly end: number;
}

export interface Lines {
  readonly lines: readonly Line[];
  readonly rows: ReadonlyMap<number, TableRow>;
  readonly furniture: number;
  /** The masked text with page furniture and notes to editors blank too. */
  readonly text: string;
  /** Section number in the running heads, where they carry one. */
  readonly runningSection?: string;
}

export function linesOf(source: string, masked: Masked, tree: Root): Lines {
  const { headings, rows } = structure(tree);
  const text = masked.text;
  const spans = [...splitLines(source)];
  for (const row of looseRows(withTabs(source, text), spans)) if (!rows.has(row.start)) rows.set(row.start, row);
  const furniture = furnitureAmong(spans.map(([start, end]) => (rows.has(start) ? '' : text.slice(start, end).trim())));
  const notes = notesAmong(spans.map(([start, end]) => source.slice(start, end)));
  const lines = spans.map(([start, end], at): Line => {
    const words = text.slice(start, end);
    const textStart = start + words.length - words.trimStart().length;
    const textEnd = Math.max(textStart, start + words.trimEnd().length);
    const depth = headings.get(start) ?? 0;
    const kind = notes.has(at)
      ? 'note'
      : furniture.has(at)
        ? 'furniture'
        : rows.has(start)
          ? 'row'
          : 0 < depth
            ? 'heading'
            : 'text';
    return { start, end, kind: words.trim() === '' ? 'blank' : kind, depth, textStart, textEnd };
  });
  const heads = lines.filter(({ kind }) => kind === 'furniture').map(({ start, end }) => text.slice(start, end));
  return {
    lines,
    rows,
    furniture: heads.length,
    runningSection: sectionIn(heads),
    text: withoutAsides(text, lines),
  };
}

/** Columns pasted from an office program are parted by tabs. */
const withTabs = (source: string, text: string): string =>
  source.includes('\t') ? text.replace(/ /g, (blank, at: number) => (source[at] === '\t' ? '\t' : blank)) : text;

function withoutAsides(text: string, lines: readonly Line[]): string {
  const parts: string[] = [];
  let from = 0;
  for (const { kind, start, end } of lines) {
    if (kind !== 'furniture' && kind !== 'note') continue;
    parts.push(text.slice(from, start), ' '.repeat(end - start));
    from = end;
  }
  return from === 0 ? text : parts.join('') + text.slice(from);
}

function* splitLines(source: string): Iterable<readonly [number, number]> {
  const ending = /\r\n|\n|\r/g;
  let start = 0;
  for (let match = ending.exec(source); match; match = ending.exec(source)) {
    yield [start, match.index];
    start = ending.lastIndex;
  }
  if (start < source.length) yield [start, source.length];
}

/** Line starts of headings with their depth, and of table rows with their cells; tables and headings inside lists count too. */
function structure(tree: Root): { readonly headings: Map<number, number>; readonly rows: Map<number, TableRow> } {
  const headings = new Map<number, number>();
  const rows = new Map<number, TableRow>();
  const stack: RootContent[] = [...tree.children].reverse();
  for (let node = stack.pop(); node; node = stack.pop()) {
    if (node.type === 'heading') headings.set(lineStart(node), node.depth);
    else if (node.type === 'table') {
      const cells = node.children.map((row) => row.children.map(cellOf));
      node.children.forEach((row, at) => {
        rows.set(lineStart(row), { ...cellOf(row), cells: 0 < at ? (cells[at] ?? []) : [], header: cells[0] ?? [] });
      });
    } else if (node.type === 'list' || node.type === 'listItem')
      stack.push(...([...node.children].reverse() as RootContent[]));
  }
  return { headings, rows };
}

const cellOf = (node: RootContent | { position?: RootContent['position'] }): Cell => ({
  start: node.position?.start.offset ?? 0,
  end: node.position?.end.offset ?? 0,
});

const lineStart = (node: RootContent | { position?: RootContent['position'] }): number =>
  (node.position?.start.offset ?? 0) - ((node.position?.start.column ?? 1) - 1);
