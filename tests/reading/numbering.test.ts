/** Numberings of every kind against the places beside their lines: what opens, how it is cited, what it stands under. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { openingsByLine } from './outlined.ts';

const folder = new URL('numbering/', import.meta.url);
const fixtures = readdirSync(folder).map((name) => [name, readFileSync(new URL(name, folder), 'utf8')] as const);

/** A line's text, and behind the sign what opens in it. */
const expected = (fixture: string): readonly (readonly [string, string])[] =>
  fixture.split('\n').map((line) => {
    const [text = '', said = ''] = line.split(/ ?◂ /);
    return [text, said];
  });

describe.each(fixtures)('%s', (_, fixture) => {
  const lines = expected(fixture);

  test('opens what stands beside each line', () => {
    expect(openingsByLine(lines.map(([text]) => text).join('\n'))).toEqual(lines);
  });
});
