/** Text of the author's length in which everything that is not wording is blank: every match offset is a source offset. */
import { copyCode, copyText } from './copying.ts';
import { calmed, type Root, type RootContent } from './markdown.ts';
import { keepWords, struckRanges, type Tag } from './tags.ts';

export interface Masked {
  /** Same length as the source; markup, struck text, notes, code and front matter blank, decoded characters where their reference began. */
  readonly text: string;
}

export function mask(source: string, tree: Root): Masked {
  const out = source.replace(/[^\r\n]/g, ' ').split('');
  const parsed = calmed(source);
  const header = headerOf(tree, source);
  const tags: Tag[] = [];
  const stack: RootContent[] = [...tree.children].reverse();
  // A stack, not recursion: no nesting in the text may exhaust ours.
  for (let node = stack.pop(); node; node = stack.pop()) {
    const start = node.position?.start.offset ?? 0;
    const end = node.position?.end.offset ?? 0;
    if (node.type === 'text') copyText({ source, parsed, out }, start, end, node.value);
    else if (node.type === 'inlineCode') copyCode(source, out, start, end);
    else if (node.type === 'html') tags.push(...keepWords(source, out, start, end));
    else if ('children' in node && node.type !== 'delete' && (node.type !== 'blockquote' || node === header)) {
      for (let at = node.children.length - 1; 0 <= at; at--) stack.push(node.children[at] as RootContent);
    }
  }
  for (const { from, to } of struckRanges(tags))
    for (let at = from; at < to; at++) if (!/[\r\n]/.test(out[at] as string)) out[at] = ' ';
  return { text: normalised(out.join('')) };
}

/** A block quote is a note, unless it opens the file with the section's own number. */
function headerOf({ children }: Root, source: string): RootContent | undefined {
  const first = children.find(({ type }) => type !== 'yaml' && type !== 'html' && type !== 'thematicBreak');
  const start = first?.position?.start.offset ?? 0;
  const isHeader = first?.type === 'blockquote' && /^>[\s*_]*SECTION[\s*_]+\d/.test(source.slice(start, start + 40));
  return isHeader ? first : undefined;
}

/** One sign for one meaning, length kept: spaces, quotes and dashes of office programs. */
function normalised(text: string): string {
  return text
    .replace(/[^\S\r\n ]|[\u0000-\u0008\u000e-\u001f\u007f-\u009f\u200b]/g, ' ')
    .replace(/[\u2018\u2019\u201a\u201b\u2032]/g, "'")
    .replace(/[\u201c\u201d\u201e\u201f\u2033]/g, '"')
    .replace(/[\u2010\u2011\u2212]/g, '-')
    .replace(/[\u2012]/g, '–')
    .replace(/[\uff05]/g, '%')
    .replace(/[\u00ba\u02da]/g, '°')
    .replace(/[\u2215\u2044]/g, '/')
    .replace(/\u2026/g, '.');
}
