/** Where one statement of a sentence ends and the next begins. */
import type { Token } from './tokens.ts';
import { closingComma, isExceptThat } from './turns.ts';
import { imperatives } from './words/verbs.ts';

/** Starts of predications: at `;` `:`, after `then` and `but`, and where a comma or "and" brings a verb or modal of its own. */
export function cutsIn(tokens: readonly Token[], from: number, to: number): number[] {
  const cuts = [from];
  let closing = closingComma(tokens, from, to);
  const cut = (at: number): void => {
    cuts.push(at);
    closing = closingComma(tokens, at, to);
  };
  for (let at = from; at < to; at++) {
    const { text, spaced } = tokens[at] as Token;
    if (isExceptThat(tokens, at)) cut(at);
    else if (text === ';' || (text === ':' && tokens[at + 1]?.spaced !== false) || (text === '—' && spaced))
      cut(at + 1);
    else if (text === ',' && isNo(tokens, cuts.at(-1) ?? from) && !hasVerb(tokens, cuts.at(-1) ?? from, at))
      cut(at + 1);
    else if (text === ',' && at !== closing && opensAfterComma(tokens, cuts.at(-1) ?? from, at + 1, to)) cut(at + 1);
    else if (tokens[at - 1]?.text === ',') continue;
    else if (text === 'but' || text === 'then') cut(at);
    else if (
      text === 'and' &&
      (opensVerb(tokens, at + 1) || (opensModal(tokens, at + 1) && hasVerb(tokens, cuts.at(-1) ?? from, at)))
    )
      cut(at);
  }
  return cuts;
}

/** "3000 psi, w/c 0.55, no air entrainment": the last item of a list is denied, not the ones before it. */
const isNo = (tokens: readonly Token[], at: number): boolean =>
  /^(?:no|not)$/.test(tokens[at]?.text ?? '') &&
  !/^(?:more|less|greater|higher|lower|later|sooner|longer|fewer|over|to|exceed|exceeding|above|below|under|only|even)$/.test(
    tokens[at + 1]?.text ?? '',
  );

/** "dry cement and sand may be sprinkled": two nouns share the modal that follows; a statement before "and" has its own. */
function hasVerb(tokens: readonly Token[], from: number, to: number): boolean {
  const first = /^(?:and|or|then|but|,)$/.test(tokens[from]?.text ?? '') ? from + 1 : from;
  for (let at = from; at < to; at++) {
    const { text, stem } = tokens[at] as Token;
    if (/^(?:shall|must|may|should|will|can|is|are|be|do|need)$/.test(text) || (at === first && imperatives.has(stem)))
      return true;
  }
  return false;
}

/** ", and shall …", ", then broom", ", broom the surface": a modal behind a joining word, or a verb. */
function opensAfterComma(tokens: readonly Token[], from: number, next: number, to: number): boolean {
  if (to <= next) return false;
  if (tokens[next]?.text === 'but') return true;
  if (isNo(tokens, next)) return true;
  const joined = /^(?:and|or|then|nor)$/.test(tokens[next]?.text ?? '') ? next + 1 : next;
  const verb = tokens[joined]?.text === 'then' ? joined + 1 : joined;
  if (opensVerb(tokens, verb)) return true;
  return (
    joined !== next && (opensSpeaker(tokens, joined) || (opensModal(tokens, joined) && hasVerb(tokens, from, next)))
  );
}

/** ", and we do not want": the writer of a letter says a thing of its own. */
const opensSpeaker = (tokens: readonly Token[], at: number): boolean =>
  /^(?:we|you|they)$/.test(tokens[at]?.text ?? '') &&
  /^(?:do|don't|will|won't|shall|must|may|want|ask|need)$/.test(tokens[at + 1]?.text ?? '');

const opensVerb = (tokens: readonly Token[], at: number): boolean => {
  const token = tokens[at];
  const previous = tokens[at - 1];
  if (token?.kind !== 'word') return false;
  if (token.text === 'do' || token.text === 'never') return true;
  // A noun that follows an adjective or a noun is no imperative: "float, broom finish".
  return (
    imperatives.has(token.stem) &&
    token.text !== 'cured' &&
    !/ed$|ing$/.test(token.text) &&
    !/^(?:finish|trowel|broom|float|water|salt)$/.test(token.text + (tokens[at + 1]?.text === 'finish' ? '' : '-')) &&
    previous?.kind !== 'number' &&
    !/^(?:may|shall|must|can|will|should|is|are|finish)$/.test(tokens[at + 1]?.text ?? '')
  );
};

/** "… and shall", "… and the surface may": a modal within a few words. */
function opensModal(tokens: readonly Token[], at: number): boolean {
  for (let look = at; look < at + 5; look++) {
    const text = tokens[look]?.text ?? '';
    if (/^(?:shall|must|may|should|will|can)$/.test(text)) return !isMonth(tokens, look);
    if (/^[,;.]$/.test(text) || text === '') return false;
  }
  return false;
}

export const isMonth = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]?.text === 'may' &&
  (tokens[at]?.capital ?? false) &&
  (tokens[at - 1]?.kind === 'number' ||
    tokens[at + 1]?.kind === 'number' ||
    /^(?:in|of|by|to|through|until|from|before|after|and|every|each)$/.test(tokens[at - 1]?.text ?? ''));
