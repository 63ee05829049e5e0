/** One article read from its own text alone, so that it can be remembered by its content; all offsets are the article's. */
import type { Region, Unread } from '../../rules/model/specification.ts';
import { boundInWords, farBound, withBound } from './bounding.ts';
import { type Sentence, sentencesOf } from './clauses.ts';
import { underHead } from './column-head.ts';
import { designationsIn } from './designations.ts';
import { goesOn, type Lead, leadOf, nobody, pointsAway } from './leads.ts';
import { type MeasureRead, measuresIn } from './measure.ts';
import { type Named, namedIn } from './mentions.ts';
import type { ArticleText, Block } from './outline.ts';
import { type MeaningRead, meaningsIn, ownerOf } from './owners.ts';
import { type Recognised, recognise } from './recognise/index.ts';
import type { Run } from './run.ts';
import { isElsewhere, type ScopeLevel, subjectFrom, turned, without } from './scope.ts';
import type { Owned, Statement } from './statement.ts';
import { type Token, tokensOf } from './tokens.ts';
import { unreadIn } from './unread.ts';

export interface ArticleReading {
  /** With spans relative to the article and no path. */
  readonly facts: readonly Recognised[];
  readonly unread: readonly Unread[];
  readonly clauses: number;
  /** Orders to the designer. */
  readonly toDesigner: number;
  /** Elements named in requirement text, for the assembly. */
  readonly mentions: readonly { readonly named: Named; readonly block: Block; readonly tokens: readonly Token[] }[];
}

/** Articles whose words require nothing: they name documents, people and terms. */
const silent: ReadonlySet<Region> = new Set(['related', 'definitions']);

export function readArticle(article: ArticleText, text: string, index: number, section: Named): ArticleReading {
  const reader = new ArticleReader(article, text, index, section);
  for (const block of article.blocks) reader.read(block);
  return reader;
}

class ArticleReader implements ArticleReading {
  readonly facts: Recognised[] = [];
  readonly unread: Unread[] = [];
  readonly mentions: { named: Named; block: Block; tokens: readonly Token[] }[] = [];
  clauses = 0;
  toDesigner = 0;
  readonly #leads = new Map<Block, Lead>();
  readonly #title: Named;
  readonly #known = new Map<string, readonly MeaningRead[]>();

  constructor(
    readonly article: ArticleText,
    readonly text: string,
    readonly index: number,
    readonly section: Named,
  ) {
    const tokens = tokensOf(article.title, 0, article.title.length);
    this.#title = namedIn(tokens, { from: 0, to: tokens.length });
  }

  read(block: Block): void {
    if (block.kind === 'row') this.#row(block);
    else this.#passage(block, block.start, block.end, '', undefined);
  }

