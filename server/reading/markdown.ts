/** The only file that knows the Markdown parser: the dialect that specifications are written in, and a guard against texts that would hang it. */
import type { Root } from 'mdast';
import { frontmatterFromMarkdown } from 'mdast-util-frontmatter';
import { gfmStrikethroughFromMarkdown } from 'mdast-util-gfm-strikethrough';
import { gfmTableFromMarkdown } from 'mdast-util-gfm-table';
import { frontmatter } from 'micromark-extension-frontmatter';
import { gfmStrikethrough } from 'micromark-extension-gfm-strikethrough';
import { gfmTable } from 'micromark-extension-gfm-table';
import remarkParse from 'remark-parse';
import { type Processor, unified } from 'unified';

export type { Root, RootContent } from 'mdast';

/** The tree of a section; offsets are those of `text`. Never fails. */
export function parse(text: string): Root {
  // The parser would drop a byte order mark and shift every offset behind it.
  return processor.parse(calmed(text.startsWith('\ufeff') ? ` ${text.slice(1)}` : text));
}

/**
 * What is switched off would eat contract text: indented code hides pasted paragraphs, `[Walks]: F3` would be a link
 * definition, `====` rulings would make headings, and a bracket after `!` an image.
 */
const dialect = {
  disable: { null: ['codeIndented', 'definition', 'setextUnderline', 'autolink', 'labelStartImage'] },
};

const processor = unified().use(remarkParse).use(specificationDialect).freeze();

function specificationDialect(this: Processor): void {
  const data = this.data() as Record<string, unknown[] | undefined>;
  data.micromarkExtensions = [gfmTable(), gfmStrikethrough({ singleTilde: false }), frontmatter('yaml'), dialect];
  data.fromMarkdownExtensions = [
    gfmTableFromMarkdown(),
    gfmStrikethroughFromMarkdown(),
    frontmatterFromMarkdown('yaml'),
  ];
}

/** Deepest nesting of containers in one line, and most delimiters in one paragraph, that any real section needs. */
const deepest = 8;
const mostDelimiters = 400;

/**
 * What the parser is given: text of the same length in which it cannot be made to work more than in proportion to the
 * length. Container markers beyond the eighth of a line are blanked; emphasis, link, code, tag and escape signs beyond
 * the four-hundredth of a paragraph become a character without meaning. Seen without it: 8 kB of `- ` on one line take 18 s.
 */
export function calmed(text: string): string {
  const out: string[] = [];
  const borders = new Borders();
  let inParagraph = 0;
  for (const line of text.split(/(?<=\n|\r(?!\n))/)) {
    const [calm, count] = withoutSurplusDelimiters(withoutDeepMarkers(line), borders.opens(line) ? 0 : inParagraph);
    inParagraph = count;
    out.push(calm);
  }
  return out.join('');
}

/** Where delimiters cannot reach back: at blank lines, headings, bullets, and in each row of a table. */
class Borders {
  /** Lines since the last border. */
  #lines = 0;
  #before = '';
  #inTable = false;

  opens(line: string): boolean {
    const isRow = this.#inTable || (this.#lines === 1 && isRuling(line, this.#before));
    this.#inTable = isRow && /^\s*\|/.test(line);
    // An empty bullet, and a row below a line of text, go on with the paragraph.
    const opens = this.#inTable || /^\s*(?:$|[-+*]\s+\S|#{1,6}\s)/.test(line);
    this.#lines = opens && line.trim() === '' ? 0 : this.#lines + 1;
    this.#before = line;
    return opens;
  }
}

/** The ruling below a table's heading row, which has as many cells. */
const isRuling = (line: string, head: string): boolean =>
  /^\s*\|[\s|:-]+$/.test(line) && line.split('|').length === head.replaceAll('\\|', '').split('|').length;

const marker = /[ \t]*(?:>|(?:[-+*]|\d{1,9}[.)])(?=\s|$))/y;
const markers = new RegExp(`^(?:${marker.source})+`);

function withoutDeepMarkers(line: string): string {
  let at = 0;
  for (let count = 0; count < deepest; count++) {
    marker.lastIndex = at;
    if (!marker.test(line)) return line;
    at = marker.lastIndex;
  }
  return line.slice(0, at) + line.slice(at).replace(markers, (run) => ' '.repeat(run.length));
}

function withoutSurplusDelimiters(line: string, before: number): readonly [string, number] {
  let count = before;
  for (const character of line) if (delimiters.has(character)) count++;
  if (count <= mostDelimiters) return [line, count];
  let seen = before;
  const calm = line.replace(/[*_[\]`<~\\]/g, (character) => (mostDelimiters < ++seen ? harmless : character));
  return [calm, seen];
}

/** Neither blank nor sign to the parser; from the private range, so that no text means anything by it. */
const harmless = '\ue000';

const delimiters = new Set('*_[]`<~\\');
