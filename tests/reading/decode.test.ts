/** Bytes to text: each encoding a section may come in, good and bad bytes side by side, and what is no text. */
import { describe, expect, test } from 'vitest';
import { decode } from '../../server/reading/decode.ts';

/** Text as single bytes, and numbers as they stand: bytes(['5 ', 0xb0, 'F']). */
const bytes = (parts: readonly (string | number)[]): Uint8Array =>
  Uint8Array.from(
    parts.flatMap((part) => (typeof part === 'number' ? [part] : [...part].map((sign) => sign.charCodeAt(0)))),
  );

const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);

const wide = (text: string, order: 'little' | 'big'): readonly number[] =>
  text.split('').flatMap((unit) => {
    const [high, low] = [unit.charCodeAt(0) >> 8, unit.charCodeAt(0) & 0xff];
    return order === 'little' ? [low, high] : [high, low];
  });

const line = 'A. Air: 6 ± 1.5 percent at 50 °F, ½ in. – “total”\r\n';

describe('each encoding gives the same text', () => {
  test.each([
    ['UTF-8', utf8(line), 'utf-8'],
    ['UTF-8 with its mark', Uint8Array.from([0xef, 0xbb, 0xbf, ...utf8(line)]), 'utf-8'],
    ['UTF-16, little end first, with its mark', bytes([0xff, 0xfe, ...wide(line, 'little')]), 'utf-16le'],
    ['UTF-16, big end first, with its mark', bytes([0xfe, 0xff, ...wide(line, 'big')]), 'utf-16be'],
    ['UTF-16, little end first, without', bytes(wide(line, 'little')), 'utf-16le'],
    ['UTF-16, big end first, without', bytes(wide(line, 'big')), 'utf-16be'],
    [
      'windows-1252',
      bytes([
        'A. Air: 6 ',
        0xb1,
        ' 1.5 percent at 50 ',
        0xb0,
        'F, ',
        0xbd,
        ' in. ',
        0x96,
        ' ',
        0x93,
        'total',
        0x94,
        '\r\n',
      ]),
      'windows-1252',
    ],
  ])('%s', (_, given, encoding) => {
    expect(decode(given)).toEqual({ text: line, encoding, lost: 0, binary: false });
  });

  test('of a long text whose signs come late', () => {
    const long = `${'Broom the walk. '.repeat(40)}50 °F – “total”`;
    expect(decode(bytes(wide(long, 'little'))).text).toBe(long);
    expect(decode(utf8(long)).text).toBe(long);
  });
});

describe('good and bad bytes side by side', () => {
  const degree = [0xc2, 0xb0];
  const dash = [0xe2, 0x80, 0x93];

  test.each([
    ['a stray half beside a degree in UTF-8', bytes(['40 ', ...degree, 'F, ', 0xbd, ' in.']), '40 °F, ½ in.'],
    ['a bare degree beside one in UTF-8', bytes(['40 ', 0xb0, 'F, 50 ', ...degree, 'F']), '40 °F, 50 °F'],
    ['a bare degree right before a good dash', bytes(['40', 0xb0, ...dash, '50', ...degree]), '40°–50°'],
    ['a sign of four bytes', bytes([0xf0, 0x9f, 0xa7, 0x8a, ' ', 0xb1, ' 1']), '\u{1f9ca} ± 1'],
    ['a sequence cut by the end', bytes(['5', 0xb1, '8 ', 0xe2, 0x80]), '5±8 â€'],
    ['a sequence cut by a letter', bytes(['5 ', 0xe2, 0x80, 'x']), '5 â€x'],
    ['a longer way of writing a slash', bytes(['w', 0xc0, 0xaf, 'cm']), 'wÀ¯cm'],
    ['half a pair in UTF-8', bytes([0xed, 0xa0, 0xbd, '.']), 'í ½.'.replace(' ', '\u00a0')],
    ['a soft hyphen', bytes(['5', 0xad, '8 percent ', 0xb1, ' 1']), '5\u00ad8 percent ± 1'],
  ])('%s', (_, given, text) => {
    expect(decode(given)).toEqual({ text, encoding: 'windows-1252', lost: 0, binary: false });
  });

  test('what no encoding knows is marked and counted', () => {
    const unknown = [0x81, 0x8d, 0x8f, 0x90, 0x9d];
    const text = decode(bytes(['5 ', ...unknown, ' 8 ', 0xb0, 'F']));
    expect(text).toEqual({
      text: '5 \ufffd\ufffd\ufffd\ufffd\ufffd 8 °F',
      encoding: 'windows-1252',
      lost: 5,
      binary: false,
    });
  });

  test('what was lost before is counted too, and a soft hyphen is kept', () => {
    expect(decode(utf8('5 \ufffd 8, 6\u00ad8'))).toMatchObject({
      text: '5 \ufffd 8, 6\u00ad8',
      encoding: 'utf-8',
      lost: 1,
    });
  });

  test('every byte by itself stands for one character', () => {
    for (let byte = 0x80; byte <= 0xff; byte++) {
      const { text } = decode(bytes(['a', byte, 'b']));
      expect([byte, text.length, text[0], text[2]]).toEqual([byte, 3, 'a', 'b']);
    }
  });
});

describe('what is no text', () => {
  test.each([
    ['an archive, as Word files are', bytes(['PK', 3, 4, 20, 0, 6, 0, 'word/document.xml'])],
    ['a PDF', bytes(['%PDF-1.7\n%', 0xe2, 0xe3, '\n1 0 obj'])],
    ['zeros', new Uint8Array(4096)],
    ['a picture', bytes([0x89, 'PNG\r\n', 0x1a, '\n', 0, 0, 0, 13, 'IHDR', 0, 0, 2, 0])],
    ['an old document', bytes([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1, ...new Uint8Array(40)])],
  ])('%s', (_, given) => {
    expect(decode(given)).toEqual({ text: '', encoding: 'utf-8', lost: 0, binary: true });
  });

  test('an empty file is text, and so is one with form feeds, or with a stray zero in much text', () => {
    expect(decode(new Uint8Array())).toEqual({ text: '', encoding: 'utf-8', lost: 0, binary: false });
    expect(decode(utf8('A. Float.\f\nB. Broom.\u001b'))).toMatchObject({ binary: false });
    expect(decode(utf8(`${'Broom the walk. '.repeat(9)}\0`))).toMatchObject({ binary: false });
  });
});
