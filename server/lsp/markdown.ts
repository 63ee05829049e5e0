/** Small pieces of Markdown for hovers: text of a section must not turn into markup of ours. */

/** The text with everything escaped that Markdown would take for markup. */
export const plain = (text: string): string => text.replace(/[\\`*_{}[\]<>#|~]/g, '\\$&').replace(/\s+/g, ' ');

export const strong = (text: string): string => `**${plain(text)}**`;

export const listed = (lines: readonly string[]): string => lines.map((line) => `- ${plain(line)}`).join('\n');

export const numbered = (lines: readonly string[]): string =>
  lines.map((line, index) => `${index + 1}. ${plain(line)}`).join('\n');

/** Paragraphs, the empty ones left out. */
export const paragraphs = (parts: readonly (string | undefined)[]): string => parts.filter(Boolean).join('\n\n');

/** Stands under everything that names a value of a code. */
export const caution = '*Check against the code adopted where the project is.*';