  #row(block: Block): void {
    const cells = block.cells ?? [];
    const row = this.#namedInRow(block);
    cells.forEach((cell, column) => {
      const head = block.header?.[column];
      const header = head ? this.text.slice(head.start, head.end).trim() : '';
      const columnNamed = head && 0 < column ? this.#namedAt(head.start, head.end) : nobody;
      const scope = row.elements.length + row.mixtures.length === 0 ? columnNamed : row;
      // A property named in the first cell owns the values of its row: "Air (%) | 6".
      const property = 0 < column && cells[0] ? this.text.slice(cells[0].start, cells[0].end).trim() : '';
      this.#passage(block, cell.start, cell.end, `${header} ${property}`.trim(), scope);
    });
  }

  /** The first cell that names elements gives the row its elements; a code under "Mixture" its mixture. */
  #namedInRow({ cells = [], header = [] }: Block): Named {
    const named = cells.map(({ start, end }) => this.#namedAt(start, end));
    const elements = named.find((each) => 0 < each.elements.length) ?? nobody;
    const [first, head] = [cells[0], header[0]];
    const code =
      first && head && /\bmix/i.test(this.text.slice(head.start, head.end))
        ? this.text.slice(first.start, first.end).trim().toLowerCase()
        : '';
    const own = named.flatMap(({ mixtures }) => mixtures);
    return { ...elements, mixtures: own.length === 0 && 0 < code.length && code.length <= 12 ? [code] : own };
  }

  #namedAt(start: number, end: number): Named {
    const tokens = tokensOf(this.text, start, end);
    return namedIn(tokens, { from: 0, to: tokens.length });
  }

  #passage(block: Block, start: number, end: number, header: string, row: Named | undefined): void {
    const tokens = tokensOf(this.text, start, end);
    if (tokens.length === 0) return;
    const lead = leadOf(tokens, block);
    if (!this.#leads.has(block)) this.#leads.set(block, lead);
    const sentences = sentencesOf(tokens);
    this.clauses += sentences.length;
    if (!silent.has(this.article.region) && !pointsAway(tokens))
      this.mentions.push({ named: this.#namedHere(tokens, block), block, tokens });
    const designations = designationsIn(this.text, tokens);
    const measures = measuresIn(this.text, tokens, designations.taken).map((value) => underHead(value, header));
    const around = this.#heading(block, header);
    let before: Named | undefined;
    const statements = sentences.flatMap((sentence) => {
      const meanings = meaningsIn(tokens, sentence);
      const owned = measures
        .filter(({ from }) => sentence.from <= from && from < sentence.to)
        .map((value) => this.#owned(tokens, value, sentence, meanings, around));
      const own = this.#inherited(tokens, sentence, namedIn(tokens, sentence), before);
      before = 0 < own.elements.length ? own : before;
      return sentence.predications.map((predication): Statement => {
        const named = without(namedIn(tokens, predication), [
          ...predication.replaced,
          ...(predication.exception ? [predication.exception] : []),
        ]);
        const levels = [
          ...level('words', named),
          ...level('words', own),
          ...(row ? level('row', row) : []),
          ...level('heading', lead.named),
          ...this.#above(block),
        ];
        return {
          text: this.text,
          tokens,
          block,
          region: this.article.region,
          sentence,
          predication,
          named,
          subject: isElsewhere(tokens, predication) ? turned(subjectFrom(levels)) : subjectFrom(levels),
          meanings,
          values: owned.filter(({ from }) => predication.from <= from && from < predication.to),
          sentenceValues: owned,
          header: header.toLowerCase(),
          heading: around.words,
          article: this.index,
        };
      });
    });
    this.toDesigner += statements.filter(
      ({ predication }) => predication.addressee === 'designer' && predication.force !== 'state',
    ).length;
    const among = this.#alternatives(block);
    const facts = recognise(statements, designations).map((fact) => (among === undefined ? fact : { ...fact, among }));
    this.facts.push(...facts);
    this.unread.push(...unreadIn(statements, facts));
  }

  /**
   * What a passage names, for the list of elements. "Slabs: 1. Interior: …" speaks of what stands over it; and an element
   * that says not itself whether it is in or out of doors is where the paragraphs and titles over it are.
   */
  #namedHere(tokens: readonly Token[], block: Block): Named {
    const named = namedIn(tokens, { from: 0, to: tokens.length });
    const above = this.#above(block);
    const over =
      named.exterior === 'unknown' ? [] : (above.find((each) => 0 < each.named.elements.length)?.named.elements ?? []);
    const elements =
      0 < named.elements.length ? named.elements : over.map((each) => ({ ...each, exterior: named.exterior }));
    const around = above.find((each) => each.named.exterior !== 'unknown')?.named.exterior ?? 'unknown';
    return {
      ...named,
      elements: elements.map((each) => (each.exterior === 'unknown' ? { ...each, exterior: around } : each)),
    };
  }

  /** "Cover the walks with burlap. Then apply compound and leave it on.": a sentence that goes on speaks of what came before. */
  #inherited(tokens: readonly Token[], sentence: Sentence, own: Named, before: Named | undefined): Named {
    if (0 < own.elements.length || 0 < own.mixtures.length || !before || own.exterior !== 'unknown') return own;
    return goesOn(tokens, sentence) || mixtureRegions.has(this.article.region) ? before : own;
  }

  #owned(
    tokens: readonly Token[],
    value: MeasureRead,
    sentence: Sentence,
    meanings: readonly MeaningRead[],
    around: Around,
  ): Owned {
    const near = ownerOf(tokens, value, meanings);
    const over = near
      ? undefined
      : around.meanings.find(({ meaning }) => meaning.carries.includes(value.measure.dimension));
    const bound = near ? farBound(tokens, near, value) : boundInWords(around.words.split('|')[0] ?? '');
    const inside = (run: Run): boolean => run.from <= value.from && value.from < run.to;
    const predication = sentence.predications.find(inside);
    const conditional =
      predication !== undefined &&
      (predication.conditions.some(inside) ||
        predication.replaced.some(inside) ||
        (predication.exception !== undefined && inside(predication.exception)));
    return { ...value, measure: withBound(value.measure, bound), owner: near?.meaning ?? over?.meaning, conditional };
  }

  /** Words over a passage that may own its values: the column head, then paragraphs above, then the article's title. */
  #heading(block: Block, header: string): Around {
    const words = [header];
    for (let above: Block | undefined = block.parent; above; above = above.parent)
      words.push(this.#leads.get(above)?.words ?? '');
    words.push(this.article.title);
    const meanings = words.flatMap((each) => this.#meaningsOf(each));
    return { words: words.join(' | ').toLowerCase(), meanings };
  }

  /** The words of a stem or title serve every passage below it: read once. */
  #meaningsOf(words: string): readonly MeaningRead[] {
    const known = this.#known.get(words);
    if (known) return known;
    const tokens = tokensOf(words, 0, words.length);
    const made = meaningsIn(tokens, { from: 0, to: tokens.length });
    this.#known.set(words, made);
    return made;
  }

  /** "Cure by one of the following:": what stands below are members of one list, of which one is to be used. */
  #alternatives(block: Block): string | undefined {
    for (let above = block.parent; above; above = above.parent) {
      if (oneOf.test(this.#leads.get(above)?.words ?? '')) return `${this.article.start}:${above.place}`;
    }
    return oneOf.test(this.article.title.toLowerCase()) ? `${this.article.start}:title` : undefined;
  }

  #above(block: Block): ScopeLevel[] {
    const levels: ScopeLevel[] = [];
    for (let above = block.parent; above; above = above.parent)
      levels.push(...level('stem', this.#leads.get(above)?.named ?? nobody));
    levels.push(...level('article', this.#title));
    // A section's title says in or out of doors; the elements it stands for are those that its text names.
    return [...levels, ...level('section', { ...this.section, elements: [], mixtures: [] })];
  }
}

interface Around {
  readonly words: string;
  readonly meanings: readonly MeaningRead[];
}

const mixtureRegions: ReadonlySet<Region> = new Set(['mixtures', 'summary']);

const oneOf =
  /\b(?:one|any|either) (?:or more )?of (?:the )?(?:following|these|methods)|\bany (?:one )?of\b|\bone of\b.*:$|\bfollowing (?:alternative|optional) methods\b/;

const level = (by: ScopeLevel['by'], named: Named): ScopeLevel[] => [{ by, named }];
