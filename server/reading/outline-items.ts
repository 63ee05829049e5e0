/** The outline as an editor shows it: section, parts, articles and paragraphs by their own numbers. */
import { regionOf } from './headings.ts';
import type { ArticleText, Block, Outline, PartText } from './outline.ts';
import type { OutlineItem } from './reading.ts';

export function outlineItems(outline: Outline, text: string): OutlineItem[] {
  const end = text.length;
  const articles = outline.articles.filter(({ number, title }) => number !== '' || title !== '');
  const parts = outline.parts.map((part, at) => partItem(part, outline.parts[at + 1]?.start ?? end, articles, text));
  const loose = articles
    .filter(({ start }) => !outline.parts.some((part) => part.start <= start))
    .map((article) => articleItem(article, text));
  const all = [...loose, ...parts];
  if (!outline.section && !outline.title) return all;
  const name = [outline.section, outline.title].filter(Boolean).join(' ');
  const { titleStart, titleEnd } = outline;
  return [
    ...all.filter((item) => item.start < titleStart),
    {
      kind: 'section',
      place: outline.section ?? '',
      label: outline.section ?? '',
      title: name,
      level: 0,
      start: titleStart,
      end,
      titleStart,
      titleEnd,
      region: regionOf(name),
      children: all.filter((item) => titleStart <= item.start),
    },
  ];
}

function partItem(part: PartText, end: number, articles: readonly ArticleText[], text: string): OutlineItem {
  const own = articles.filter(({ start }) => part.start <= start && start < end);
  return {
    kind: 'part',
    place: `PART ${part.number}`,
    label: `PART ${part.number}`,
    title: part.title,
    level: 1,
    start: part.start,
    end,
    titleStart: part.start,
    titleEnd: part.titleEnd,
    region: 'other',
    children: own.map((article) => articleItem(article, text)),
  };
}

function articleItem(article: ArticleText, text: string): OutlineItem {
  const { number, title, start, end, titleStart, titleEnd, region } = article;
  const children = paragraphItems(article, text);
  return {
    kind: 'article',
    place: number || title,
    label: number,
    title,
    level: 2,
    start,
    end,
    titleStart,
    titleEnd,
    region,
    children,
  };
}

const longestTitle = 60;

/** Labelled paragraphs, each with what it holds; blocks come in the order of the text, parents first. */
function paragraphItems(article: ArticleText, text: string): OutlineItem[] {
  const held = new Map<Block | undefined, Block[]>([[undefined, []]]);
  for (const block of article.blocks) {
    if (block.label === '') continue;
    held.set(block, []);
    held.get(labelledOver(block))?.push(block);
  }
  const build = (above: Block | undefined): OutlineItem[] =>
    (held.get(above) ?? []).map((block) => paragraphItem(block, build(block), article, text));
  return build(undefined);
}

/** Stems without a label are no line of the outline; what stands below them goes one up. */
function labelledOver({ parent }: Block): Block | undefined {
  let above = parent;
  while (above && above.label === '') above = above.parent;
  return above;
}

function paragraphItem(block: Block, children: OutlineItem[], article: ArticleText, text: string): OutlineItem {
  const [start, titleEnd] = [block.start + article.start, block.end + article.start];
  const title = shortened(text.slice(start, titleEnd));
  const end = Math.max(titleEnd, children.at(-1)?.end ?? 0);
  return {
    kind: 'paragraph',
    place: block.place,
    label: block.label,
    title,
    level: 2 + block.level,
    start,
    end,
    titleStart: start,
    titleEnd,
    region: article.region,
    children,
  };
}

function shortened(words: string): string {
  const opening = words
    .slice(0, 4 * longestTitle)
    .replace(/\s+/g, ' ')
    .trim();
  if (opening.length <= longestTitle) return opening;
  const blank = opening.lastIndexOf(' ', longestTitle);
  return `${opening.slice(0, 0 < blank ? blank : longestTitle)} …`;
}
