/** One article read from its own text alone, so that it can be remembered by its content; all offsets are the article's. */
import type { Region, Unread } from '../../rules/model/specification.ts';
import { isBuilt } from './built.ts';
import { type Sentence, sentencesOf } from './clauses.ts';
import { underHead } from './column-head.ts';
import { designationsIn } from './designations.ts';
import { type Lead, leadOf, nobody, pointsAway } from './leads.ts';
import { measuresIn } from './measure.ts';
import { type Named, namedIn } from './mentions.ts';
import type { ArticleText, Block } from './outline.ts';
import { statementsOf } from './passage.ts';
import { type Recognised, recognise } from './recognise/index.ts';
import { Surroundings } from './surroundings.ts';
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

/** Where a stretch of text stands: its column's head and its row's elements, for a table cell. */
interface Setting {
  readonly header: string;
  readonly row?: Named;
}

class ArticleReader implements ArticleReading {
  readonly facts: Recognised[] = [];
  readonly unread: Unread[] = [];
  readonly mentions: { named: Named; block: Block; tokens: readonly Token[] }[] = [];
  clauses = 0;
  toDesigner = 0;
  readonly #surroundings: Surroundings;

  constructor(
    readonly article: ArticleText,
    readonly text: string,
    readonly index: number,
    section: Named,
  ) {
    this.#surroundings = new Surroundings(article, section);
  }

  read(block: Block): void {
    if (block.kind === 'row') this.#row(block);
    else this.#stretch(block, block.start, block.end, { header: '' });
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
      this.#stretch(block, cell.start, cell.end, { header: `${header} ${property}`.trim(), row: scope });
    });
  }

  /** The first cell that names elements gives the row its elements; a code under "Mixture" its mixture. */
  #namedInRow({ cells = [], header = [] }: Block): Named {
    const named = cells.map(({ start, end }) => this.#namedAt(start, end));
    const elements = named.find((each) => 0 < each.elements.length) ?? nobody;
    const [first, head] = [cells[0], header[0]];
    const isMixture = first && head && /\bmix/i.test(this.text.slice(head.start, head.end));
    const code = isMixture ? this.text.slice(first.start, first.end).trim().toLowerCase() : '';
    const own = named.flatMap(({ mixtures }) => mixtures);
    return { ...elements, mixtures: own.length === 0 && 0 < code.length && code.length <= longestCode ? [code] : own };
  }

  #namedAt(start: number, end: number): Named {
    const tokens = tokensOf(this.text, start, end);
    return namedIn(tokens, { from: 0, to: tokens.length });
  }

  /** A run-on text of many pages is read in pieces, so that no step looks at all of it for every word. */
  #stretch(block: Block, start: number, end: number, setting: Setting): void {
    const tokens = tokensOf(this.text, start, end);
    if (tokens.length === 0) return;
    const lead = leadOf(tokens, block);
    this.#surroundings.hold(block, lead);
    const sentences = sentencesOf(tokens);
    if (tokens.length <= longestPassage) {
      this.#passage(block, tokens, sentences, lead, setting);
      return;
    }
    for (const [from, to] of pieces(tokens, sentences, end)) {
      const piece = tokensOf(this.text, from, to);
      this.#passage(block, piece, sentencesOf(piece), lead, setting);
    }
  }

  #passage(
    block: Block,
    tokens: readonly Token[],
    sentences: readonly Sentence[],
    lead: Lead,
    { header, row }: Setting,
  ): void {
    const { text, index: article } = this;
    const { region } = this.article;
    this.clauses += sentences.length;
    const above = this.#surroundings.above(block);
    const designations = designationsIn(text, tokens);
    const measures = measuresIn(text, tokens, designations.taken).map((value) => underHead(value, header));
    const around = this.#surroundings.around(block, header);
    const over = [
      ...(row ? [{ by: 'row' as const, named: row }] : []),
      { by: 'heading' as const, named: lead.named },
      ...above,
    ];
    const statements = statementsOf(
      { text, tokens, block, region, article, header, around, over },
      sentences,
      measures,
    );
    const toDesigner = statements.filter(
      ({ predication: { addressee, force } }) => addressee === 'designer' && force !== 'state',
    );
    this.toDesigner += toDesigner.length;
    const among = this.#surroundings.alternatives(block);
    const facts = recognise(statements, designations).map((fact) => (among === undefined ? fact : { ...fact, among }));
    this.facts.push(...facts);
    if (!silent.has(region) && !pointsAway(tokens)) {
      const named = namedHere(tokens, above);
      const naming = { region, block, lead, statements, facts };
      const elements = named.elements.filter((each) => isBuilt(each, naming));
      this.mentions.push({ named: { ...named, elements }, block, tokens });
    }
    this.unread.push(...unreadIn(statements, facts));
  }
}

const longestCode = 12;
const longestPassage = 600;

/** Stretches of at most about `longestPassage` tokens that end with a sentence. */
function* pieces(
  tokens: readonly Token[],
  sentences: readonly Sentence[],
  end: number,
): Iterable<readonly [number, number]> {
  let first = 0;
  for (const { to } of sentences) {
    if (to - first < longestPassage && to < tokens.length) continue;
    yield [(tokens[first] as Token).start, tokens[to]?.start ?? end];
    first = to;
  }
}

/**
 * What a passage names, for the list of elements. "Slabs: 1. Interior: …" speaks of what stands over it; and an element
 * that says not itself whether it is in or out of doors is where the paragraphs and titles over it are.
 */
function namedHere(tokens: readonly Token[], above: ReturnType<Surroundings['above']>): Named {
  const named = namedIn(tokens, { from: 0, to: tokens.length });
  const over = above.find((each) => 0 < each.named.elements.length)?.named.elements ?? [];
  const meant = named.exterior === 'unknown' ? [] : over.map((each) => ({ ...each, exterior: named.exterior }));
  const around = above.find((each) => each.named.exterior !== 'unknown')?.named.exterior ?? 'unknown';
  const elements = 0 < named.elements.length ? named.elements : meant;
  return {
    ...named,
    elements: elements.map((each) => (each.exterior === 'unknown' ? { ...each, exterior: around } : each)),
  };
}
