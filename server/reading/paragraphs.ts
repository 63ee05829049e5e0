/** The paragraphs and table rows of one article as they come, line by line: their labels, places, parents and borders. */
import type { Label, LabelKind } from './labels.ts';
import type { Cell, TableRow } from './lines.ts';
import { mayHoldLabel, Numbering, reach } from './numbering.ts';
import type { ArticleText, Block } from './outline.ts';

/** Stems over stems without labels that are kept: a text of colons must not nest without end. */
const mostStems = 6;

export class Paragraphs {
  readonly #text: string;
  readonly #article: ArticleText;
  readonly #numbering: Numbering;
  #block?: Block;
  /** Unlabelled text ending in a colon, over the labels that follow it in the article. */
  #stem?: Block;
  /** The heading row of a table has just been passed. */
  #tableHead = false;

  /** `place` is what its paragraphs are cited below; `seen` counts the places of the whole document. */
  constructor(text: string, article: ArticleText, place: string, seen: Map<string, number>) {
    this.#text = text;
    this.#article = article;
    this.#numbering = new Numbering(place, seen);
  }

  /** The labels that are open, so that "i." is read as what it continues. */
  get last(): ReadonlyMap<LabelKind, number> {
    return this.#numbering.last;
  }

  /** A paragraph that opens with a label; its words stand from `start` to `end`. */
  labelled(label: Label, start: number, end: number, indent: number): void {
    this.#open(label, start, end, indent);
    this.#splitInside();
  }

  /** A line without a label: the paragraph before it goes on, unless a gap came between and it is no half sentence. */
  unlabelled(start: number, end: number, hasGap: () => boolean): void {
    const block = this.#block;
    if (block?.kind === 'paragraph' && (!hasGap() || this.#goesOn(block, start))) {
      block.end = end - this.#article.start;
      this.#splitInside(Math.max(block.start, start - this.#article.start - 2));
    } else {
      this.#plain(start, end);
      this.#splitInside();
    }
  }

  row(row: TableRow): void {
    if (row.cells.length === 0) {
      this.#tableHead = true;
      return;
    }
    const { start: base, blocks } = this.#article;
    const moved = (cells: readonly Cell[]): Cell[] =>
      cells.map(({ start, end }) => ({ start: start - base, end: end - base }));
    const before = this.#block?.kind === 'row' ? this.#block : undefined;
    this.#block = {
      kind: 'row',
      start: row.start - base,
      end: row.end - base,
      place: this.#numbering.row(before && !this.#tableHead ? 'next' : 'first'),
      label: '',
      level: 9,
      parent: before ? before.parent : this.#block,
      cells: moved(row.cells),
      header: moved(row.header),
    };
    this.#tableHead = false;
    blocks.push(this.#block);
  }

  #open(label: Label, from: number, to: number, indent: number): void {
    const { start: base, blocks } = this.#article;
    const above = this.#block && this.#endsWithColon(this.#block) ? this.#block : undefined;
    const { place, parent, level } = this.#numbering.open(label, indent, () => above !== undefined);
    const stem = parent ?? (above?.label === '' ? above : this.#stem);
    if (!parent) this.#stem = stem;
    const [start, end] = [from - base, to - base];
    this.#block = { kind: 'paragraph', start, end, place, label: label.name, level, parent: stem };
    this.#numbering.hold(this.#block);
    blocks.push(this.#block);
  }

  #plain(start: number, end: number): void {
    const { start: base, blocks } = this.#article;
    const above = this.#block && this.#endsWithColon(this.#block) ? this.#block : undefined;
    const parent = above && stemsOver(above) < mostStems ? above : undefined;
    const { place, level } = this.#numbering.plain();
    this.#block = { kind: 'paragraph', start: start - base, end: end - base, place, label: '', level, parent };
    blocks.push(this.#block);
  }

  #endsWithColon = (block: Block): boolean => /:\s*$/.test(this.#endOf(block));

  /** A sentence cut by a page or a blank line goes on in small letters. */
  #goesOn = (block: Block, start: number): boolean =>
    !/[.:;!?)|]\s*$/.test(this.#endOf(block)) && /[a-z]/.test(this.#text[start] ?? '');

  #wordsOf = ({ start, end }: Block): string =>
    this.#text.slice(start + this.#article.start, end + this.#article.start);

  /** Its last characters only: a paragraph may be very long. */
  #endOf = (block: Block): string => this.#wordsOf({ ...block, start: Math.max(block.start, block.end - 40) });

  /** Labels inside a line: "… at dusk. 2. Broom square to traffic. 3. Cure." What stands before `added` was looked at before. */
  #splitInside(added = this.#block?.start ?? 0): void {
    // Words added without a label change nothing; with one, they may be the second that an earlier first waits for.
    if (!mayHoldLabel(this.#text.slice(added + this.#article.start, (this.#block?.end ?? 0) + this.#article.start)))
      return;
    let from = Math.max(this.#block?.start ?? 0, added - reach);
    for (let block = this.#block; block; ) {
      const found = this.#numbering.inside(this.#wordsOf({ ...block, start: from }));
      if (!found) return;
      const at = from + found.at;
      const { end } = block;
      block.end = at;
      const base = this.#article.start;
      this.#open(found.label, base + at + found.label.width, base + end, 0);
      block = this.#block;
      from = block?.start ?? 0;
    }
  }
}

function stemsOver(block: Block): number {
  let count = 0;
  for (let above: Block | undefined = block; above; above = above.parent) count++;
  return count;
}
