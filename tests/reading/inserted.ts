/** A clause put where the reader says that a new paragraph or article would go, and the section read again. */
import { newArticles, nextParagraph } from '../../server/reading/insertions.ts';
import type { ArticleText } from '../../server/reading/outline.ts';
import { openings, outlined } from './outlined.ts';

const clause = 'Zinc anodes shall be kept one arm apart.';

export interface Inserted {
  /** What stands before the clause. */
  readonly before: string;
  /** What opened that did not open before, in the order of the text. */
  readonly opened: readonly string[];
  /** What opened before and no longer does. */
  readonly lost: readonly string[];
  /** Index of the article that holds the clause, and the place it is cited by; only where its words stand alone. */
  readonly article: number;
  readonly place: string | undefined;
  readonly text: string;
}

export function withParagraph(text: string, index: number): Inserted {
  const { articles } = outlinedOnce(text).outline;
  const { at, before } = nextParagraph(text, articles[index] as ArticleText, articles);
  return inserted(text, at, before, clause);
}

/** With a new article of the part that is numbered so. */
export function withArticle(text: string, part: number): Inserted | undefined {
  const made = newArticles(text, outlinedOnce(text).outline.articles)[part];
  const title = made?.capitals ? 'ZINC ANODES' : 'Zinc anodes';
  return made && inserted(text, made.at, made.before, `${title}${made.between}${clause}`);
}

function inserted(text: string, at: number, before: string, words: string): Inserted {
  const after = text.slice(0, at) + before + words + text.slice(at);
  const [old, now] = [outlinedOnce(text), outlined(after)];
  const [were, are] = [old.outline, now.outline].map((outline) => openings(outline).map(({ said }) => said));
  const { articles } = now.outline;
  const holds = articles.map(({ start, blocks }) =>
    blocks.find((block) => now.masked.slice(start + block.start, start + block.end).trim() === clause),
  );
  const article = holds.findIndex((block) => block !== undefined);
  return {
    before,
    opened: without(are ?? [], were ?? []),
    lost: without(were ?? [], are ?? []),
    article,
    place: holds[article]?.place,
    text: after,
  };
}

/** A section is asked for each of its articles in turn. */
let last: { readonly text: string; readonly made: ReturnType<typeof outlined> } | undefined;

function outlinedOnce(text: string): ReturnType<typeof outlined> {
  if (last?.text !== text) last = { text, made: outlined(text) };
  return last.made;
}

/** What is left of `all` when each of `some` is taken away once. */
function without(all: readonly string[], some: readonly string[]): readonly string[] {
  const left = [...all];
  for (const each of some) if (left.includes(each)) left.splice(left.indexOf(each), 1);
  return left;
}
