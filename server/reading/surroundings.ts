/** What stands over a passage: the paragraphs that hold it, the article's and the section's title, the column's head. */
import { type Lead, nobody } from './leads.ts';
import { type Named, namedIn } from './mentions.ts';
import type { ArticleText, Block } from './outline.ts';
import { type MeaningRead, meaningsIn } from './owners.ts';
import type { ScopeLevel } from './scope.ts';
import { tokensOf } from './tokens.ts';

/** Words over a passage, nearest first, and the meanings in them that may own its values. */
export interface Around {
  /** In small letters, joined by bars. */
  readonly words: string;
  readonly meanings: readonly MeaningRead[];
}

export class Surroundings {
  readonly #article: ArticleText;
  readonly #section: Named;
  readonly #title: Named;
  readonly #leads = new Map<Block, Lead>();
  readonly #meanings = new Map<string, readonly MeaningRead[]>();

  constructor(article: ArticleText, section: Named) {
    this.#article = article;
    this.#section = section;
    const tokens = tokensOf(article.title, 0, article.title.length);
    this.#title = namedIn(tokens, { from: 0, to: tokens.length });
  }

  /** The first passage of a block heads what stands below it. */
  hold(block: Block, lead: Lead): void {
    if (!this.#leads.has(block)) this.#leads.set(block, lead);
  }

  /** Where the elements of a passage may be named, nearest first. */
  above(block: Block): ScopeLevel[] {
    const stems = parents(block).map(
      (each): ScopeLevel => ({ by: 'stem', named: this.#leads.get(each)?.named ?? nobody }),
    );
    // A section's title says in or out of doors; the elements it stands for are those that its text names.
    const section = { ...this.#section, elements: [], mixtures: [] };
    return [...stems, { by: 'article', named: this.#title }, { by: 'section', named: section }];
  }

  around(block: Block, header: string): Around {
    const words = [header, ...parents(block).map((each) => this.#leads.get(each)?.words ?? ''), this.#article.title];
    return { words: words.join(' | ').toLowerCase(), meanings: words.flatMap((each) => this.#meaningsOf(each)) };
  }

  /** "Cure by one of the following:": the id of the list of alternatives that the block stands in. */
  alternatives(block: Block): string | undefined {
    const { start, title } = this.#article;
    const list = parents(block).find((each) => oneOf.test(this.#leads.get(each)?.words ?? ''));
    if (list) return `${start}:${list.place}`;
    return oneOf.test(title.toLowerCase()) ? `${start}:title` : undefined;
  }

  /** The words of a stem or title serve every passage below it: read once. */
  #meaningsOf(words: string): readonly MeaningRead[] {
    const known = this.#meanings.get(words);
    if (known) return known;
    const tokens = tokensOf(words, 0, words.length);
    const made = meaningsIn(tokens, { from: 0, to: tokens.length });
    this.#meanings.set(words, made);
    return made;
  }
}

const oneOf =
  /\b(?:one|any|either) (?:or more )?of (?:the )?(?:following|these|methods)|\bany (?:one )?of\b|\bone of\b.*:$|\bfollowing (?:alternative|optional) methods\b/;

function parents(block: Block): Block[] {
  const found: Block[] = [];
  for (let above = block.parent; above; above = above.parent) found.push(above);
  return found;
}
