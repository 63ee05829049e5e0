/** A single published number: what `defineTable` is for rows, for a value that stands alone. */
import type { Sourced } from '../model/requirement.ts';
import type { Origin } from '../model/table.ts';

export function figure<T>(value: T, origin: Origin): Sourced<T> {
  return Object.freeze({ value: Object.freeze(value), origin });
}
