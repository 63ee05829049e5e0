/** What heads a paragraph: the words before its colon, or a short line that is no sentence. */
import { type Named, namedIn } from './mentions.ts';
import type { Block } from './outline.ts';
import type { Run } from './run.ts';
import type { Token } from './tokens.ts';

export interface Lead {
  readonly words: string;
  readonly named: Named;
}

export const nobody: Named = { elements: [], mixtures: [], exterior: 'unknown' };

const longestLead = 14;

/** "Bus apron:", "Finish requirements for exterior walks, stairs, ramps:", or a whole short paragraph that is no sentence. */
export function leadOf(tokens: readonly Token[], block: Block): Lead {
  const colon = tokens.findIndex(
    ({ text, end }, at) => text === ':' && (tokens[at + 1] === undefined || end < (tokens[at + 1]?.start ?? 0)),
  );
  const end = 0 <= colon && colon <= longestLead ? colon : isStem(tokens) ? tokens.length : 0;
  const run = tokens.slice(0, end);
  const words = run.map(({ text }) => text).join(' ');
  return { words, named: block.kind === 'row' ? nobody : namedIn(tokens, { from: 0, to: end }) };
}

/** "A. Exterior slabs." heads what stands below it; "…as follows:" does too, however long. */
const isStem = (tokens: readonly Token[]): boolean =>
  tokens.at(-1)?.text === ':' ||
  (tokens.length <= 7 &&
    !tokens.some(({ text, kind }) => kind === 'number' || /^(?:shall|must|may|is|are|not)$/.test(text)));

/** "Then apply compound", "assign them to …": a sentence that goes on with what the one before it was about. */
export const goesOn = (tokens: readonly Token[], { from, to }: Run): boolean =>
  continuing.test(tokens[from]?.text ?? '') || tokens.slice(from, to).some(({ text }) => pronouns.has(text));

/** "Details of pavements are also addressed in Section 32 13 13" names what another section holds, not what this one builds. */
export function pointsAway(tokens: readonly Token[]): boolean {
  const words = tokens.map(({ text }) => text).join(' ');
  return (
    /\b(?:addressed|covered|described|included|specified|found) (?:in|under)\b.*\d\d \d\d \d\d/.test(words) &&
    !/\bshall\b|\bcompl|\bconform/.test(words)
  );
}

const continuing = /^(?:then|also|finally|afterwards|next|thereafter|this|these)$/;
const pronouns = new Set(['them', 'it', 'these', 'they']);
