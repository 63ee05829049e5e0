/** A project manual as the reader understood it: documents, elements and facts; nothing is merged. */
import type { Fact } from './fact.ts';
import type { Span } from './source.ts';

/** What an article is about, decided by its heading; it decides what a sentence in it can count as. */
export const regions = [
  'references',
  'related',
  'definitions',
  'summary',
  'submittals',
  'quality',
  'delivery',
  'materials',
  'mixtures',
  'preparation',
  'placing',
  'finishing',
  'curing',
  'weather',
  'field-quality',
  'repair',
  'closeout',
  'joints',
  'schedule',
  'other',
] as const;
export type Region = (typeof regions)[number];

export interface Article {
  /** "2.03"; empty where the document does not number its articles. */
  readonly number: string;
  readonly title: string;
  readonly part?: number;
  readonly region: Region;
  readonly span: Span;
  readonly titleSpan: Span;
  /** Where a further paragraph would go, and what stands before its words there. */
  readonly next: Insertion;
}

/** A place for new words in the section's own numbering: `before` holds line ends, blanks and the label. */
export interface Insertion {
  readonly at: number;
  readonly before: string;
}

/** A place for a new article: its title goes behind `before`, its first paragraph behind `between`. */
export interface NewArticle extends Insertion {
  readonly between: string;
  /** Titles stand in capitals. */
  readonly capitals: boolean;
}

/** A clause that holds a number or a key word and gave no fact. */
export interface Unread {
  readonly span: Span;
  readonly place: string;
  readonly words: string;
  readonly reason: string;
}

/** One section file. */
export interface SectionDocument {
  readonly path: string;
  /** "03 30 00"; undefined where the text does not say. */
  readonly section?: string;
  readonly title?: string;
  readonly articles: readonly Article[];
  readonly facts: readonly Fact[];
  readonly unread: readonly Unread[];
  /** Clauses read. */
  readonly clauses: number;
  /** Signs that the file is concrete work at all; without a single one its silences are no faults. */
  readonly signs?: readonly string[];
  /** Text speaks to designers: an owner's design standard. */
  readonly designStandard: boolean;
  /** Where a new article of a part would go, by part; empty where articles are not numbered by part. */
  readonly newArticles: Readonly<Record<number, NewArticle>>;
  /** Numbers of sections this one hands concrete, curing or weather to. */
  readonly handsTo: readonly string[];
}

/** One line of evidence on where an element is and what reaches it (the scale is in formulas/exposure-evidence). */
export interface Cue {
  readonly kind:
    | 'freeze-class'
    | 'no-freeze-class'
    | 'outdoor-noun'
    | 'either-noun'
    | 'weather-word'
    | 'outdoor-section'
    | 'indoor-noun'
    | 'outdoor-finish'
    | 'indoor-finish';
  readonly words: string;
  readonly place: string;
  readonly span?: Span;
}

/** Head nouns of concrete elements. */
export type ElementKind =
  | 'walk'
  | 'curb'
  | 'ramp'
  | 'steps'
  | 'apron'
  | 'drive'
  | 'parking'
  | 'plaza'
  | 'pad'
  | 'pavement'
  | 'dock'
  | 'deck'
  | 'slab'
  | 'floor'
  | 'wall'
  | 'footing'
  | 'flatwork'
  | 'concrete'
  | 'other';

/** Something that is built of concrete and named in the manual. */
export interface Element {
  /** As written, lower case, singular: "shelter walk". */
  readonly name: string;
  /** As a message says it: "shelter walks". */
  readonly label: string;
  readonly kind: ElementKind;
  /** Documents that name it in requirement text. */
  readonly documents: readonly string[];
  /** Mixtures that serve it. */
  readonly mixtures: readonly string[];
  readonly cues: readonly Cue[];
  /** Words that say that de-icers reach it, or do not. */
  readonly salted: {
    readonly value: 'yes' | 'no' | 'unknown';
    readonly cue?: Cue;
  };
  /** "structural", "plain", "reinforced", "prestressed", "on ground", "suspended", "precast", "slipform", "pervious", ... */
  readonly traits: ReadonlySet<string>;
  readonly first: Span;
}

export interface Specification {
  readonly documents: readonly SectionDocument[];
  readonly elements: readonly Element[];
  /** All facts of all documents in reading order. */
  readonly facts: readonly Fact[];
}
