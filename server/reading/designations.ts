/** Numbers that are names: standards, sections, drawings, dates; their tokens are no values. */
import type { Run } from './run.ts';
import type { Token } from './tokens.ts';

export interface Designation extends Run {
  readonly kind: 'standard' | 'section' | 'drawing' | 'date' | 'place';
  /** "ASTM C94", "03 30 00", "S-001", "05-15". */
  readonly name: string;
}

export interface Designations {
  readonly found: readonly Designation[];
  /** Token indices that belong to one. */
  readonly taken: ReadonlySet<number>;
}

const months = [
  'january',
  'february',
  'march',
  'april',
  'may',
  'june',
  'july',
  'august',
  'september',
  'october',
  'november',
  'december',
];

const patterns: readonly {
  readonly kind: Designation['kind'];
  readonly say: RegExp;
  readonly name: (match: RegExpExecArray) => string | undefined;
}[] = [
  {
    kind: 'standard',
    say: /\b(?:ANSI\/\s?)?(ACI)\s?(?:(?:SPEC|PRC|CODE)-)?(\d{3}(?:\.\d)?)(R?)(?:-(\d{2}))?\b/gi,
    name: ([, , number, r]) => `ACI ${number}${r ? 'R' : ''}`,
  },
  {
    kind: 'standard',
    say: /\b(?:ANSI\/\s?)?(ASTM)\s?(?:Designation:?\s?)?([A-F])[\s-]?(\d{1,4})(?:\s?\/\s?[A-F][\s-]?\d{1,4}M?|M\b)?(?:-\d{2}[a-z]?)?/gi,
    name: ([, , letter, number]) => `ASTM ${letter?.toUpperCase()}${number}`,
  },
  {
    kind: 'standard',
    say: /\b(AASHTO|AASHO)\s?([MTRP]{1,2})\s?(\d{1,3})\b/gi,
    name: ([, , letter, number]) => `AASHTO ${letter?.toUpperCase()} ${number}`,
  },
  {
    kind: 'standard',
    say: /\b(?:CSA|CAN\/CSA|CAN3)[\s-]?(A23\.[123])(?:-\d{1,2}[A-Z]\b)?(?:[:-]\d{2,4})?(?:\/A23\.2)?/gi,
    name: ([, number]) => `CSA ${number?.toUpperCase()}`,
  },
  { kind: 'standard', say: /\bA23\.2-(\d{1,2}[A-Z])\b/g, name: ([, number]) => `CSA A23.2-${number}` },
  {
    kind: 'standard',
    say: /\b(?:BS |DIN |NF |CEN\/TS |I\.S\. )?EN(?:\sISO)?\s?(206(?:-1)?|13670|\d{3,5}(?:-\d{1,2})?)(?::\d{4})?\b/g,
    name: ([, number]) => `EN ${number?.replace(/^206-1$/, '206')}`,
  },
  { kind: 'standard', say: /\b(BS|DIN)\s(\d{4}(?:-\d)?)\b/g, name: ([, body, number]) => `${body} ${number}` },
  {
    kind: 'standard',
    say: /(?<![\w.-])\(?([CD])[\s-]?(\d{2,4})(?:\s?\/\s?C\s?\d{2,4}M?|M\b)(?:-\d{2})?/g,
    name: ([, letter, number]) => `ASTM ${letter}${number}`,
  },
  {
    kind: 'standard',
    say: /(?<![\w.-])\(?(C)[\s-]?(31|33|39|42|94|138|143|150|171|172|173|231|260|309|457|494|595|618|666|672|989|1017|1064|1077|1116|1157|1202|1240|1315|1602|78)(?![\w.%]|\s?(?:psi|MPa|mm))/g,
    name: ([, letter, number]) => `ASTM ${letter}${number}`,
  },
  { kind: 'standard', say: /\b(IBC|IRC)\b(?:\s?(?:Section\s)?[R]?\d{3,4}(?:\.\d)*)?/g, name: ([, body]) => body },
  { kind: 'standard', say: /\b(?:NRMCA|UFGS|PCI|CRSI)\s?[\w-]*\d[\w-]*/g, name: ([all]) => all },
  {
    kind: 'section',
    say: /\b(?:Section|Sections|Specification Section)?\s?(\d{2}\s\d{2}\s\d{2}(?:\.\d{2})?)\b/gi,
    name: ([, number]) => number,
  },
  { kind: 'section', say: /\bSections?\s(\d{5})\b/gi, name: ([, number]) => number },
  {
    kind: 'place',
    say: /\b(?:Article|Paragraph|Table|Clause|Sentence|Subsection|Figure|Fig\.|Chapter|Part|Type|Item|Grade|Schedule|Method|Section)s?\s(?:No\.\s?)?(\d+(?:\.\d+)*(?:[.-][A-Z0-9]+)*(?:\([a-z0-9]\))*)/gi,
    name: ([, number]) => number,
  },
  { kind: 'place', say: /\bNo\.?\s?\d{1,3}\b(?!\s?(?:percent|%|psi|days?|hours?))/gi, name: ([all]) => all },
  { kind: 'place', say: /\b1\s?:\s?\d{1,3}\b/g, name: ([all]) => all },
  {
    kind: 'drawing',
    say: /\b(?:Sheet|Drawing|Dwg\.?)s?\s?([A-Z]{1,2}-?\d{1,4}(?:\.\d+)?)\b/gi,
    name: ([, number]) => number,
  },
  { kind: 'drawing', say: /\bon ([ACLS]-\d{3})\b/g, name: ([, number]) => number },
  {
    kind: 'date',
    say: new RegExp(`\\b(\\d{1,2})\\s(?:of\\s)?(${months.join('|')})\\b(?:,?\\s\\d{4})?`, 'gi'),
    name: ([, day, month]) => monthDay(month, day),
  },
  {
    kind: 'date',
    say: new RegExp(`\\b(${months.join('|')})\\s(\\d{1,2})\\b(?:st|nd|rd|th)?(?:,?\\s\\d{4})?`, 'gi'),
    name: ([, month, day]) => monthDay(month, day),
  },
];

const monthDay = (month = '', day = ''): string =>
  `${String(months.indexOf(month.toLowerCase()) + 1).padStart(2, '0')}-${day.padStart(2, '0')}`;

/** The first pattern that meets a stretch keeps it. */
export function designationsIn(text: string, tokens: readonly Token[]): Designations {
  const [first, last] = [tokens[0], tokens.at(-1)];
  if (!first || !last) return { found: [], taken: new Set() };
  const base = first.start;
  const part = text.slice(base, last.end);
  const taken = new Set<number>();
  const found: Designation[] = [];
  if (!/\d|IBC|IRC/.test(part)) return { found, taken };
  const starts = tokens.map(({ start }) => start);
  for (const { kind, say, name } of patterns) {
    say.lastIndex = 0;
    for (let match = say.exec(part); match; match = say.exec(part)) {
      if (match[0] === '') say.lastIndex++;
      const from = indexAt(starts, base + match.index);
      let to = from;
      while (to < tokens.length && (tokens[to] as Token).start < base + match.index + match[0].length) to++;
      const called = name(match);
      if (called === undefined || to === from || taken.has(from) || taken.has(to - 1)) continue;
      for (let at = from; at < to; at++) taken.add(at);
      found.push({ kind, name: called, from, to });
    }
  }
  return { found: found.sort((a, b) => a.from - b.from), taken };
}

/** First token that begins at or after an offset; tokens are in order. */
function indexAt(starts: readonly number[], offset: number): number {
  let [low, high] = [0, starts.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((starts[middle] as number) < offset) low = middle + 1;
    else high = middle;
  }
  return low;
}
