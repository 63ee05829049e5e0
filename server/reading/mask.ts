/** Text of the author's length in which everything that is not wording is blank: every match offset is a source offset. */
import type { Root, RootContent } from './markdown.ts';

/** A stretch of the source that is not contract wording, and why. */
export interface Aside {
  readonly start: number;
  readonly end: number;
  readonly kind: 'note' | 'code' | 'front matter';
}

export interface Masked {
  /** Same length as the source; markup, struck text and asides blank, decoded characters where their reference began. */
  readonly text: string;
  readonly asides: readonly Aside[];
}

export function mask(source: string, tree: Root): Masked {
  const out = blank(source);
  const asides: Aside[] = [];
  const stack: RootContent[] = [...tree.children].reverse();
  // A stack, not recursion: no nesting in the text may exhaust ours.
  for (let node = stack.pop(); node; node = stack.pop()) {
    const start = node.position?.start.offset ?? 0;
    const end = node.position?.end.offset ?? 0;
    if (node.type === 'text' || node.type === 'inlineCode') copyText(source, out, start, end, node.value);
    else if (node.type === 'html') keepWords(source, out, start, end, asides);
    else if (node.type === 'code') asides.push({ start, end, kind: 'code' });
    else if (node.type === 'yaml') asides.push({ start, end, kind: 'front matter' });
    else if (node.type === 'blockquote') asides.push({ start, end, kind: 'note' });
    else if (node.type !== 'delete' && 'children' in node) {
      for (let at = node.children.length - 1; 0 <= at; at--) stack.push(node.children[at] as RootContent);
    }
  }
  return { text: normalised(out.join('')), asides };
}

/** Line ends stay, everything else becomes a space. */
const blank = (source: string): string[] => source.replace(/[^\r\n]/g, ' ').split('');

/** Walks source and node value together: copies what is equal, skips what is markup, puts a decoded character where its reference began. */
function copyText(source: string, out: string[], start: number, end: number, value: string): void {
  let from = start;
  for (let at = 0; at < value.length && from < end; at++) {
    const wanted = value[at] as string;
    while (from < end && source[from] !== wanted && source[from] !== '&') from++;
    if (source[from] === wanted) out[from++] = wanted;
    else if (from < end) {
      out[from] = wanted;
      const close = source.indexOf(';', from);
      from = close < 0 || end <= close ? from + 1 : close + 1;
    }
  }
}

const knownTag =
  /^<\/?(?:a|abbr|b|big|blockquote|body|br|center|code|col|colgroup|dd|del|details|div|dl|dt|em|font|h[1-6]|head|hr|html|i|img|ins|kbd|li|link|mark|meta|nav|ol|p|pre|q|s|script|section|small|span|strike|strong|style|sub|summary|sup|svg|table|tbody|td|tfoot|th|thead|title|tr|tt|u|ul|var|xml|\w+:\w+)\b/i;

/** `<Insert value>` keeps its words, HTML tags do not; comments are notes; what is struck by a tag is blank. */
function keepWords(source: string, out: string[], start: number, end: number, asides: Aside[]): void {
  let at = start;
  while (at < end) {
    if (source.startsWith('<!--', at)) {
      const close = source.indexOf('-->', at + 4);
      const stop = close < 0 ? end : Math.min(end, close + 3);
      asides.push({ start: at, end: stop, kind: 'note' });
      at = stop;
    } else if (source[at] === '<') {
      const close = source.indexOf('>', at);
      const stop = close < 0 ? end : Math.min(end, close + 1);
      if (!knownTag.test(source.slice(at, Math.min(stop, at + 24)))) copy(source, out, at + 1, stop - 1);
      at = stop;
    } else copy(source, out, at, ++at);
  }
}

function copy(source: string, out: string[], start: number, end: number): void {
  for (let at = start; at < end; at++) out[at] = source[at] as string;
}

/** One sign for one meaning, length kept: spaces, quotes and dashes of office programs. */
function normalised(text: string): string {
  return text
    .replace(/[\t\u00a0\u2007\u2009\u202f\u3000\u200b\ufeff]/g, ' ')
    .replace(/[\u2018\u2019\u201a\u201b\u2032]/g, "'")
    .replace(/[\u201c\u201d\u201e\u201f\u2033]/g, '"')
    .replace(/[\u2010\u2011\u2212]/g, '-')
    .replace(/[\u2013\u2012]/g, '–')
    .replace(/[\uff05]/g, '%')
    .replace(/\u00ba/g, '°')
    .replace(/\u2215|\u2044/g, '/')
    .replace(/\u2026/g, '.');
}
