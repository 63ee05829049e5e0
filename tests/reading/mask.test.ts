/** The mask against the words that should be left where they stand; all else is blank. */
import { describe, expect, test } from 'vitest';
import { keeping, masked } from './masked.ts';

interface Case {
  readonly of: string;
  readonly source: string;
  readonly kept: readonly (string | readonly [string, string])[];
}

const markup: readonly Case[] = [
  {
    of: 'emphasis',
    source: 'Air: **6** to _7_ ***percent***, __total__ *air*',
    kept: ['Air:', '6', 'to', '7', 'percent', ',', 'total', 'air'],
  },
  { of: 'heading signs', source: '## 2.03 MIXTURES ##\n\n# Paving', kept: ['2.03 MIXTURES', 'Paving'] },
  {
    of: 'list signs',
    source: '- Float.\n- Broom:\n  1. fine\n  2. coarse\n* Cure.',
    kept: ['Float.', 'Broom:', 'fine', 'coarse', 'Cure.'],
  },
  { of: 'a wrapped list item', source: '- Float\n  once\nand broom', kept: ['Float', 'once', 'and broom'] },
  {
    of: 'escapes',
    source: '6\\% \\[total\\] 1\\. C:\\\\mix',
    kept: ['6', '%', '[', 'total', ']', '1', '. C:', ['\\\\', ' \\'], 'mix'],
  },
  {
    of: 'links keep their words',
    source: 'See [the table](air.md "air") and ![sketch](a.png).',
    kept: ['See', 'the table', 'and !', 'sketch', [').', ' .']],
  },
  { of: 'code in a line', source: 'Keep `w/cm` at ``0.45``.', kept: ['Keep', 'w/cm', 'at', '0.45', '.'] },
  { of: 'code over two lines', source: 'Keep `w/cm\n0.45 at` most.', kept: ['Keep', 'w/cm', '0.45 at', 'most.'] },
  {
    of: 'a table',
    source: '| Walk | Air |\n| :-- | --: |\n| a\\|b | **6** % |',
    kept: ['Walk', 'Air', 'a', '|b', '6', '%'],
  },
  { of: 'a line between', source: 'Float.\n\n---\n\n* * *\n\nBroom.', kept: ['Float.', 'Broom.'] },
  { of: 'a hard break', source: 'Float.  \nBroom.\\\nCure.', kept: ['Float.', 'Broom.', 'Cure.'] },
  { of: 'tags', source: 'Air<br>6<sup>a</sup> <span style="x">percent</span>', kept: ['Air', '6', 'a', 'percent'] },
  { of: 'a block of tags', source: '<div align="center">\n6 percent\n</div>', kept: ['6 percent'] },
  { of: 'declarations', source: '<?xml version="1.0"?>\n\n<!DOCTYPE html>\n\nFloat.', kept: ['Float.'] },
];

const notWording: readonly Case[] = [
  { of: 'struck text', source: 'Air ~~5~~ 6 percent', kept: ['Air', '6 percent'] },
  { of: 'one tilde is about', source: 'Air ~6~ percent', kept: ['Air ~6~ percent'] },
  {
    of: 'text struck by a tag',
    source: 'Air <del>5</del> 6, <s>7 or **8**</s> percent',
    kept: ['Air', '6,', 'percent'],
  },
  { of: 'paragraphs struck by a tag', source: '<del>\n\n5 percent\n\n</del>\n\n6 percent', kept: ['6 percent'] },
  {
    of: 'a striking tag that is never closed',
    source: '<s>5 percent\n\n<del>7</del> 6 percent',
    kept: ['5 percent', '6 percent'],
  },
  { of: 'a comment', source: 'Air <!-- 5 or\n7? --> 6 percent', kept: ['Air', '6 percent'] },
  { of: 'a comment alone', source: '<!-- 5\n\n7 -->\nAir 6 percent', kept: ['Air 6 percent'] },
  { of: 'a block quote', source: '> Note: 5 percent\nis usual.\n\nAir 6 percent', kept: ['Air 6 percent'] },
  { of: 'fenced code', source: '```\n5 percent\n```\nAir\n~~~ md\n7\n~~~', kept: ['Air'] },
  { of: 'front matter', source: '---\nair: 5 percent\n---\nAir 6 percent', kept: ['Air 6 percent'] },
  { of: 'a style sheet', source: '<style>\nwalk { width: 6in }\n</style>\n\nAir', kept: ['Air'] },
];

const wording: readonly Case[] = [
  {
    of: 'a place to fill in',
    source: 'Cure for <Insert number> days at <Section number> <value>.',
    kept: ['Cure for', 'Insert number', 'days at', 'Section number', 'value', '.'],
  },
  {
    of: 'a place that has the name of a tag',
    source: 'See <Title>, <a value>, <title>.',
    kept: ['See', 'Title', ',', 'a value', ',', '.'],
  },
  { of: 'what looks like indented code', source: 'A. Air:\n\n        6 percent', kept: ['A. Air:', '6 percent'] },
  { of: 'what looks like a definition', source: '[Walks]: F3\n[Steps]: F3', kept: ['[Walks]: F3', '[Steps]: F3'] },
  { of: 'what looks like a heading ruled below', source: 'Air\n===\n6 percent', kept: ['Air', '===', '6 percent'] },
  {
    of: 'an address',
    source: 'Ask <https://tallowridge.example/air>.',
    kept: ['Ask <https://tallowridge.example/air>.'],
  },
  { of: 'brackets to choose from', source: '[5] [6] percent, [____] days', kept: ['[5] [6] percent, [____] days'] },
  {
    of: 'and signs that are no references',
    source: 'P&R Concrete; A & B; &walk; &; 6&',
    kept: ['P&R Concrete; A & B; &walk; &; 6&'],
  },
  {
    of: "a file's own header in a quote",
    source: '> SECTION 03 30 00 - CONCRETE\n> Issued in May\n\n> Note',
    kept: ['SECTION 03 30 00 - CONCRETE', 'Issued in May'],
  },
  { of: 'a lost character', source: 'Air 5 \ufffd 8 \ufffd, 5\u00ad8', kept: ['Air 5 \ufffd 8 \ufffd, 5\u00ad8'] },
];

