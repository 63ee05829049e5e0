/** Published numbers: each row names document, edition, clause and how it is known, or it does not compile. */

/** How a value or citation is known. Nothing was read in a purchased standard. */
export type Known = 'seen' | 'seen second hand' | 'from memory' | 'derived' | 'common practice';

/** Where a number stands. */
export interface Origin {
  readonly document: string;
  readonly edition: string;
  readonly clause: string;
  readonly known: Known;
}

export type Row<T> = Readonly<T> & { readonly origin: Origin };

/** A table whose rows share one origin; a row may bring its own. */
export function defineTable<T extends object>(table: {
  readonly origin: Origin;
  readonly rows: readonly (T & { readonly origin?: Origin })[];
}): readonly Row<T>[] {
  return Object.freeze(table.rows.map((row) => Object.freeze({ ...row, origin: row.origin ?? table.origin })));
}
