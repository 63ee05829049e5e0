/** A run of tokens, half-open: what phrases, statements and values take of a passage. */

/** Token indices. */
export interface Run {
  readonly from: number;
  readonly to: number;
}
