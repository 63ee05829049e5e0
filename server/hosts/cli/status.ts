/** Exit statuses: other programs rely on them. */
export const status = {
  clean: 0,
  /** Something was found at or above `--fail-on`. */
  findings: 1,
  /** The tool, its settings or a rule failed, or a named path could not be read. */
  failed: 2,
  nothingToCheck: 3,
} as const;
export type Status = (typeof status)[keyof typeof status];

/** A fault that ends the run: what is wrong and what to do, for standard error. */
export class Refusal extends Error {
  constructor(
    message: string,
    readonly cure?: string,
  ) {
    super(message);
  }
}
