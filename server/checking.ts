/** From a specification to findings: gate, evidence, severity, one voice, citations, order; a failing rule is named. */
import type { Project, Severity } from '../rules/model/project.ts';
import type { Because, Citation, Family, Rule } from '../rules/model/rule.ts';
import type { Span } from '../rules/model/source.ts';
import type { Specification } from '../rules/model/specification.ts';
import type { Step } from '../rules/model/worked.ts';

/** Why an element counts as exterior, and how surely. */
export interface ElementEvidence {
  readonly element: string;
  readonly band: string;
  readonly points: number;
  readonly cues: readonly { readonly words: string; readonly place: string; readonly points: number }[];
}

/** Text edits that would mend a finding, in order of their place; mechanical, or for the engineer to decide. */
export interface Suggestion {
  readonly title: string;
  readonly mechanical: boolean;
  readonly edits: readonly { readonly span: Span; readonly text: string }[];
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
}

export declare function check(specification: Specification, project: Project, rules: readonly Rule[]): Checked;
