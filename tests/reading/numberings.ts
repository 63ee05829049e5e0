/** Numberings of every kind, with what opens in each line beside it: how it is cited, and what it stands under. */
import { readdirSync, readFileSync } from 'node:fs';

export interface NumberingText {
  readonly name: string;
  readonly text: string;
  /** Each line, with what opens in it. */
  readonly lines: readonly (readonly [string, string])[];
}

const folder = new URL('numbering/', import.meta.url);

export const numberings: readonly NumberingText[] = readdirSync(folder).map((name) => {
  const lines = readFileSync(new URL(name, folder), 'utf8')
    .split('\n')
    .map((line): readonly [string, string] => {
      const [text = '', said = ''] = line.split(/ ?◂ /);
      return [text, said];
    });
  return { name, lines, text: lines.map(([text]) => text).join('\n') };
});
