/** The maker for silences: something that should be required somewhere is required nowhere. */
import type { Fact, FactKind } from '../model/fact.ts';
import type { Severity } from '../model/project.ts';
import type { Context, RuleDefinition, RuleFinding } from '../model/rule.ts';
import type { Span } from '../model/source.ts';
import type { Article, Region, SectionDocument } from '../model/specification.ts';
import type { Duty } from '../tables/cited-specifications.ts';
import { defineRule, fitted, headOf, type Stated, surestFirst } from './define.ts';
import { type View, viewsOf } from './view.ts';

/** Elements for which one finding speaks: the same document should have said it, and the same is required. */
export type Views = readonly [View, ...View[]];

export interface Absence extends Stated {
  /** Which elements the question is put for. */
  readonly when: (view: View) => boolean;
  /** Does the text answer it? */
  readonly met: (view: View) => boolean;
  /** A cited specification or another section with this duty answers for it. */
  readonly duty: Duty;
  /** Values that an owner's design standard leaves to the designer are not missing there. */
  readonly asks: 'value' | 'clause';
  /** The statement that lacks it: the finding stands on these words, not on a heading. */
  readonly lackedBy?: (view: View) => Fact | undefined;
  /** Articles in which the requirement belongs, best first; without a statement the heading of the first found is marked. */
  readonly belongs: readonly [Region, ...Region[]];
  /** What and where; `elements` is ready to print, `where` the article. */
  readonly message: (about: { readonly elements: string; readonly where: string; readonly views: Views }) => string;
  readonly detail?: (views: Views) => string | undefined;
  readonly required?: (view: View) => string | undefined;
  /** Carried points: short lines for what else is silent (one silence, one finding). */
  readonly lines?: readonly { readonly text: string; readonly silent: (view: View) => boolean }[];
  readonly level?: (views: Views) => Severity | undefined;
}

/** One finding for each manual or pair of sections, with its elements listed; groups differ only where what is required differs. */
export function absence(rule: Absence): RuleDefinition {
  return defineRule({ ...rule, gate: 'freezing', check: (context) => silences(rule, context) });
}

function* silences(rule: Absence, context: Context): Iterable<RuleFinding> {
  const silent = viewsOf(context).filter((view) => view.isConcreteWork && rule.when(view) && !isAnswered(rule, view));
  for (const views of grouped(rule, silent)) yield finding(rule, surestFirst(views) as Views);
}

function isAnswered(rule: Absence, view: View): boolean {
  if (view.document.designStandard && (rule.asks === 'value' || !hasExecution(view.document))) return true;
  return rule.met(view) || view.supplied(rule.duty);
}

/** An owner's standard that stops at what designers specify leaves the work itself to their sections. */
const hasExecution = ({ articles }: SectionDocument): boolean => articles.some(({ part }) => part === execution);

/** PART 3 of a section. */
const execution = 3;

/** By the statement that lacks it or the document that should hold it, and by what is required. */
function grouped(rule: Absence, views: readonly View[]): Iterable<readonly View[]> {
  const groups = new Map<string, View[]>();
  for (const view of views) {
    const at = rule.lackedBy?.(view)?.spans[0];
    const place = at ? `${at.path} ${at.start}` : home(rule, view).path;
    const key = `${place}\n${rule.required?.(view) ?? ''}`;
    groups.set(key, [...(groups.get(key) ?? []), view]);
  }
  return groups.values();
}

function finding(rule: Absence, views: Views): RuleFinding {
  const [view] = views;
  const document = home(rule, view);
  const article = articleFor(document, rule.belongs);
  const elements = views.map((each) => each.element);
  const statement = rule.lackedBy?.(view);
  const where = statement?.place || (article ? headOf(article) : document.section || 'this section');
  return {
    at: statement?.spans[0] ?? anchor(document, article),
    message: fitted(elements, (names) => rule.message({ elements: names, where, views })),
    detail: [rule.detail?.(views), carried(rule, views)].filter(Boolean).join(' ') || undefined,
    required: rule.required?.(view),
    elements,
    severity: rule.asks === 'value' && views.every(isOnlyWorkedOn) ? 'note' : rule.level?.(views),
    steps: rule.asks === 'value' ? view.requirement?.steps : undefined,
    remedy: {
      kind: 'insert',
      region: rule.belongs[0],
      path: document.path,
      clause: rule.clause,
    },
  };
}

/** Named in PART 3 alone, where the text describes the concrete of other things: whether it has that concrete is a question. */
const isOnlyWorkedOn = (view: View): boolean =>
  isFirstNamedIn(view, execution) &&
  viewsOf(view.context).some((other) => other.document === view.document && !isFirstNamedIn(other, execution));

const isFirstNamedIn = ({ document, element: { first } }: View, part: number): boolean =>
  document.articles.some(
    (article) =>
      article.part === part &&
      article.span.path === first.path &&
      article.span.start <= first.start &&
      first.start < article.span.end,
  );

/** A point is carried only where it is silent for all the elements: else the line would be wrong for some of them. */
function carried(rule: Absence, views: Views): string | undefined {
  const lines = (rule.lines ?? []).filter(({ silent }) => views.every(silent)).map(({ text }) => text);
  return lines.length > 0 ? `Also not said: ${lines.join('; ')}.` : undefined;
}

/** Of the documents that name the element, the last one with an article where the requirement belongs; else the first. */
function home(rule: Absence, view: View): SectionDocument {
  const documents = view.context.specification.documents.filter(({ path }) => view.element.documents.includes(path));
  return documents.findLast((document) => articleFor(document, rule.belongs) !== undefined) ?? view.document;
}

/** By region: the article with that heading, else the one that speaks of the matter (finishes under "Laying", say). */
function articleFor(document: SectionDocument, belongs: readonly Region[]): Article | undefined {
  for (const region of belongs) {
    const article = document.articles.find((each) => each.region === region) ?? articleThatSpeaks(document, region);
    if (article) return article;
  }
  return undefined;
}

function articleThatSpeaks({ articles, facts }: SectionDocument, region: Region): Article | undefined {
  const kinds = spokenOf[region] ?? [];
  const fact = facts.find(({ kind, force }) => force !== 'ban' && kinds.includes(kind));
  return fact && articles[fact.article];
}

const spokenOf: Readonly<Partial<Record<Region, readonly FactKind[]>>> = {
  finishing: ['finish'],
  curing: ['curing', 'curing-method'],
  mixtures: ['air-entrainment', 'strength', 'w-cm', 'air-content'],
  'field-quality': ['test'],
  weather: ['cold-weather'],
};

/** The narrowest heading that should have held it; a text without headings is marked at its start. */
function anchor(document: SectionDocument, article: Article | undefined): Span {
  const heading = (article ?? document.articles[0])?.titleSpan;
  return heading ?? { path: document.path, start: 0, end: 1 };
}
