/** Texts that no one writes but anyone may open: each repeats what a careless reader looks at again and again. */

export interface Hostile {
  readonly name: string;
  /** About so many characters of it. */
  readonly text: (length: number) => string;
}

const again = (unit: string, before = '', behind = ''): Hostile => ({
  name: JSON.stringify(before + unit + behind),
  text: (length) => before + unit.repeat(Math.ceil(length / unit.length)) + behind,
});

const counted = (name: string, unit: (count: number) => string, before = ''): Hostile => ({
  name,
  text: (length) => {
    let text = before;
    for (let count = 1; text.length < length; count++) text += unit(count);
    return text;
  },
});

const letter = (count: number): string => String.fromCharCode(65 + (count % 26));

/** What the Markdown parser, the mask and the lines look at. */
export const markup: readonly Hostile[] = [
  ...[
    '- ',
    '> ',
    '*a ',
    '**a',
    '_a ',
    '`',
    '` ',
    '[',
    '![',
    '[a](',
    '[a](b) ',
    '<',
    '<a ',
    '<b>',
    '<!--',
    '<del>a ',
  ].map((unit) => again(unit)),
  ...[
    '~~a ',
    '|',
    '|a|\n',
    '#',
    '# A\n',
    '&',
    '&amp;',
    '\\',
    '\\1\\. ',
    '-',
    '-\n',
    '=\n',
    '```\n',
    '*\n',
    '\n',
    '\r',
    ' \n',
  ].map((unit) => again(unit)),
  ...['| *a\n', '*a *a\n- \n', '![a\n', '\0', '\t', '\ufffd', '\u{1f9ca}'].map((unit) => again(unit)),
  again('| *a *a\n', 'x\n| a |\n| - |\n'),
  again('a: b\n', '---\n'),
  again(' ', 'a', 'b'),
  counted('bullets ever deeper', (count) => `${' '.repeat(count % 99)}- a\n`),
  counted('ticks ever more', (count) => `${'`'.repeat(count % 99)} `),
  counted('names of no character', (count) => `&x${count};`),
];

/** Paragraphs upon paragraphs, each with what stands over it. */
export const paragraphs: readonly Hostile[] = [
  counted('labels in one line', (count) => `${count}. ${letter(count)}a `),
  counted('a list', (count) => `${count}. Float.\n`),
  counted('articles', (count) => `2.${count} AIR\n`),
  ...['.1 A\n', '1.1.1 Walks shall.\n', 'Aa:\n\n', 'Aa:\nA. '].map((unit) => again(unit)),
];

/** What else the outline and its numbering look at. */
export const numbers: readonly Hostile[] = [
  counted('letters in one line', (count) => `${letter(count - 1)}. Aa. `, 'Aa: '),
  counted('articles in one line', (count) => `3.${10 + (count % 90)} CURING A. Slope. `),
  counted('page numbers', (count) => `${count % 999}\n`),
  counted('heads that differ', (count) => `x${count} page 3\n`),
  ...['A. Aa. B. Bb. ', 'i. ii. ', '(a) A; ', '3.01 CURING\n', 'PART 1 - A\n', 'Page 3\n'].map((unit) => again(unit)),
  again('AB, ', '2.01 '),
  again("A'", '2.01 '),
  again('A ', 'SECTION 03 30 00 '),
];

/** What tokens, clauses, values and names look at. */
export const words: readonly Hostile[] = [
  ...[
    '(',
    ')',
    '7',
    '7 ',
    '7,',
    ',',
    ', ',
    '.',
    '. ',
    '...',
    '_',
    '____ ',
    ':',
    'a: ',
    ';',
    '"a ',
    "'",
    'a',
    'A',
    'l0',
    'lo ',
  ].map((unit) => again(unit)),
  ...[
    'and ',
    ', and',
    'or ',
    'not ',
    'not less than ',
    'if ',
    'except ',
    'until ',
    'shall ',
    'one of the following ',
    'to ',
    'two hundred ',
  ].map((unit) => again(unit)),
  ...[
    'walk ',
    'walks, curbs and ramps ',
    'exterior ',
    'air ',
    'water ',
    'salt ',
    'cure ',
    'steel trowel ',
    'curing compound ',
  ].map((unit) => again(unit)),
  ...[
    '6 percent ',
    '1/2 ',
    '1-',
    '1 to ',
    '± 1 ',
    '[4] ',
    '5\u00ad',
    'ASTM C94, ',
    'Section 03 30 00 ',
    'moisture-\n',
  ].map((unit) => again(unit)),
  ...[
    'Cure walks for 7 days. ',
    'cure walks for 7 days; ',
    'cure walks for 7 days and ',
    'cure walks for 7 days, ',
  ].map((unit) => again(unit)),
  again('| Walks | 6 percent | 4500 psi |\n', '| Element | Air | Strength |\n| --- | --- | --- |\n'),
  again('| Walks | 6 percent |\n'),
  {
    name: 'a table that is wide',
    text: (length) => ['Walk', '---', '6'].map((cell) => `|${` ${cell} |`.repeat(Math.ceil(length / 20))}`).join('\n'),
  },
  again('A. Provide 6 percent air.\n'),
  again('- Provide 6 percent air.\n'),
  { name: 'brackets in brackets', text: (length) => '[('.repeat(length / 4) + ')]'.repeat(length / 4) },
  { name: 'bars and blanks', text: (length) => `Walk   Air   Days\n${'ramp   6   7\n'.repeat(length / 13)}` },
];

/** What the parser alone would take many seconds for. */
export const traps: readonly Hostile[] = [
  ...['- ', '* ', '1. ', '> ', '>- ', '- 1. '].map((unit) => again(unit, '', 'a')),
  ...['+ ', '*a_ ', '~~a', '[a](', '\\1\\. ', '&x; '].map((unit) => again(unit)),
  {
    name: 'stars that open, then stars that close',
    text: (length) => 'a*'.repeat(length / 4) + '*b'.repeat(length / 4),
  },
  again('*a_ b* c_\n- \n'),
  again('| *a_ b* c_\n', 'x\n| a |\n| - |\n'),
];
