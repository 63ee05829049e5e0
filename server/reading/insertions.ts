/** Where new words would go: behind the last paragraph of an article, or as a new article of a part, in the section's own numbering. */
import type { Insertion, NewArticle } from '../../rules/model/specification.ts';
import type { ArticleText, Block } from './outline.ts';

export function nextParagraph(source: string, article: ArticleText, all: readonly ArticleText[]): Insertion {
  const eol = lineEndOf(source);
  const last = article.blocks.at(-1);
  if (!last) {
    const at = endOfLine(source, article.titleEnd);
    return { at, before: `${eol}${usualGap(source, all, eol)}${firstHead(source, all)}` };
  }
  const at = endOfLine(source, article.start + last.end);
  const top = article.blocks.filter(({ level, label }) => level <= 1 && label !== '').at(-1);
  const head = top ? headOf(source, article, top, nextName(top.label)) : bulletHead(source, article, last);
  return { at, before: `${eol}${gapBefore(source, article, top ?? last, eol)}${head}` };
}

/** New articles by part, for documents that number them "3.05". */
export function newArticles(source: string, articles: readonly ArticleText[]): Readonly<Record<number, NewArticle>> {
  const byPart: Record<number, NewArticle> = {};
  for (const article of articles) {
    const made = article.part === undefined ? undefined : articleAfter(source, article, articles);
    if (made && article.part !== undefined) byPart[article.part] = made;
  }
  return byPart;
}

function articleAfter(source: string, article: ArticleText, all: readonly ArticleText[]): NewArticle | undefined {
  const match = /^(\d+\.)(\d+)$/.exec(article.number);
  if (!match) return undefined;
  const number = `${match[1]}${String(Number(match[2]) + 1).padStart((match[2] as string).length, '0')}`;
  const eol = lineEndOf(source);
  const lead = source.slice(startOfLine(source, article.titleStart), article.titleStart);
  // A title that a conversion left inside a line has other words before it.
  const head = longestHead < lead.length ? `${number} ` : lead.replace(article.number, number);
  const last = article.blocks.at(-1);
  const at = endOfLine(source, last ? article.start + last.end : article.titleEnd);
  const capitals = article.title === article.title.toUpperCase();
  return {
    at,
    before: `${eol}${eol}${head}`,
    between: `${eol}${usualGap(source, all, eol)}${firstHead(source, all)}`,
    capitals,
  };
}

export const lineEndOf = (source: string): string => (source.includes('\r\n') ? '\r\n' : '\n');

function startOfLine(source: string, at: number): number {
  return Math.max(source.lastIndexOf('\n', at - 1), source.lastIndexOf('\r', at - 1)) + 1;
}

function endOfLine(source: string, at: number): number {
  const ends = [source.indexOf('\n', at), source.indexOf('\r', at)].filter((end) => 0 <= end);
  return ends.length === 0 ? source.length : Math.min(...ends);
}

/** Marks, label and blanks before the words of a line are never longer. */
const longestHead = 24;

/** What stands in the line before the paragraph's words, with the next label in place of its own. */
function headOf(source: string, article: ArticleText, block: Block, next: string): string {
  const start = article.start + block.start;
  const head = source.slice(startOfLine(source, start), start);
  const bare = block.label.replace(/[()]/g, '');
  const at = head.lastIndexOf(bare);
  // A label inside a line has other words before it: the new paragraph opens its own line.
  if (at < 0 || longestHead < head.length) return `${next}. `;
  return head.slice(0, at) + next.replace(/[()]/g, '') + head.slice(at + bare.length);
}

function nextName(label: string): string {
  const bare = label.replace(/[()]/g, '');
  if (/^\d+$/.test(bare)) return String(Number(bare) + 1);
  const numbers = /^((?:\d+\.)+)(\d+)$/.exec(bare);
  if (numbers) return `${numbers[1]}${Number(numbers[2]) + 1}`;
  const code = bare.charCodeAt(0);
  const isLast = bare.length !== 1 || /[zZ]/.test(bare);
  return isLast ? `${bare}${bare[0]}` : String.fromCharCode(code + 1);
}

function bulletHead(source: string, article: ArticleText, block: Block): string {
  const start = article.start + block.start;
  const head = source.slice(startOfLine(source, start), start);
  return /^\s*[-+*•]\s+$/.test(head) ? head : '';
}

/** The label that opens articles in this document, "A. " where it has none. */
function firstHead(source: string, all: readonly ArticleText[]): string {
  for (const article of all) {
    const first = article.blocks.find(
      ({ level, label }) => level === 1 && /^(?:A|1|a|01)$/.test(label.replace(/[()]/g, '')),
    );
    if (first) return headOf(source, article, first, first.label);
  }
  return 'A. ';
}

/** A blank line between paragraphs where the document leaves one. */
function gapBefore(source: string, article: ArticleText, block: Block, eol: string): string {
  if (block.label === '' && block.level === 0) return eol;
  let at = startOfLine(source, article.start + block.start) - 1;
  let ends = 0;
  for (; 0 <= at && /\s/.test(source[at] as string); at--) if (source[at] === '\n') ends++;
  return 1 < ends ? eol : '';
}

function usualGap(source: string, all: readonly ArticleText[], eol: string): string {
  const sample = all.find(({ blocks }) => 0 < blocks.length);
  return sample?.blocks[0] ? gapBefore(source, sample, sample.blocks[0], eol) : eol;
}
