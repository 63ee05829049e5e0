/** A rule is a value: what it is, why, by whose authority, how it checks, and the examples that prove it. */
import type { Climate, CodeId, Level, Project, Severity, YesNo } from './project.ts';
import type { Span } from './source.ts';
import type { Element, Region, Specification } from './specification.ts';
import type { Known } from './table.ts';
import type { Step } from './worked.ts';

export const families = [
  'exposure',
  'air',
  'water',
  'strength',
  'cementitious',
  'finishing',
  'evaporation',
  'curing',
  'cold-weather',
  'deicers',
  'drainage',
  'sealers',
  'people',
  'submittals',
  'acceptance',
  'consistency',
  'language',
  'unfinished',
] as const;
export type Family = (typeof families)[number];

/** A pointer into a document that the user must check against local code. */
export interface Citation {
  readonly document: string;
  readonly edition: string;
  readonly clause: string;
  readonly status: Known;
  /** `protects`: the card's own ground is common practice; this is the clause that the fault would undo. */
  readonly protects?: true;
}

/** The clause offered to the writer, imperative mood, in both unit systems; square brackets are the engineer's choices. */
export interface SuggestedClause {
  readonly inchPound: string;
  readonly metric: string;
}

/** Where a suggested clause goes: into the article of this region, or in place of the words of a span. */
export type Remedy =
  | {
      readonly kind: 'insert';
      readonly region: Region;
      readonly path: string;
      readonly clause: SuggestedClause;
    }
  | {
      readonly kind: 'replace';
      readonly span: Span;
      readonly clause: SuggestedClause;
    };

export interface Because {
  readonly at: Span;
  readonly message: string;
}

/** What a rule yields. Severity by evidence, citations by code and order are `checking`'s work. */
export interface RuleFinding {
  readonly at: Span;
  /** What and where, at most 120 characters. */
  readonly message: string;
  /** The rest, one sentence or short lines. The reason of the rule is added by `checking`. */
  readonly detail?: string;
  readonly found?: string;
  readonly required?: string;
  /** The elements it is about, best evidence first; checking takes the severity down by their evidence. */
  readonly elements: readonly Element[];
  readonly because?: readonly Because[];
  readonly steps?: readonly Step[];
  /** Below or above the card's own level for this case. */
  readonly severity?: Severity;
  readonly citations?: readonly Citation[];
  readonly remedy?: Remedy;
  /** Rules named here stay silent about this very case (on these words, or on these elements for a silence). */
  readonly outranks?: readonly string[];
}

export interface Context {
  readonly specification: Specification;
  readonly project: Project;
}

/** Markdown sections with what must and must not be found in them; only this rule runs on them. */
export interface RuleExamples {
  /** name of the case -> section text with caret lines under the flagged words: `^^^^ words of the message` or `^^^^ note: words`. */
  readonly flagged: Readonly<Record<string, Example>>;
  readonly clean: Readonly<Record<string, Example>>;
}

/** A section text, or one with the settings it is read under (default: freezing, de-icers unknown, aci-318-19). */
export type Example =
  | string
  | {
      readonly text: string;
      readonly code?: CodeId;
      readonly climate?: Climate;
      readonly deicers?: YesNo;
    };

export interface RuleDefinition {
  readonly title: string;
  readonly severity: Level;
  /** Mechanism, one or two sentences. */
  readonly reason: string;
  /** By code; the first entry serves for codes not listed. */
  readonly citations: Readonly<Partial<Record<CodeId, readonly Citation[]>>>;
  readonly clause: SuggestedClause;
  /** Does the rule speak only where it freezes? Then the level falls with the climate's evidence. */
  readonly gate: 'freezing' | 'any';
  /** Rules that stay silent where this one speaks on the same words or, for a silence, the same elements. */
  readonly outranks: readonly string[];
  readonly check: (context: Context) => Iterable<RuleFinding>;
  readonly examples: RuleExamples;
}

/** A rule in the list: its id is its file's name, its family its folder's. */
export interface Rule extends RuleDefinition {
  readonly id: string;
  readonly family: Family;
}
