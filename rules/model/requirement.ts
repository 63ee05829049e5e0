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
  /** Water-soluble chloride, percent of cementitious mass. */
  readonly chloride?: Sourced<number>;
  readonly curing?: CuringMinimum;
  /** Rules on the binder that are text, not a number (sulfate classes). */
  readonly cementitious: readonly Sourced<string>[];
}

/** What would follow if something that the text leaves open were so. */
export interface Alternative {
  readonly given: string;
  readonly limits: Limits;
}

export interface Requirement {
  readonly code: CodeId;
  readonly classes: readonly string[];
  /** Size the air was read at; undefined: only what holds for every size up to 1-1/2 in. is judged. */
  readonly aggregate?: Quantity<'length'>;
  readonly lawful: Limits;
  /** Present where the code leaves the element out or asks less than a salted slab needs to last. */
  readonly recommended?: Limits;
  readonly alternatives: readonly Alternative[];
  readonly steps: readonly Step[];
  readonly citations: readonly Origin[];
}
