/** The working unit: rules read facts, never words. */
import type { Addressee, AlternativeId, Exception, Force, Quoted } from './clause.ts';
import type { Measure } from './measure.ts';
import type { Span } from './source.ts';
import type { ElementKind } from './specification.ts';

/** How specific the binding of a fact to its subject is, most specific first. */
export const scopes = ['words', 'row', 'stem', 'heading', 'article', 'section', 'all'] as const;
export type Scope = (typeof scopes)[number];

/** An element as a clause names it. */
export interface Mention {
  /** Lower case, singular, without plain modifiers: "shelter walk"; "walk" for "new exterior concrete walks". */
  readonly name: string;
  readonly kind: ElementKind;
  /** Nothing but the head noun is left: it names every element of its kind. */
  readonly bare: boolean;
}

/** Whose fact it is. No elements and no mixtures: everything the document speaks of. */
export interface Subject {
  readonly elements: readonly Mention[];
  readonly mixtures: readonly string[];
  readonly exterior: 'yes' | 'no' | 'unknown';
  readonly by: Scope;
}

/** What every fact carries. */
export interface Said {
  readonly spans: readonly [Span, ...Span[]];
  /** The clause as written, white space folded, for quoting. */
  readonly words: string;
  /** The document's own numbering, "2.03.B.1". */
  readonly place: string;
  /** Index of the article in its document. */
  readonly article: number;
  readonly force: Force;
  readonly addressee: Addressee;
  readonly subject: Subject;
  readonly when?: Quoted;
  readonly except?: Exception;
  readonly among?: AlternativeId;
  /** Why the reading is unsure: a lost sign, a letter for a digit. A doubtful value is never held against the text. */
  readonly doubt?: string;
}

/** What a clause comes to: a ban that need, weather or the finisher may lift lets the thing be done. */
export const comesTo = ({ force, except }: Said): Force => (force === 'ban' && except?.open ? 'permit' : force);

/** Kinds of fact that are a value with a unit. */
export type PropertyKind =
  | 'air-content'
  | 'w-cm'
  | 'strength'
  | 'aggregate-size'
  | 'scm'
  | 'chloride'
  | 'cement-content'
  | 'slump'
  | 'curing-duration'
  | 'curing-temperature'
  | 'curing-strength'
  | 'cold-protection'
  | 'deicer-hold-off'
  | 'drying'
  | 'evaporation'
  | 'slope'
  | 'coverage'
  | 'concrete-temperature';

/** Kinds of fact that are something done. */
export type ActKind =
  | 'finish'
  | 'surface-water'
  | 'bleed-water'
  | 'dry-cement'
  | 'dry-shake'
  | 'over-finishing'
  | 'evaporation-retarder'
  | 'fogging'
  | 'curing-method'
  | 'curing'
  | 'wet-curing-in-frost'
  | 'site-water'
  | 'cold-weather'
  | 'deicer-use'
  | 'sealer'
  | 'sealer-instead'
  | 'accelerator'
  | 'air-entrainment';

/** Kinds of fact that are a name. */
export type NamedKind =
  | 'exposure-class'
  | 'deicers'
  | 'freezing'
  | 'standard'
  | 'section-reference'
  | 'elsewhere'
  | 'test'
  | 'finishing-tool'
  | 'trait'
  | 'season'
  | 'choice';

export type FactKind = PropertyKind | ActKind | NamedKind;

/** Slots of something done; `steps` is the order of operations of a finish, first to last. */
export interface Act {
  readonly verb: string;
  readonly object?: string;
  readonly tool?: string;
  readonly material?: string;
  readonly manner?: string;
  readonly time?: string;
  readonly steps?: readonly string[];
}

export interface ValueFact extends Said {
  readonly kind: PropertyKind;
  readonly value: Measure;
  /** What the value is of where the kind alone does not say: "fly ash", "mean daily temperature". */
  readonly of?: string;
  /** Age of a strength in days, where written. */
  readonly age?: number;
  /** How the value was reached where it was not written as such (gallons per sack to w/cm). */
  readonly working?: readonly string[];
}

export interface ActFact extends Said {
  readonly kind: ActKind;
  readonly act: Act;
}

export interface NamedFact extends Said {
  readonly kind: NamedKind;
  readonly value: string;
  /** A refinement: system of an exposure class, role of a standard ("requirement", "material", "test", "guide", "listed"). */
  readonly of?: string;
}

export type Fact = ValueFact | ActFact | NamedFact;

export const propertyKinds: ReadonlySet<string> = new Set<PropertyKind>([
  'air-content',
  'w-cm',
  'strength',
  'aggregate-size',
  'scm',
  'chloride',
  'cement-content',
  'slump',
  'curing-duration',
  'curing-temperature',
  'curing-strength',
  'cold-protection',
  'deicer-hold-off',
  'drying',
  'evaporation',
  'slope',
  'coverage',
  'concrete-temperature',
]);

export const isValue = (fact: Fact): fact is ValueFact => propertyKinds.has(fact.kind);
export const isAct = (fact: Fact): fact is ActFact => 'act' in fact;
export const isNamed = (fact: Fact): fact is NamedFact => !isAct(fact) && !isValue(fact);
