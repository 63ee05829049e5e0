/** Plain text on a page of fixed width: wrapping, labelled lines, and the few ways a word can stand out. */

/** How words stand out; the host brings colours, the plain style leaves them as they are. */
export interface Style {
  readonly must: (text: string) => string;
  readonly should: (text: string) => string;
  readonly note: (text: string) => string;
  readonly strong: (text: string) => string;
  readonly faint: (text: string) => string;
}

const asIs = (text: string): string => text;
export const plainStyle: Style = { must: asIs, should: asIs, note: asIs, strong: asIs, faint: asIs };

export interface Page {
  /** Columns, 80 to 100. */
  readonly width: number;
  readonly style: Style;
}

/** Lines of at most `width` columns; line breaks of the text are kept, a longer word stands alone on its line. */
export function wrap(text: string, width: number): readonly string[] {
  return clean(text)
    .split('\n')
    .flatMap((line) => wrapLine(line, width));
}

/** A title that stands out, wrapped. */
export const heading = (text: string, { width, style }: Page): readonly string[] =>
  wrap(text, width).map((line) => style.strong(line));

/** The text behind a label, wrapped beside it: every later line starts where the text starts. */
export function labelled(label: string, text: string, width: number, column = label.length + 2): readonly string[] {
  const [first = '', ...rest] = wrap(text, width - column);
  return [`${label.padEnd(column - 1)} ${first}`, ...indented(rest, column)];
}

export const indented = (lines: readonly string[], columns: number): readonly string[] =>
  lines.map((line) => (line === '' ? '' : ' '.repeat(columns) + line));

/** Blocks of lines with an empty line between them. */
export const paged = (blocks: readonly (readonly string[])[]): string =>
  `${blocks
    .filter((lines) => 0 < lines.length)
    .map((lines) => lines.join('\n'))
    .join('\n\n')}\n`;

/** Characters that steer a terminal, or turn the order of what stands beside them. */
const steering = /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u200e\u200f\u2028-\u202e\u2066-\u2069]/g;

/** Text of a file, or a file's name, may hold characters that would steer the reader's terminal. */
export const clean = (text: string): string => text.replace(/\r\n?/g, '\n').replace(steering, ' ');

/** The same for JSON text, in which such characters can only stand inside strings and stay what they are. */
export const escaped = (json: string): string =>
  json.replace(steering, (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`);

function wrapLine(line: string, width: number): readonly string[] {
  const margin = /^ */.exec(line)![0];
  const lines: string[] = [];
  let current = '';
  for (const word of line.trim().split(/ +/)) {
    const longer = current === '' ? margin + word : `${current} ${word}`;
    if (longer.length <= width || current === '') current = longer;
    else {
      lines.push(current);
      current = margin + word;
    }
  }
  return [...lines, current];
}

/** "1 clause", "3 clauses". */
export const count = (number: number, one: string, many = `${one}s`): string =>
  `${number} ${number === 1 ? one : many}`;

/** "a", "a and b", "a, b and c". */
export function list(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}
