/** Where new words would go: behind the last paragraph of an article, or as a new article of a part, in the section's own numbering. */
import type { Insertion, NewArticle } from '../../rules/model/specification.ts';
import type { ArticleText, Block } from './outline.ts';
import { nextLabel } from './successors.ts';

export function nextParagraph(source: string, article: ArticleText, all: readonly ArticleText[]): Insertion {
  const { eol, gap, first } = habitsOf(source, all);
  const last = article.blocks.at(-1);
  if (!last) {
    const at = endOfLine(source, article.titleEnd, article.end);
    return { at, before: `${eol}${gap}${first(article)}` };
  }
  const labelled = article.blocks.filter(({ level, label }) => level <= 1 && label !== '');
  const top = labelled.at(-1);
  // "Cure by one of the following: A. … B. …": another letter would be one more of the choices.
  if (top?.parent?.label === '')
    return aboveList(source, article, eol) ?? behind(source, article, last, `${eol}${eol}`);
  const next = top && nextLabel(top.label, labelled.at(-2)?.label);
  // "4.3" behind 4.2 may be an article of its own.
  const isTaken = next !== undefined && all.some(({ number }) => number === next);
  if (isTaken) return behind(source, article, last, `${eol}${eol}`);
  const head = top && next ? headOf(source, article, top, next) : bulletHead(source, article, last);
  // The first paragraph stands apart from the title; how the others stand apart from each other, a later one tells.
  const sample = 1 < labelled.length ? top : last;
  const before = last.kind === 'row' ? eol : gapBefore(source, article, sample ?? last, eol);
  return behind(source, article, last, `${eol}${before}${head}`);
}

/** New articles by part, for documents that number them "3.05". */
export function newArticles(source: string, articles: readonly ArticleText[]): Readonly<Record<number, NewArticle>> {
  const byPart: Record<number, NewArticle> = {};
  const lastOfParts = new Map(articles.map((article) => [article.part, article]));
  for (const [part, article] of lastOfParts) {
    const made = part === undefined ? undefined : articleAfter(source, article, articles);
    if (made && part !== undefined) byPart[part] = made;
  }
  return byPart;
}

function articleAfter(source: string, article: ArticleText, all: readonly ArticleText[]): NewArticle | undefined {
  if (!/^\d+\.\d+$/.test(article.number)) return undefined;
  let number = nextLabel(article.number, undefined);
  while (all.some((other) => other.number === number)) number = nextLabel(number, undefined);
  const { eol, gap, first } = habitsOf(source, all);
  const written = source.slice(startOfLine(source, article.titleStart), article.titleStart);
  const isInside = !written.includes(article.number) || longestHead < written.length;
  const head = isInside ? `${number} ` : written.replace(article.number, number);
  const last = article.blocks.at(-1);
  const at = endOfLine(source, last ? article.start + last.end : article.titleEnd, article.end);
  const capitals = article.title === article.title.toUpperCase();
  const opened = openEmphasis(head);
  return {
    at,
    before: `${eol}${eol}${head}`,
    between: `${opened}${eol}${gap}${first({ ...article, number })}`,
    capitals,
  };
}

const behind = (source: string, article: ArticleText, last: Block, before: string): Insertion => ({
  at: endOfLine(source, article.start + last.end, article.end),
  before,
});

/** First in the article, where a blank line keeps it apart from the stem of the list. */
function aboveList(source: string, article: ArticleText, eol: string): Insertion | undefined {
  const at = endOfLine(source, article.titleEnd, article.end);
  return source.startsWith(`${eol}${eol}`, at) ? { at, before: `${eol}${eol}` } : undefined;
}

interface Habits {
  readonly eol: string;
  /** Blank line between a title and its first paragraph. */
  readonly gap: string;
  /** What opens the first paragraph of an article. */
  readonly first: (article: Pick<ArticleText, 'number'>) => string;
}

/** Each article of a section asks for the same habits; they are found once. */
const known = new WeakMap<readonly ArticleText[], Habits>();

