/** The maker for silences: something that should be required somewhere is required nowhere. */
import type { Severity } from '../model/project.ts';
import type { Context, RuleDefinition, RuleFinding } from '../model/rule.ts';
import type { Span } from '../model/source.ts';
import type { Article, Region, SectionDocument } from '../model/specification.ts';
import type { Duty } from '../tables/cited-specifications.ts';
import { defineRule, fitted, named, type Stated, surestFirst } from './define.ts';
import { type View, viewsOf } from './view.ts';

export interface Absence extends Stated {
  /** Which elements the question is put for. */
  readonly when: (view: View) => boolean;
  /** Does the text answer it? */
  readonly met: (view: View) => boolean;
  /** A cited specification or another section with this duty answers for it. */
  readonly duty: Duty;
  /** Values that an owner's design standard leaves to the designer are not missing there. */
  readonly asks: 'value' | 'clause';
  /** Articles in which the requirement belongs, best first; the finding is anchored on the heading of the first found. */
  readonly belongs: readonly Region[];
  /** What and where; `elements` is ready to print, `where` the article. */
  readonly message: (about: {
    readonly elements: string;
    readonly where: string;
    readonly views: readonly View[];
  }) => string;
  readonly detail?: (views: readonly View[]) => string | undefined;
  readonly required?: (view: View) => string | undefined;
  /** Carried points: short lines for what else is silent (one silence, one finding). */
  readonly lines?: readonly { readonly text: string; readonly silent: (view: View) => boolean }[];
  readonly level?: (views: readonly View[]) => Severity | undefined;
}

/** One finding for each manual or pair of sections, with its elements listed; groups differ only where what is required differs. */
export function absence(rule: Absence): RuleDefinition {
  return defineRule({ ...rule, gate: 'freezing', check: (context) => silences(rule, context) });
}

function* silences(rule: Absence, context: Context): Iterable<RuleFinding> {
  const silent = viewsOf(context).filter((view) => rule.when(view) && !isAnswered(rule, view));
  for (const views of grouped(rule, silent)) yield finding(rule, surestFirst(views));
}

function isAnswered(rule: Absence, view: View): boolean {
  if (rule.asks === 'value' && view.document.designStandard) return true;
  return rule.met(view) || view.supplied(rule.duty);
}

/** By the document that should hold the requirement, and by what is required. */
function grouped(rule: Absence, views: readonly View[]): Iterable<readonly View[]> {
  const groups = new Map<string, View[]>();
  for (const view of views) {
    const key = `${home(rule, view).path}\n${rule.required?.(view) ?? ''}`;
    groups.set(key, [...(groups.get(key) ?? []), view]);
  }
  return groups.values();
}

function finding(rule: Absence, views: readonly View[]): RuleFinding {
  const [view] = views as readonly [View, ...View[]];
  const document = home(rule, view);
  const article = articleFor(document, rule.belongs);
  const elements = views.map((each) => each.element);
  const lines = (rule.lines ?? []).filter(({ silent }) => silent(view)).map(({ text }) => text);
  const region = rule.belongs[0] as Region;
  return {
    at: anchor(document, article),
    message: fitted(
      rule.message({ elements: named(elements), where: article?.number || document.section || 'this section', views }),
    ),
    detail: [rule.detail?.(views), lines.length > 0 ? `Also silent: ${lines.join('; ')}.` : undefined]
      .filter((part) => part !== undefined)
      .join(' '),
    required: rule.required?.(view),
    elements,
    severity: rule.level?.(views),
    steps: view.requirement?.steps,
    remedy: { kind: 'insert', region, path: document.path, clause: rule.clause },
  };
}

/** Of the documents that name the element, the one with an article where the requirement belongs; else the first. */
function home(rule: Absence, view: View): SectionDocument {
  const documents = view.context.specification.documents.filter(({ path }) => view.element.documents.includes(path));
  return documents.findLast((document) => articleFor(document, rule.belongs) !== undefined) ?? view.document;
}

function articleFor(document: SectionDocument, belongs: readonly Region[]): Article | undefined {
  for (const region of belongs) {
    const article = document.articles.find((each) => each.region === region);
    if (article) return article;
  }
  return undefined;
}

/** The narrowest heading that should have held it; a text without headings is marked at its start. */
function anchor(document: SectionDocument, article: Article | undefined): Span {
  const heading = (article ?? document.articles[0])?.titleSpan;
  return heading ?? { path: document.path, start: 0, end: 1 };
}
