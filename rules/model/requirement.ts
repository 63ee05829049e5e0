/** What the documents require of one element: the lawful minimum and, where it differs, the durable recommendation. */
import type { CodeId } from './project.ts';
import type { Quantity } from './quantity.ts';
import type { Origin } from './table.ts';
import type { Step } from './worked.ts';

export interface Sourced<T> {
  readonly value: T;
  readonly origin: Origin;
}

/** Percent of air by volume of concrete. `reducedTarget` is permitted, never required. */
export interface AirBand {
  readonly target: number;
  readonly low: number;
  readonly high: number;
  readonly reducedTarget?: number;
  /** The document gives a range and no target: `target` is its middle. */
  readonly byRange?: true;
  readonly origin: Origin;
}

/** Percent of total cementitious mass, at most. */
export interface ScmCap {
  readonly material: 'fly ash' | 'slag cement' | 'silica fume' | 'fly ash + silica fume' | 'all three';
  readonly max: number;
  readonly origin: Origin;
}

export interface CuringMinimum {
  readonly days: number;
  readonly highEarlyDays: number;
  readonly temperature: Quantity<'temperature'>;
  readonly origin: Origin;
}

/** Water-soluble chloride, percent by mass, at most. */
export interface ChlorideLimit extends Sourced<number> {
  readonly of: 'cementitious materials' | 'cement';
}

/** One set of limits. A missing member means that the document asks nothing. */
export interface Limits {
  readonly wcm?: Sourced<Quantity<'ratio'>>;
  /** f'c at 28 days, the inch-pound value and its customary metric twin. */
  readonly strength?: Sourced<{
    readonly inchPound: Quantity<'stress'>;
    readonly metric: Quantity<'stress'>;
  }>;
  readonly air?: AirBand;
  /** Total air a hard-trowelled interior floor may have at most. */
  readonly airAtMost?: Sourced<number>;
  readonly scm: readonly ScmCap[];
  readonly chloride?: ChlorideLimit;
  readonly curing?: CuringMinimum;
  /** Rules on binder and aggregate that are text, not a number (sulfate and water classes). */
  readonly cementitious: readonly Sourced<string>[];
}

/** What would follow if something that the text leaves open were so. */
export interface Alternative {
  /** What is not given. */
  readonly about: 'structural' | 'reinforced' | 'aggregate' | 'binder' | 'finish';
  /** Completes "if it is …". */
  readonly given: string;
  readonly limits: Limits;
}

export interface Requirement {
  readonly code: CodeId;
  readonly classes: readonly string[];
  /** Size the air was read at; undefined: only what holds for every size up to 1-1/2 in. is judged. */
  readonly aggregate?: Quantity<'length'>;
  readonly lawful: Limits;
  /** What the project binds itself to by declaring a class of ACI 318 for an element that ACI 318 leaves out. */
  readonly declared?: Limits;
  /** Present where the code leaves the element out or asks less than a salted slab needs to last. */
  readonly recommended?: Limits;
  readonly alternatives: readonly Alternative[];
  readonly steps: readonly Step[];
  readonly citations: readonly Origin[];
}
