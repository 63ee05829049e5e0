/** From lines to articles and blocks: section > part > article > paragraph, each with the document's own number. */
import type { Region } from '../../rules/model/specification.ts';
import { type Heading, markedHeading, plainHeading, regionOf } from './headings.ts';
import { type Label, labelAt } from './labels.ts';
import type { Cell, Line, Lines } from './lines.ts';
import { Numbering } from './numbering.ts';

/** A paragraph, table row or title. Offsets are relative to the article's start. */
export interface Block {
  readonly kind: 'paragraph' | 'row';
  readonly start: number;
  end: number;
  readonly place: string;
  readonly label: string;
  /** Depth below the article; 0 for text without a label. */
  readonly level: number;
  /** The paragraph that holds this one. */
  readonly parent?: Block;
  readonly cells?: readonly Cell[];
  readonly header?: readonly Cell[];
}

export interface ArticleText {
  readonly number: string;
  readonly title: string;
  readonly part?: number;
  readonly region: Region;
  /** Offset of the article in the file; all of `blocks` is relative to it. */
  readonly start: number;
  end: number;
  readonly titleStart: number;
  readonly titleEnd: number;
  readonly blocks: Block[];
}

export interface PartText {
  readonly number: number;
  readonly title: string;
  readonly start: number;
}

export interface Outline {
  readonly section?: string;
  readonly title?: string;
  readonly titleStart: number;
  readonly titleEnd: number;
  readonly parts: readonly PartText[];
  readonly articles: readonly ArticleText[];
}

export function outlineOf(source: string, text: string, lines: Lines): Outline {
  const builder = new Builder(source, text, lines);
  for (const line of lines.lines) builder.take(line);
  return builder.finish();
}

class Builder {
  readonly #source: string;
  readonly #text: string;
  readonly #lines: Lines;
  readonly #articles: ArticleText[] = [];
  readonly #parts: PartText[] = [];
  #section?: { number: string; title: string; start: number; end: number };
  #part?: number;
  #numbering = new Numbering('');
  #block?: Block;
  /** Unlabelled text ending in a colon, over the labels that follow it in the article. */
  #stem?: Block;
  /** The heading row of a table has just been passed. */
  #tableHead = false;
  /** A blank or furniture line came since the last text. */
  #gap = true;

  constructor(source: string, text: string, lines: Lines) {
    this.#source = source;
    this.#text = text;
    this.#lines = lines;
  }

  take(line: Line): void {
    if (line.kind === 'blank' || line.kind === 'furniture') {
      this.#gap = true;
      return;
    }
    if (line.kind === 'row') this.#row(line);
    else this.#words(line);
    this.#gap = line.kind === 'heading';
  }

  finish(): Outline {
    const last = this.#articles.at(-1);
    if (last) last.end = this.#text.length;
    const section = this.#section;
    return {
      section: section?.number || this.#lines.runningSection,
      title: section?.title,
      titleStart: section?.start ?? 0,
      titleEnd: section?.end ?? 0,
      parts: this.#parts,
      articles: this.#articles,
    };
  }

  #words(line: Line): void {
    const raw = this.#source.slice(line.start, line.end);
    const { label, width } = this.#labelOf(raw);
    const words = this.#text.slice(line.textStart, line.textEnd);
    const heading =
      line.kind === 'heading'
        ? markedHeading(words, line.depth)
        : label && !isDotted(label)
          ? undefined
          : this.#gap || isNumbered(words)
            ? plainHeading(words)
            : undefined;
    if (heading) {
      this.#heading(heading, line);
      return;
    }
    const from = Math.max(line.textStart, line.start + width);
    if (label) this.#open(label, from, line.textEnd, raw.length - raw.trimStart().length);
    else if (this.#block && this.#block.kind === 'paragraph' && (!this.#gap || this.#continues(line)))
      this.#block.end = line.textEnd - this.#article.start;
    else this.#plain(line.textStart, line.textEnd);
    this.#splitInside();
  }

  #labelOf(raw: string): { label?: Label; width: number } {
    // Emphasis, heading signs and escapes around a label are not part of it: read a lean copy, map its width back.
    const lean: number[] = [];
    for (let at = 0; at < raw.length && lean.length < 60; at++) if (!isDecoration(raw, at)) lean.push(at);
    const text = lean.map((at) => raw[at]).join('');
    const indent = text.length - text.trimStart().length;
    const label = labelAt(text.trimStart(), this.#numbering.last);
    if (!label) return { width: 0 };
    return { label, width: lean[indent + label.width] ?? raw.length };
  }

