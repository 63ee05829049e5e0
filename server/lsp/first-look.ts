/** A cheap look at the opening of a document, before any reading: does it seem to be a concrete specification section? */

/** Characters that are looked at. */
export const firstLookLength = 20_000;

/** Names of the signs that the opening of the text shows, in the words of the trade. */
export function firstLook(text: string): readonly string[] {
  const opening = text.slice(0, firstLookLength);
  return signs.filter(({ shown }) => shown(opening)).map(({ name }) => name);
}

/**
 * True where two signs are shown and one of them is the trade's own: numbered parts and articles alone are any manual.
 * This only decides whether reading is worth while; the reader decides whether the document is checked.
 */
export function seemsSection(text: string): boolean {
  const shown = firstLook(text);
  return 2 <= shown.length && shown.some((name) => name === sectionLine || name === concreteWords);
}

const sectionLine = 'a section number line';
const concreteWords = 'words of concrete work';

const tradeWords: readonly RegExp[] = [
  /\bair[- ]entrain/i,
  /\bportland[- ]cement\b/i,
  /\bready[- ]mix/i,
  /\bcast[- ]in[- ]place\b/i,
  /\bconcrete (?:paving|pavement|sidewalk|walk|slab|mix|work|curb|finish|placement|section)/i,
  /\bcementitious\b/i,
  /\bcuring\b/i,
  /\bslump\b/i,
  /\bw\/cm?\b/i,
  /\bf'c\b/i,
  /\bbroom(?:ed)?[- ]finish/i,
  /\bflatwork\b/i,
  /\bde-?ic(?:er|ing)/i,
  /\bACI 3\d\d/,
  /\bASTM C ?\d{2,4}/,
];

const signs: readonly { readonly name: string; readonly shown: (opening: string) => boolean }[] = [
  { name: sectionLine, shown: (opening) => /^[^\n\w]{0,8}SECTION[ \t]+\d{2}[ .-]?\d{2}[ .-]?\d/im.test(opening) },
  { name: 'a part heading', shown: (opening) => /^[^\n\w]{0,8}PART[ \t]+[1-3]\b/im.test(opening) },
  { name: 'article numbers', shown: (opening) => /^[^\n\w]{0,8}[1-3]\.\d{1,2}\.?[ \t]+\S/m.test(opening) },
  { name: 'an end-of-section line', shown: (opening) => /^[^\n\w]{0,8}END OF SECTION\b/im.test(opening) },
  { name: concreteWords, shown: (opening) => 3 <= tradeWords.filter((word) => word.test(opening)).length },
];
