/** Reads a text with caret lines: what they point at, and the words they carry; the caret lines are taken out. */

export interface Mark {
  /** Offsets into the text without its caret lines. */
  readonly start: number;
  readonly end: number;
  /** The words behind the carets. */
  readonly label: string;
}

const caretLine = /^ *(\^+) (.+)$/;

export function withoutMarks(marked: string): { readonly text: string; readonly marks: readonly Mark[] } {
  const marks: Mark[] = [];
  const kept: string[] = [];
  let [above, next] = [0, 0];
  for (const line of marked.replace(/^\n/, '').split('\n')) {
    const [, carets, label] = caretLine.exec(line) ?? [];
    if (carets && label) {
      const start = above + line.indexOf('^');
      marks.push({ start, end: start + carets.length, label });
      continue;
    }
    kept.push(line);
    above = next;
    next += line.length + 1;
  }
  return { text: kept.join('\n'), marks };
}
