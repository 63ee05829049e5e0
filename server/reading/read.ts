/** The whole pipeline, from text to facts; start here. One pure function a stage, offsets into the author's own text. */
import type { Fact } from '../../rules/model/fact.ts';
import type { Source, Span } from '../../rules/model/source.ts';
import type { Article, Unread } from '../../rules/model/specification.ts';
import { type ArticleReading, readArticle } from './article.ts';
import { newArticles, nextParagraph } from './insertions.ts';
import { linesOf } from './lines.ts';
import { parse } from './markdown.ts';
import { mask } from './mask.ts';
import { namedIn } from './mentions.ts';
import { type ArticleText, outlineOf } from './outline.ts';
import { outlineItems } from './outline-items.ts';
import type { NamedThere, Reading } from './reading.ts';
import { signsOf } from './signs.ts';
import { tokensOf } from './tokens.ts';

/** Reads one section. Never fails: what was not understood is in `unread`. */
export function read(source: Source): Reading {
  const tree = parse(source.text);
  const masked = mask(source.text, tree);
  const lines = linesOf(source.text, masked, tree);
  const outline = outlineOf(source.text, lines.text, lines);
  const title = tokensOf(outline.title ?? '', 0, outline.title?.length ?? 0);
  const sectionNamed = namedIn(title, { from: 0, to: title.length });
  const readings = outline.articles.map((article, index) =>
    lifted(
      readArticle(article, lines.text.slice(article.start, article.end), index, sectionNamed),
      article,
      source.path,
    ),
  );
  const facts = readings.flatMap((each) => each.facts);
  return {
    source,
    section: outline.section,
    title: outline.title,
    outline: outlineItems(outline, lines.text),
    articles: outline.articles.map((article) => articleOf(article, source, outline.articles)),
    newArticles: newArticles(source.text, outline.articles),
    facts,
    named: readings.flatMap((each) => each.named),
    unread: readings.flatMap((each) => each.unread),
    clauses: readings.reduce((sum, { clauses }) => sum + clauses, 0),
    toDesigner: readings.reduce((sum, each) => sum + each.toDesigner, 0),
    furniture: lines.furniture,
    signs: signsOf(source.path, lines.text, outline, facts),
  };
}

interface Lifted {
  readonly facts: readonly Fact[];
  readonly unread: readonly Unread[];
  readonly named: readonly NamedThere[];
  readonly clauses: number;
  readonly toDesigner: number;
}

/** From offsets of the article to offsets of the file. */
function lifted(reading: ArticleReading, { start }: ArticleText, path: string): Lifted {
  const lift = (span: Span): Span => ({ path, start: span.start + start, end: span.end + start });
  const facts = reading.facts.map((fact): Fact => {
    const spans = fact.spans.map(lift) as [Span, ...Span[]];
    const when = fact.when && { when: { ...fact.when, span: lift(fact.when.span) } };
    const except = fact.except && { except: { ...fact.except, span: lift(fact.except.span) } };
    return { ...fact, spans, ...when, ...except };
  });
  const named = reading.mentions.map(({ named, block, tokens }) => ({
    ...named,
    elements: named.elements,
    place: block.place,
    start: start + (tokens[0]?.start ?? block.start),
    end: start + (tokens.at(-1)?.end ?? block.end),
  }));
  return {
    facts,
    named,
    unread: reading.unread.map((each) => ({ ...each, span: lift(each.span) })),
    clauses: reading.clauses,
    toDesigner: reading.toDesigner,
  };
}

function articleOf(article: ArticleText, { path, text }: Source, all: readonly ArticleText[]): Article {
  const { number, title, part, region, start, end, titleStart, titleEnd } = article;
  const titleSpan =
    titleStart < titleEnd ? { path, start: titleStart, end: titleEnd } : { path, start, end: Math.min(end, start + 1) };
  return {
    number,
    title,
    part,
    region,
    span: { path, start, end },
    titleSpan,
    next: nextParagraph(text, article, all),
  };
}
