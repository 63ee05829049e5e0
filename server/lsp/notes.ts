/** Notes are folded: an editor full of small remarks hides the two that matter. */
import type { Finding } from '../checking.ts';

/** Notes of one document that are shown among its findings. */
const shownNotes = 5;

/** Everything that must or should change, and the first notes. */
export const shownFindings = (findings: readonly Finding[]): readonly Finding[] => {
  const folded = new Set(foldedNotes(findings));
  return findings.filter((finding) => !folded.has(finding));
};

/** The notes that are not shown; the answer to "why" lists them. */
export const foldedNotes = (findings: readonly Finding[]): readonly Finding[] =>
  findings.filter(({ severity }) => severity === 'note').slice(shownNotes);
