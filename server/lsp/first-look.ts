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
export function seemsSection(path: string, text: string): boolean {
  if (companions.test(path)) return false;
  const shown = firstLook(text);
  return 2 <= shown.length && shown.some((name) => name === sectionLine || name === concreteWords);
}

/** Files that every folder has, which may quote a section and are none. The reader leaves out the same. */
const companions =
  /(?:^|[\\/])(?:readme|changelog|licen[cs]e|contributing|security|developers|code_of_conduct)(?:\.[a-z]+)?$/i;

const sectionLine = 'the number of a concrete section';
const concreteWords = 'words of concrete work';

/** Numbers of concrete work, after the word or alone on a line: 03 xx xx, exterior concrete of 32, five figures of old. */
const concreteSection =
  /^[^\n\w]{0,8}(?:SECTION[ \t]+(?:(?:03|32[ .-]?(?:06|13|14|16))[ .-]?\d{2}|03[0-9]\d{2}|027\d{2})|(?:03 \d{2}|32 (?:06|13|14|16)) \d{2}\b)/im;

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
  {
    name: sectionLine,
    shown: (opening) => concreteSection.test(opening),
  },
  { name: 'a part heading', shown: (opening) => /^[^\n\w]{0,8}PART[ \t]+[1-3]\b/im.test(opening) },
  { name: 'article numbers', shown: (opening) => /^[^\n\w]{0,8}[1-3]\.\d{1,2}\.?[ \t]+\S/m.test(opening) },
  { name: 'an end-of-section line', shown: (opening) => /^[^\n\w]{0,8}END OF SECTION\b/im.test(opening) },
  { name: concreteWords, shown: (opening) => 3 <= tradeWords.filter((word) => word.test(opening)).length },
];
