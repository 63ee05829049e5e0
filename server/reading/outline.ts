/** From lines to articles and blocks: section > part > article > paragraph, each with the document's own number. */
import type { Region } from '../../rules/model/specification.ts';
import { type Heading, headingInside, markedHeading, plainHeading, regionOf } from './headings.ts';
import { type Label, labelAt, labelOfLine } from './labels.ts';
import type { Cell, Line, Lines } from './lines.ts';
import { Paragraphs } from './paragraphs.ts';

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
  /** Where its line ends. */
  readonly titleEnd: number;
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
  readonly #seen = new Map<string, number>();
  #section?: { number: string; title: string; start: number; end: number };
  #part?: number;
  #paragraphs?: Paragraphs;
  #untitled: { readonly end: number; readonly part?: Heading } = { end: 0 };
  /** Depth of the Markdown heading that opened the article; 0 for a line of plain text. */
  #depth = 0;
  /** A blank or furniture line came since the last text. */
  #gap = true;

  constructor(source: string, text: string, lines: Lines) {
    this.#source = source;
    this.#text = text;
    this.#lines = lines;
  }

  take(line: Line): void {
    if (line.kind === 'blank' || line.kind === 'furniture' || line.kind === 'note') {
      this.#gap = true;
      return;
    }
    const row = line.kind === 'row' ? this.#lines.rows.get(line.start) : undefined;
    if (row) this.#open.row(row);
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

  /** A line, or its pieces where a whole section runs on in one: "… at dusk. 3.11 TOLERANCES A. Slope: …" */
  #words(line: Line): void {
    let piece = line;
    for (;;) {
      const at = headingInside(this.#text.slice(piece.textStart, line.textEnd));
      if (at === undefined) break;
      const next = piece.textStart + at;
      this.#piece({ ...piece, textEnd: next });
      this.#gap = true;
      piece = { ...line, kind: 'text', start: next, textStart: next };
    }
    this.#piece(piece);
  }

  #piece(line: Line): void {
    const raw = this.#source.slice(line.start, line.textEnd);
    const label = labelOfLine(raw, this.#paragraphs?.last ?? new Map());
    const heading = this.#headingOf(line, label);
    if (heading) this.#heading(heading, line);
    else if (label) {
      const indent = raw.length - raw.trimStart().length;
      this.#open.labelled(label, Math.max(line.textStart, line.start + label.width), line.textEnd, indent);
    } else this.#open.unlabelled(line.textStart, line.textEnd, () => this.#gap);
  }

  #headingOf(line: Line, label: Label | undefined): Heading | undefined {
    const words = this.#text.slice(line.textStart, line.textEnd);
    const isDecimal = label?.kind === '1.1';
    // "#### A. Curing compound" below "### 3.04 CURING" is a paragraph.
    const isBelow = (this.#articles.at(-1)?.number ?? '') !== '' && 0 < this.#depth && this.#depth < line.depth;
    if (line.kind === 'heading') return label && !isDecimal && isBelow ? undefined : markedHeading(words, line.depth);
    if ((label && !isDecimal) || !(this.#gap || opensWithNumber.test(words))) return undefined;
    return plainHeading(words, this.#articles.at(-1)?.number);
  }

  #heading(heading: Heading, line: Line): void {
    const { kind, number, title, titleStart, titleEnd } = heading;
    const span = { start: line.textStart, end: line.textEnd };
    if (kind === 'part') {
      this.#part = Number(number);
      this.#parts.push({ number: this.#part, title, start: span.start, titleEnd: span.end });
      this.#close(span.start, heading);
    } else if (kind === 'section' && (number !== '' || !this.#section)) {
      if (!this.#section?.number) this.#section = { number, title, ...span };
      this.#close(span.start);
    } else if (kind === 'end') this.#close(span.start);
    else {
      const behind = line.textStart + titleEnd;
      if (!this.#paragraphs || title !== '' || number !== this.#articles.at(-1)?.number) {
        this.#openArticle(heading, line.textStart, line.textStart + titleStart, behind);
        this.#depth = line.depth;
      }
      if (behind < line.textEnd) this.#rest(behind, line.textEnd);
    }
  }

  /** "3.07 CURING: Cure slabs …": the text behind the title is the article's first paragraph. */
  #rest(from: number, to: number): void {
    const words = this.#text.slice(from, to);
    const start = from + words.length - words.trimStart().length;
    const label = labelAt(words.trimStart(), this.#open.last);
    if (label) this.#open.labelled(label, start + label.width, to, 0);
    else if (start < to) this.#open.unlabelled(start, to, () => true);
  }

  #openArticle(heading: Heading, start: number, titleStart: number, titleEnd: number): void {
    const { title } = heading;
    const number = heading.kind === 'part' ? '' : heading.number;
    this.#close(start);
    const part = this.#part ?? (/^[123]\.\d\d$/.test(number) ? Number(number[0]) : undefined);
    const end = this.#text.length;
    const article = { number, title, part, region: regionOf(title), start, end, titleStart, titleEnd, blocks: [] };
    this.#articles.push(article);
    this.#paragraphs = new Paragraphs(
      this.#text,
      article,
      heading.kind === 'part' ? `PART ${heading.number}` : number || title,
      this.#seen,
    );
  }

  /** What follows belongs to no article that came before; to `part`, until an article opens. */
  #close(end: number, part?: Heading): void {
    const last = this.#articles.at(-1);
    if (last && this.#paragraphs) last.end = end;
    this.#paragraphs = undefined;
    this.#untitled = { end, part };
  }

  /** The paragraphs of the open article; text before the first heading of a file or part has one of its own. */
  get #open(): Paragraphs {
    if (this.#paragraphs) return this.#paragraphs;
    const { end, part = untitled } = this.#untitled;
    const start = this.#articles.length === 0 && !part.title ? 0 : end;
    this.#openArticle(part, start, end + part.titleStart, end + part.titleEnd);
    return this.#paragraphs as unknown as Paragraphs;
  }
}

const untitled: Heading = { kind: 'article', number: '', title: '', titleStart: 0, titleEnd: 0 };

/** Lines that may open an article without a blank line before them. */
const opensWithNumber = /^(?:SECTION\s|PART\s|ITEM\s|END OF|§|\d{1,4}\s?\.\s?\d|\d{1,4}-\d{1,2}[A-Z.-])/;
