/** The text as lines: what each line is before any numbering is understood, with page furniture taken out. */
import type { Root, RootContent } from './markdown.ts';
import type { Masked } from './mask.ts';

export interface Line {
  readonly start: number;
  readonly end: number;
  readonly kind: 'text' | 'blank' | 'heading' | 'row' | 'furniture';
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
  /** The masked text with page furniture blank too. */
  readonly text: string;
  /** Section number in the running heads, where they carry one. */
  readonly runningSection?: string;
}

export function linesOf(source: string, masked: Masked, tree: Root): Lines {
  const { headings, rows } = structure(tree);
  const text = masked.text;
  const spans = [...splitLines(source)];
  const furniture = furnitureTexts(spans.map(([start, end]) => text.slice(start, end).trim()));
  const running = new Map<string, number>();
  let blanked = 0;
  const lines = spans.map(([start, end]): Line => {
    const words = text.slice(start, end);
    const textStart = start + words.length - words.trimStart().length;
    const textEnd = start + words.trimEnd().length;
    const trimmed = words.trim();
    const made = (kind: Line['kind'], depth = 0): Line => ({
      start,
      end,
      kind,
      depth,
      textStart,
      textEnd: Math.max(textStart, textEnd),
    });
    if (trimmed === '') return made('blank');
    if (furniture.has(furnitureKey(trimmed))) {
      blanked++;
      const number = trimmed.match(/\b\d{2} \d{2} \d{2}\b/g)?.at(-1);
      if (number) running.set(number, (running.get(number) ?? 0) + 1);
      return made('furniture');
    }
    const row = rows.get(start) ?? looseRow(text, start, end);
    if (row) rows.set(start, row);
    if (row) return made('row');
    const depth = headings.get(start);
    return depth === undefined ? made('text') : made('heading', depth);
  });
  const runningSection = [...running].sort((a, b) => b[1] - a[1])[0]?.[0];
  return { lines, rows, furniture: blanked, runningSection, text: withoutFurniture(text, lines) };
}

function withoutFurniture(text: string, lines: readonly Line[]): string {
  const parts: string[] = [];
  let from = 0;
  for (const { kind, start, end } of lines) {
    if (kind !== 'furniture') continue;
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

function looseRow(text: string, start: number, end: number): TableRow | undefined {
  const line = text.slice(start, end);
  if (!/^\s*\|.+\|\s*$/.test(line) || /^[\s|:-]+$/.test(line)) return undefined;
  const bars = [...line.matchAll(/\|/g)].map(({ index }) => start + index);
  const cells = bars.slice(0, -1).map((bar, at) => ({ start: bar + 1, end: bars[at + 1] as number }));
  return { start, end, cells, header: [] };
}

/** Running heads and feet: at least three times, with a section number, date or page number, no verb, no quantity. */
function furnitureTexts(texts: readonly string[]): ReadonlySet<string> {
  const counts = new Map<string, number>();
  for (const text of texts) {
    if (text.length < 4 || 120 < text.length || !isRunningHead(text)) continue;
    const key = furnitureKey(text);
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  return new Set([...counts].filter(([, count]) => 3 <= count).map(([key]) => key));
}

const marks =
  /\b\d{2} ?\d{2} ?\d{2}\b|\b(?:january|february|march|april|may|june|july|august|september|october|november|december)\b.*\b\d{4}\b|\b\d{1,2}[/.-]\d{1,2}[/.-]\d{2,4}\b|\bpage\s+\d|^-?\s*\d{1,3}\s*-?$|\b\d{5}\s?-\s?\d{1,3}$/i;
const verbs = /\b(?:shall|must|will|may|should|do not|is|are|be|provide|comply)\b/i;
const quantities = /\d\s*(?:%|°|percent|psi|MPa|mm|inch|in\.|ft|feet|hours?|days?|lb|kg)\b/i;

const isRunningHead = (text: string): boolean =>
  marks.test(text) && !verbs.test(text.replace(/\bmay\b(?=.*\d{4})/i, '')) && !quantities.test(text);

/** Page numbers differ from page to page. */
const furnitureKey = (text: string): string =>
  text.replace(/\b(page\s+)?\d{1,3}(\s+of\s+\d{1,3})?$/i, '#').replace(/\s+/g, ' ');
