/** From a specification to findings: gate, evidence, severity, one voice, citations, order; a failing rule is named. */
import { type View, viewsOf } from '../rules/kinds/view.ts';
import type { Project, Severity } from '../rules/model/project.ts';
import { projectFor } from '../rules/model/project.ts';
import type { Because, Citation, Context, Family, Rule, RuleFinding } from '../rules/model/rule.ts';
import { inReadingOrder, type Span } from '../rules/model/source.ts';
import type { Specification } from '../rules/model/specification.ts';
import type { Step } from '../rules/model/worked.ts';
import { openQuestions, type Question } from '../rules/questions.ts';
import { levelFor } from './leveling.ts';
import { placeOf } from './places.ts';
import type { Levels } from './settings.ts';
import { type Suggestion, suggestionFor } from './suggesting.ts';
import { oneVoice } from './voices.ts';

export type { Suggestion } from './suggesting.ts';

/** Why an element counts as exterior, and how surely. */
export interface ElementEvidence {
  readonly element: string;
  readonly band: string;
  readonly points: number;
  readonly cues: readonly { readonly words: string; readonly place: string; readonly points: number }[];
}

/** A finding as every renderer, the editor and outside tools see it. */
export interface Finding {
  readonly rule: string;
  readonly family: Family;
  readonly severity: Severity;
  readonly span: Span;
  /** The document's own numbering, "2.03.B.1". */
  readonly place: string;
  /** At most 120 characters: what and where. */
  readonly message: string;
  /** The rest, and why. */
  readonly detail: string;
  readonly found?: string;
  readonly required?: string;
  readonly elements: readonly string[];
  readonly evidence: readonly ElementEvidence[];
  readonly because: readonly (Because & { readonly place: string })[];
  readonly steps: readonly Step[];
  readonly citations: readonly Citation[];
  readonly suggestion?: Suggestion;
}

export interface Failure {
  readonly rule: string;
  readonly error: string;
}

export interface Checked {
  readonly findings: readonly Finding[];
  readonly failures: readonly Failure[];
  /** For the engineer: what the text leaves to a document that was not read. */
  readonly questions: readonly Question[];
}

/** What a rule said, at the level that evidence and settings leave it. */
export interface Judged {
  readonly rule: Rule;
  readonly said: RuleFinding;
  readonly severity: Severity;
  /** Why the level is not the rule's own. */
  readonly because?: string;
}

const asTheyAre: Levels = { everywhere: {}, byPath: {} };

export function check(
  specification: Specification,
  project: Project,
  rules: readonly Rule[],
  levels: Levels = asTheyAre,
): Checked {
  const turns = checkByRule(specification, project, rules, levels);
  for (let turn = turns.next(); ; turn = turns.next()) if (turn.done) return turn.value;
}

/** The same, stopping after each rule, so that a host can answer others between two rules. */
export function* checkByRule(
  specification: Specification,
  project: Project,
  rules: readonly Rule[],
  levels: Levels = asTheyAre,
): Generator<undefined, Checked> {
  const context: Context = { specification, project };
  const judged: Judged[] = [];
  const failures: Failure[] = [];
  for (const rule of rules) {
    try {
      for (const said of rule.check(context)) judged.push(...judge(rule, said, context, levels));
    } catch (error) {
      failures.push({ rule: rule.id, error: error instanceof Error ? error.message : String(error) });
    }
    yield undefined;
  }
  const findings = oneVoice(judged).map((each) => finished(each, context));
  return { findings: findings.sort(inOrder), failures, questions: openQuestions(context) };
}

const ranks: Readonly<Record<Severity, number>> = { must: 0, should: 1, note: 2 };

const inOrder = (a: Finding, b: Finding): number =>
  inReadingOrder(a.span, b.span) || ranks[a.severity] - ranks[b.severity] || (a.rule < b.rule ? -1 : 1);

function judge(rule: Rule, said: RuleFinding, context: Context, levels: Levels): Judged[] {
  const level = levelFor(rule, said, viewOf(said, context), levels);
  return level === undefined ? [] : [{ rule, said, ...level }];
}

/** The element a finding stands on is the one with the best evidence, named first. */
function viewOf({ elements: [first] }: RuleFinding, context: Context): View | undefined {
  return first && viewsOf(context).find(({ element }) => element === first);
}

function finished({ rule, said, severity, because }: Judged, context: Context): Finding {
  const { specification, project } = context;
  const own = projectFor(project, said.at.path);
  const views = viewsOf(context).filter(({ element }) => said.elements.includes(element));
  return {
    rule: rule.id,
    family: rule.family,
    severity,
    span: said.at,
    place: placeOf(specification, said.at),
    message: said.message,
    detail: [said.detail, rule.reason, because].filter(Boolean).join(' '),
    found: said.found,
    required: said.required,
    elements: said.elements.map(({ label }) => label),
    evidence: views.map(evidenceOf),
    because: (said.because ?? []).map((each) => ({ ...each, place: placeOf(specification, each.at) })),
    steps: said.steps ?? [],
    citations: said.citations ?? citationsFor(rule, own),
    suggestion: said.remedy && suggestionFor(said.remedy, specification, own),
  };
}

function citationsFor({ citations }: Rule, { code }: Project): readonly Citation[] {
  return citations[code] ?? Object.values(citations)[0] ?? [];
}

function evidenceOf({ element, evidence }: View): ElementEvidence {
  const cues = evidence.counted.map(({ cue, points }) => ({ words: cue.words, place: cue.place, points }));
  return { element: element.label, band: evidence.band, points: evidence.points, cues };
}