  #heading(heading: Heading, line: Line): void {
    this.#block = undefined;
    const [start, end] = [line.textStart + heading.titleStart, line.textStart + heading.titleEnd];
    if (heading.kind === 'end') return;
    if (heading.kind === 'section' && (heading.number !== '' || !this.#section)) {
      if (!this.#section?.number)
        this.#section = { number: heading.number, title: heading.title, start: line.textStart, end: line.textEnd };
    } else if (heading.kind === 'part') {
      this.#part = Number(heading.number);
      this.#parts.push({ number: this.#part, title: heading.title, start: line.textStart });
    } else this.#openArticle(heading, line.textStart, start, end);
    if (heading.kind === 'article' && end < line.textEnd) this.#rest(end, line.textEnd);
  }

  /** "3.07 CURING: Cure slabs …": the text behind the title is the article's first paragraph. */
  #rest(from: number, to: number): void {
    const words = this.#text.slice(from, to);
    const start = from + words.length - words.trimStart().length;
    const label = labelAt(words.trimStart(), this.#numbering.last);
    if (label) this.#open(label, start + label.width, to, 0);
    else this.#plain(start, to);
    this.#splitInside();
  }

  #openArticle(heading: Heading, start: number, titleStart: number, titleEnd: number): void {
    const before = this.#articles.at(-1);
    if (before) before.end = start;
    const number = heading.number;
    const part = this.#part ?? (/^[123]\./.test(number) ? Number(number[0]) : undefined);
    this.#articles.push({
      number,
      title: heading.title,
      part,
      region: regionOf(heading.title),
      start,
      end: this.#text.length,
      titleStart,
      titleEnd,
      blocks: [],
    });
    this.#numbering = new Numbering(number || heading.title);
    this.#stem = undefined;
  }

  get #article(): ArticleText {
    const last = this.#articles.at(-1);
    if (last) return last;
    const start = 0;
    const made: ArticleText = {
      number: '',
      title: '',
      region: 'other',
      start,
      end: this.#text.length,
      titleStart: 0,
      titleEnd: 0,
      blocks: [],
    };
    this.#articles.push(made);
    return made;
  }

  #open(label: Label, start: number, end: number, indent: number): void {
    const { start: base, blocks } = this.#article;
    const above = this.#endsWithColon() ? this.#block : undefined;
    const { place, parent, level } = this.#numbering.open(label, indent, () => above !== undefined);
    const stem = parent ?? (above?.label === '' ? above : this.#stem);
    if (!parent) this.#stem = stem;
    this.#block = {
      kind: 'paragraph',
      start: start - base,
      end: end - base,
      place,
      label: label.name,
      level,
      parent: stem,
    };
    this.#numbering.hold(this.#block);
    blocks.push(this.#block);
  }

  #plain(start: number, end: number): void {
    const { start: base, blocks } = this.#article;
    const parent = this.#endsWithColon() ? this.#block : undefined;
    const { place, level } = this.#numbering.plain();
    this.#block = { kind: 'paragraph', start: start - base, end: end - base, place, label: '', level, parent };
    blocks.push(this.#block);
  }

  #row(line: Line): void {
    const row = this.#lines.rows.get(line.start);
    if (!row) return;
    if (row.cells.length === 0) {
      this.#tableHead = true;
      return;
    }
    const { start: base, blocks } = this.#article;
    const moved = (cells: readonly Cell[]): Cell[] =>
      cells.map(({ start, end }) => ({ start: start - base, end: end - base }));
    const parent = this.#block?.kind === 'row' ? this.#block.parent : this.#block;
    const place = this.#numbering.row(this.#block?.kind === 'row' && !this.#tableHead ? 'next' : 'first');
    this.#tableHead = false;
    this.#block = {
      kind: 'row',
      start: row.start - base,
      end: row.end - base,
      place,
      label: '',
      level: 9,
      parent,
      cells: moved(row.cells),
      header: moved(row.header),
    };
    blocks.push(this.#block);
  }

  #endsWithColon(): boolean {
    return this.#block !== undefined && /:\s*$/.test(this.#wordsOf(this.#block));
  }

  #wordsOf(block: Block): string {
    return this.#text.slice(block.start + this.#article.start, block.end + this.#article.start);
  }

  /** A page break fell into a sentence: the block has no end and the next line begins small. */
  #continues(line: Line): boolean {
    return (
      this.#block !== undefined &&
      !/[.:;!?)|]\s*$/.test(this.#wordsOf(this.#block)) &&
      /[a-z]/.test(this.#text[line.textStart] ?? '')
    );
  }

  /** Labels inside a line: "… at dusk. 2. Broom square to traffic. 3. Cure." */
  #splitInside(): void {
    for (let block = this.#block; block; ) {
      const found = this.#numbering.inside(this.#wordsOf(block));
      if (!found) return;
      const base = this.#article.start;
      const end = block.end + base;
      const at = block.start + base + found.at;
      block.end = block.start + found.at;
      this.#open(found.label, at + found.label.width, end, 0);
      block = this.#block;
    }
  }
}

const isDotted = ({ kind }: Label): boolean => kind === '1.1.1';
const isNumbered = (words: string): boolean => /^(?:SECTION\s|PART\s|END OF|§|\d{1,2}\.\d)/i.test(words);

/** Markup around a label; a star or dash before a blank is a bullet and stays. */
function isDecoration(raw: string, at: number): boolean {
  const character = raw[at] as string;
  if (character === '#') return /^\s{0,3}#*$/.test(raw.slice(0, at));
  if (character === '\\' || character === '`') return true;
  if (character !== '*' && character !== '_') return false;
  return raw[at + 1] !== ' ' || raw[at - 1] === character || /\w|[.)]/.test(raw[at - 1] ?? '');
}