function habitsOf(source: string, all: readonly ArticleText[]): Habits {
  const found = known.get(all);
  if (found) return found;
  const eol = lineEndOf(source);
  const sample = all.find(({ blocks }) => 0 < blocks.length);
  const gap = sample?.blocks[0] ? gapBefore(source, sample, sample.blocks[0], eol) : eol;
  const habits = { eol, gap, first: firstHeads(source, all) };
  known.set(all, habits);
  return habits;
}

/** The label that opens articles in this document; none where it labels nothing, "A. " where it has no paragraphs yet. */
function firstHeads(source: string, all: readonly ArticleText[]): Habits['first'] {
  for (const article of all) {
    const first = article.blocks.find(({ level, label }) => level === 1 && label !== '');
    if (!first) continue;
    if (/^(?:A|1|a|01|i|I)$/.test(first.label.replace(/[()]/g, ''))) {
      const head = headOf(source, article, first, first.label);
      return () => head;
    }
    if (first.label === `${article.number}.1`)
      return ({ number }) => (number === '' ? '' : headOf(source, article, first, `${number}.1`));
  }
  const isEmpty = all.every(({ blocks }) => blocks.length === 0);
  return () => (isEmpty ? 'A. ' : '');
}

export const lineEndOf = (source: string): string =>
  source.includes('\r\n') ? '\r\n' : source.includes('\r') && !source.includes('\n') ? '\r' : '\n';

const isLineEnd = (character: string | undefined): boolean => character === '\n' || character === '\r';

/** Not further back than a label with its markup may reach: a whole section may stand in one line. */
function startOfLine(source: string, at: number): number {
  let start = at;
  while (0 < start && at - start <= farthestHead && !isLineEnd(source[start - 1])) start--;
  return start;
}

const farthestHead = 200;

/** The end of the line, or of the words at `at` where the next article begins in the same line. */
function endOfLine(source: string, at: number, articleEnd: number): number {
  let end = at;
  while (end < source.length && end <= articleEnd && !isLineEnd(source[end])) end++;
  if (end <= articleEnd) return end;
  let words = at;
  while (0 < words && /\s/.test(source[words - 1] as string)) words--;
  return words;
}

const longestHead = 24;

/** What stands in the line before the paragraph's words, with the next label in place of its own. */
function headOf(source: string, article: ArticleText, block: Block, next: string): string {
  const start = article.start + block.start;
  const head = source.slice(startOfLine(source, start), start).replace(/<!--.*?-->\s*|^\s{0,3}#{1,6}\s+/g, '');
  const at = head.lastIndexOf(block.label.replace(/[()]/g, ''));
  // A label inside a line has other words before it: the new paragraph opens its own line.
  const isInside = longestHead < head.length || /[a-z]{2}/i.test(head.slice(0, at).replace(/<[^<>]*>/g, ''));
  if (at < 0 || isInside) return /[)]$/.test(next) ? `${next} ` : `${next}. `;
  const bare = (label: string): string => label.replace(/[()]/g, '');
  const made = head.slice(0, at) + bare(next) + head.slice(at + bare(block.label).length);
  const even = openEmphasis(made) === '' ? made : made.replace(/[*_]+/g, '');
  return /\s$|;$/.test(even) ? even : `${even} `;
}

/** Emphasis that begins before the words and would end behind them: "**A. Curing.** …" */
const openEmphasis = (head: string): string => {
  const signs = head.match(/\*+|_+/g) ?? [];
  return signs.length % 2 === 1 ? (signs.at(-1) as string) : '';
};

function bulletHead(source: string, article: ArticleText, block: Block): string {
  const start = article.start + block.start;
  const head = source.slice(startOfLine(source, start), start);
  return /^\s*[-+*•]\s+$/.test(head) ? head : '';
}

/** A blank line between paragraphs where the document leaves one. */
function gapBefore(source: string, article: ArticleText, block: Block, eol: string): string {
  if (block.label === '' && block.level === 0) return eol;
  let at = startOfLine(source, article.start + block.start) - eol.length;
  while (source[at - 1] === ' ' || source[at - 1] === '\t') at--;
  return 0 < at && isLineEnd(source[at - 1]) ? eol : '';
}