const plusOrMinus = ['&plusmn;', '±'] as const;
const references: readonly Case[] = [
  {
    of: 'by name',
    source: '6 &plusmn; 1.5 &percnt; &amp; less',
    kept: ['6', plusOrMinus, '1.5', ['&percnt;', '%'], ['&amp;', '&'], 'less'],
  },
  { of: 'by number', source: '6&#37; &#xB1; 1', kept: ['6', ['&#37;', '%'], ['&#xB1;', '±'], '1'] },
  {
    of: 'that decodes to the start of another',
    source: '&amp;amp; 6 &amp;plusmn; 1',
    kept: [['&amp;', '&'], 'amp; 6', ['&amp;', '&'], 'plusmn; 1'],
  },
  {
    of: 'that repeats its own letters',
    source: '&amp;amp &lt;lt; a&amp;m',
    kept: [['&amp;', '&'], 'amp', ['&lt;', '<'], 'lt; a', ['&amp;', '&'], 'm'],
  },
  {
    of: 'of two units',
    source: 'a &#x1F9CA; b &NotEqualTilde; c &fjlig; d',
    kept: ['a', ['&#x1F9CA;', '\u{1f9ca}'], 'b', ['&NotEqualTilde;', '\u2242\u0338'], 'c', ['&fjlig;', 'fj'], 'd'],
  },
  { of: 'to a blank or a line end', source: '6&nbsp;percent&#10;of air', kept: ['6', 'percent', 'of air'] },
  { of: 'in code, where none is', source: '`&plusmn;`', kept: ['&plusmn;'] },
];

const signs: readonly Case[] = [
  { of: 'a byte order mark', source: '\ufeff# 2.03 **AIR**\r\n\r\n6 percent', kept: ['2.03', 'AIR', '6 percent'] },
  { of: 'CRLF', source: 'Air\r\n6 *percent*\r\n- a\r\n  b', kept: ['Air', '6', 'percent', 'a', 'b'] },
  { of: 'CR', source: 'Air\r6 *percent*\r- a\r  b', kept: ['Air', '6', 'percent', 'a', 'b'] },
  {
    of: 'tabs and other blanks',
    source: 'Air:\t6\u00a0percent\u2009of\u202fair\u3000\u200bat\fall',
    kept: ['Air:', '6', 'percent', 'of', 'air', 'at', 'all'],
  },
  { of: 'control characters', source: 'Air\0 6\u0007 percent', kept: ['Air', ['\0', '\ufffd'], '6', 'percent'] },
  {
    of: 'curly quotes',
    source: '“Air” is ‘total’; 3″ by 6′',
    kept: [['“', '"'], 'Air', ['”', '"'], 'is', ['‘', "'"], 'total', ['’', "'"], '; 3', ['″', '"'], 'by 6', ['′', "'"]],
  },
  {
    of: 'dashes, degrees and fractions',
    source: '5‑8 5−8 5–8 5‒8 40º 40˚ 1⁄2 ½ 6％',
    kept: [
      '5',
      ['‑', '-'],
      '8 5',
      ['−', '-'],
      '8 5–8 5',
      ['‒', '–'],
      '8 40',
      ['º', '°'],
      '40',
      ['˚', '°'],
      '1',
      ['⁄', '/'],
      '2 ½ 6',
      ['％', '%'],
    ],
  },
  {
    of: 'pairs and halves of pairs',
    source: '\u{1f9ca} *6* \ud83d percent',
    kept: ['\u{1f9ca}', '6', '\ud83d percent'],
  },
];

describe.each([
  ['markup is blank', markup],
  ['what is no wording is blank', notWording],
  ['wording stays', wording],
  ['a decoded sign stands where its reference began', references],
  ['one sign for one meaning', signs],
])('%s', (_, cases) => {
  test.each(cases)('$of', ({ source, kept }) => {
    expect(masked(source)).toBe(keeping(source, kept));
  });
});

test('delimiters beyond what the parser is given are still wording where they are words', () => {
  const many = '*a '.repeat(450);
  const source = `${many}[6] percent [____] <Insert> \\[7]`;
  expect(masked(source).slice(many.length)).toBe('[6] percent [____] <Insert>  [7]');
});

test('a long table, a long list and a file of CR lines keep theirs', () => {
  const row = '| [6] | **air** [__] |';
  expect(
    masked(`| a | b |\n| - | - |\n${`${row}\n`.repeat(150)}`)
      .split('\n')
      .at(-2),
  ).toBe(keeping(row, ['[6]', 'air', '[__]']));
  const item = '- [6] **percent** [__]';
  expect(masked(`${item}\n`.repeat(150)).split('\n').at(-2)).toBe(keeping(item, ['[6]', 'percent', '[__]']));
  const paragraph = '[6] **percent** [__]\r\r';
  expect(masked(paragraph.repeat(150)).slice(-paragraph.length)).toBe(keeping(paragraph, ['[6]', 'percent', '[__]']));
});
