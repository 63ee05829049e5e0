/** The demo manual: planted faults, small changes and harmless rewordings against what a reviewer would say, one to one. */
import { readFileSync } from 'node:fs';
import { parse } from 'jsonc-parser';
import { describe, expect, test } from 'vitest';
import { changedExecution } from './changed-execution.ts';
import { changedProducts } from './changed-products.ts';
import { edited } from './edited.ts';
import { demo, exchange, findings, sorted } from './manual.ts';
import { castInPlace, silentSections } from './planted.ts';
import { rewordings } from './rewordings.ts';

const mixed = demo('03-30-00-cast-in-place-concrete.md');
const paving = demo('32-13-13-concrete-paving.md');
const placed = castInPlace.expect.map(({ rule, severity, place }) => `${severity} ${rule} ${place}`);

test('the project file says what these tests assume', () => {
  const written = parse(readFileSync(new URL('../../client/demo/firstwinter.jsonc', import.meta.url), 'utf8'));
  expect(exchange).toMatchObject(written);
});

describe('section 03 30 00', () => {
  const found = findings(mixed);

  test('the planted faults, and no others', () => {
    expect(sorted(found.map(({ rule, severity, place }) => `${severity} ${rule} ${place}`))).toEqual(sorted(placed));
  });

  test.each(castInPlace.silent)('$rule is not tempted by "$trap"', ({ rule, why }) => {
    expect(
      found.filter((finding) => finding.rule === rule),
      why,
    ).toEqual([]);
  });
});

describe('sections with nothing to say about', () => {
  test.each(silentSections)('$path: $why', ({ path }) => {
    expect(findings(demo(path)).map(spoken)).toEqual([]);
  });
});

describe('section 32 13 13, changed', () => {
  test.each([...changedProducts, ...changedExecution])('$name', ({ find, replace, also, expect: expected }) => {
    const text = edited(paving.text, [{ find, replace }, ...(also ?? [])]);
    expect(sorted(findings({ ...paving, text }).map(spoken))).toEqual(sorted(expected.map(spoken)));
  });
});

describe('section 32 13 13, said in other words', () => {
  test.each(rewordings)('$name', ({ rewrite }) => {
    const text = rewrite(paving.text);
    expect(text).not.toBe(paving.text);
    expect(findings({ ...paving, text }).map(spoken)).toEqual([]);
  });
});

test('the three sections as one manual say what they say one by one', () => {
  const all = [mixed, ...silentSections.map(({ path }) => demo(path))];
  const said = findings(...all).map(({ rule, severity, place, span }) => `${span.path}: ${severity} ${rule} ${place}`);
  expect(sorted(said)).toEqual(sorted(placed.map((line) => `${mixed.path}: ${line}`)));
});

function spoken({ rule, severity }: { readonly rule: string; readonly severity: string }): string {
  return `${severity} ${rule}`;
}
