/** Tags and placeholders in angle brackets: `<Insert value>` is wording, `<br>` is markup, a comment is a note, `<del>` strikes. */

/** A tag that strikes text out, where it stands. */
export interface Tag {
  readonly closes: boolean;
  readonly start: number;
  readonly end: number;
}

const known =
  /^<\/?(?:a|abbr|b|big|blockquote|body|br|center|code|col|colgroup|dd|del|details|div|dl|dt|em|font|h[1-6]|head|hr|html|i|img|ins|kbd|li|link|mark|meta|nav|ol|p|pre|q|s|script|section|small|span|strike|strong|style|sub|summary|sup|svg|table|tbody|td|textarea|tfoot|th|thead|title|tr|tt|u|ul|var|xml|\w+:\w+)(?=[\s/>]|$)/i;
const struck = /^<\/?(?:del|s|strike)\b/i;

/** Copies the words between tags and in placeholders; comments, scripts and declarations stay blank. Returns what strikes. */
export function keepWords(source: string, out: string[], start: number, end: number): Tag[] {
  const tags: Tag[] = [];
  if (/^<(?:script|style)\b/i.test(source.slice(start, Math.min(end, start + 8)))) return tags;
  for (let at = start; at < end; ) {
    if (source[at] !== '<') {
      out[at] = source[at] as string;
      at += 1;
      continue;
    }
    const stop = endOfTag(source, at, end);
    const tag = source.slice(at, stop);
    if (!/^<[!?]/.test(tag) && !isMarkup(tag))
      for (let inside = at + 1; inside < stop - 1; inside++) out[inside] = source[inside] as string;
    else if (struck.test(tag)) tags.push({ closes: tag[1] === '/', start: at, end: stop });
    at = stop;
  }
  return tags;
}

function endOfTag(source: string, at: number, end: number): number {
  const sign = source.startsWith('<!--', at) ? '-->' : '>';
  const close = source.indexOf(sign, at + (sign === '>' ? 1 : 4));
  return close < 0 ? end : Math.min(end, close + sign.length);
}

/** A known name, alone or with attributes: `<Section number>` and `<a value>` are for the writer to fill in. */
function isMarkup(tag: string): boolean {
  const name = known.exec(tag)?.[0];
  if (name === undefined || /^<\/?[A-Z][a-z]/.test(name)) return false;
  const behind = tag.slice(name.length).replace(/\/?>$/, '').trim();
  return behind === '' || behind.includes('=') || /^(?:open|reversed|nowrap|hidden|noshade)$/i.test(behind);
}

/** From each striking tag to the one that closes it; one that is never closed strikes nothing. */
export function struckRanges(tags: readonly Tag[]): readonly { readonly from: number; readonly to: number }[] {
  const ranges: { from: number; to: number }[] = [];
  let open: Tag | undefined;
  for (const tag of tags) {
    if (open && tag.closes) ranges.push({ from: open.end, to: tag.start });
    open = tag.closes ? undefined : tag;
  }
  return ranges;
}
