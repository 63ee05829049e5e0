/** A result that can show how it was reached. */
import type { Origin } from './table.ts';

/** One line of working: "F3, plain concrete: w/cm 0.45" with where the number stands. */
export interface Step {
  readonly text: string;
  readonly origin?: Origin;
}

export interface Worked<T> {
  readonly value: T;
  readonly steps: readonly Step[];
}
