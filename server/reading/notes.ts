/** Notes to whoever edits the section: between rows of asterisks, or a paragraph that says at its head whom it is for. */

/** Indexes of the lines that are such notes; what they say is no wording of the contract. */
export function notesAmong(lines: readonly string[]): ReadonlySet<number> {
  const notes = new Set<number>();
  for (let at = 0; at < lines.length; ) {
    const end = endOfNote(lines, at);
    for (let inside = at; inside < end; inside++) notes.add(inside);
    at = Math.max(end, at + 1);
  }
  return notes;
}

/** Behind the note that opens at this line; `at` itself where none does. */
function endOfNote(lines: readonly string[], at: number): number {
  const line = lines[at] as string;
  if (row.test(line)) return endOfRows(lines, at);
  return forEditors(line) ? endOfParagraph(lines, at) : at;
}

const row = /^\s*\*{8,}\s*$/;
const longest = 120;

/** Behind the closing row; `from` where no note opens here. */
function endOfRows(lines: readonly string[], from: number): number {
  let first = from + 1;
  while (first < lines.length && (lines[first] as string).trim() === '') first++;
  if (!/^\W*NOTES?\b/i.test(lines[first] ?? '')) return from;
  const close = lines.slice(first, first + longest).findIndex((line) => row.test(line));
  return close < 0 ? from : first + close + 1;
}

function endOfParagraph(lines: readonly string[], from: number): number {
  let end = from;
  while (end < lines.length && (lines[end] as string).trim() !== '') end++;
  return end;
}

const editors = '(?:specifiers?|spec(?:ification)? writers?|editors?|designers?)';
const head = new RegExp(
  String.raw`^\W*(?:[A-Z\d]{1,3}[.)]\s+)?\W*(?:notes? (?:to|for) (?:the )?${editors}\b|(?:specifier|spec(?:ification)? writer|editor|designer)(?:['\u2019]?s['\u2019]?)? notes?\b)`,
  'i',
);

const forEditors = (line: string): boolean => head.test(line.slice(0, 80));
