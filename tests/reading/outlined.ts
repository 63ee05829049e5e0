/** What a text's numbering gives: each section, part, article and paragraph where it opens, line by line. */
import { linesOf } from '../../server/reading/lines.ts';
import { parse } from '../../server/reading/markdown.ts';
import { mask } from '../../server/reading/mask.ts';
import { type Outline, outlineOf } from '../../server/reading/outline.ts';

export function outlined(text: string): { readonly outline: Outline; readonly masked: string } {
  const tree = parse(text);
  const masked = mask(text, tree);
  const lines = linesOf(text, masked, tree);
  return { outline: outlineOf(text, lines.text, lines), masked: lines.text };
}

interface Opening {
  readonly at: number;
  readonly said: string;
}

/** "article 2.03 MIXTURES", "2.03.A.1 < 2.03.A" (what it stands under), in the order of the text. */
export function openings({ section, title, titleStart, parts, articles }: Outline): readonly Opening[] {
  const opened: Opening[] = title === undefined ? [] : [{ at: titleStart, said: `section ${section ?? ''}`.trim() }];
  for (const { number, start } of parts) opened.push({ at: start, said: `part ${number}` });
  for (const article of articles) {
    const isHeaded = article.number !== '' || article.title !== '';
    if (isHeaded && parts.every(({ start }) => start !== article.start))
      opened.push({
        at: article.start,
        said: `article ${article.number} ${article.title}`.replace(/\s+/g, ' ').trim(),
      });
    for (const { start, place, parent } of article.blocks)
      opened.push({ at: article.start + start, said: parent ? `${place} < ${parent.place}` : place });
  }
  return opened.toSorted((a, b) => a.at - b.at);
}

/** Each line of the text with what opens in it. */
export function openingsByLine(text: string): readonly (readonly [string, string])[] {
  const opened = openings(outlined(text).outline);
  let start = 0;
  return text.split('\n').map((line) => {
    const [from, to] = [start, start + line.length];
    start = to + 1;
    const inside = opened.filter(({ at }) => from <= at && at <= to);
    return [line, inside.map(({ said }) => said).join('; ')];
  });
}
