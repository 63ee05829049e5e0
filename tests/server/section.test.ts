/** One section from opening to closing, as a writer works on it: findings, their working, fixes, outline. */
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import type { Diagnostic, DocumentSymbol } from 'vscode-languageserver-protocol';
import { Editor, pulling } from './editor.ts';
import { changed, frostAndSalt, Job, paving } from './job.ts';

const shaken = 'G. Rinse brooms away from the work and shake them free of water.';
const sprinkled = 'G. On hot days the finishers may sprinkle the surface lightly so that the float glides.';
const weekOfCuring = 'B. Cure for 7 days at a concrete temperature of 50 °F (10 °C) or above.';
const vagueCuring = 'B. Cure at a concrete temperature of 50 °F (10 °C) or above for as long as needed.';
const longerCuring =
  "C. Where fly ash is over 20 percent or slag cement over 35 percent, cure for 14 days, or until field-cured cylinders reach 70 percent of f'c.\n\n";

const job = new Job({ 'firstwinter.jsonc': frostAndSalt });
const uri = job.uri('32 13 13 paving.md');
let editor: Editor;

beforeAll(async () => {
  editor = await Editor.start(pulling);
});
afterAll(async () => {
  expect(await editor.stop()).toBe(0);
  job.remove();
});
afterEach(() => editor.close(uri));

const only = (diagnostics: readonly Diagnostic[], code: string): Diagnostic => {
  const own = diagnostics.filter((each) => each.code === code);
  expect(own, `findings of ${code}`).toHaveLength(1);
  return own[0] as Diagnostic;
};

describe('the clean section', () => {
  beforeEach(() => editor.open(uri, paving));

  test('has nothing to change', async () => {
    expect(await editor.diagnostics(uri)).toEqual([]);
  });

  test('gets a finding with the words that bring it, and loses it with them', async () => {
    await editor.replace(uri, shaken, sprinkled);
    const found = only(await editor.diagnostics(uri), 'water-added-to-surface');
    expect(found).toMatchObject({ severity: 1, source: 'First Winter' });
    expect(found.codeDescription).toEqual({ href: 'firstwinter:/rules/water-added-to-surface.md' });
    expect(String(found.message).length).toBeLessThanOrEqual(120);
    expect(editor.wordsAt(uri, found.range)).toContain('sprinkle the surface');
    await editor.replace(uri, sprinkled, shaken);
    expect(await editor.codes(uri)).not.toContain('water-added-to-surface');
  });

  test('is not sent again while nothing changes', async () => {
    const first = await editor.pull(uri);
    expect(await editor.pull(uri, first.resultId)).toEqual({ kind: 'unchanged', resultId: first.resultId });
    await editor.replace(uri, shaken, sprinkled);
    expect(await editor.pull(uri, first.resultId)).toMatchObject({ kind: 'full' });
  });

  test('shows its outline by the numbers of the specification', async () => {
    const named = (name: string) => expect.objectContaining({ name });
    const [section] = await editor.symbols(uri);
    expect(section?.name).toBe('32 13 13 CONCRETE PAVING');
    const products = section?.children?.[1];
    expect(products?.name).toMatch(/^PART 2/);
    expect(products?.children).toContainEqual(named('2.03 MIXTURES'));
    const mixtures = products?.children?.find(({ name }) => name === '2.03 MIXTURES');
    expect(mixtures?.children).toContainEqual(named('2.03.B'));
    expect(editor.wordsAt(uri, mixtures!.selectionRange)).toContain('MIXTURES');
  });

  test('has an outline in which every title lies inside its own range, and every name is there', async () => {
    const text = editor.text(uri);
    const flat = (symbols: readonly DocumentSymbol[]): readonly DocumentSymbol[] =>
      symbols.flatMap((each) => [each, ...flat(each.children ?? [])]);
    const all = flat(await editor.symbols(uri));
    expect(all.length).toBeGreaterThan(60);
    for (const { name, range, selectionRange } of all) {
      expect(name).not.toBe('');
      expect(text.offsetAt(range.start)).toBeLessThanOrEqual(text.offsetAt(selectionRange.start));
      expect(text.offsetAt(selectionRange.end)).toBeLessThanOrEqual(text.offsetAt(range.end));
    }
  });

  test('states a value in both unit systems, with what is required and on whose word', async () => {
    const { start } = editor.rangeOf(uri, "f'c at 28 days");
    const inCell = {
      line: start.line + 2,
      character: editor.text(uri).getText().split('\n')[start.line + 2]!.indexOf('4500'),
    };
    const hover = await editor.hover(uri, inCell);
    expect(hover).toContain('4500 psi (31 MPa)');
    expect(hover).toMatch(/Required for .*shelter walks/);
    expect(hover).toMatch(/at least 4500 psi \(31 MPa\)/);
    expect(hover).toMatch(/ACI 318-19.*\((?:seen|seen second hand|from memory|derived|common practice)\)/);
    expect(hover).toContain('Check against the code adopted where the project is');
  });

  test('says nothing where there is nothing to say', async () => {
    expect(await editor.hover(uri, editor.rangeOf(uri, 'Tallow Ridge Transit Exchange').start)).toBe('');
  });

  test('tells why it is checked', async () => {
    const why = await editor.rpc.sendRequest<string>('firstwinter/why', { uri });
    expect(why).toContain('It is checked because it shows signs of a concrete specification section');
    expect(why).toContain('Code: ACI 318-19, from the project file');
    expect(why).toContain('Climate: freezing, from the project file');
    expect(why).toMatch(/^Exposure: F3 \(stated 1\.03\.A/m);
    expect(why).toMatch(/^Found: .*\. Read: \d+ clauses, \d+ statements\.$/m);
  });
});

describe('a finding', () => {
  test('shows its working under the pointer', async () => {
    await editor.open(uri, changed(paving, shaken, sprinkled));
    const found = only(await editor.diagnostics(uri), 'water-added-to-surface');
    const hover = await editor.hover(uri, found.range.start);
    expect(hover).toContain('Must change before bid');
    expect(hover).toMatch(/By:\n\n- /);
    expect(hover).toContain('Check against the code adopted where the project is');
    expect(hover).toContain('rule `water-added-to-surface`');
  });

  test('of harmful wording goes when its fix is taken', async () => {
    await editor.open(uri, changed(paving, shaken, sprinkled));
    const found = only(await editor.diagnostics(uri), 'water-added-to-surface');
    const [fix] = await editor.fixes(uri, found);
    expect(fix).toMatchObject({ kind: 'quickfix', diagnostics: [found] });
    expect(fix?.title).toMatch(/: water is added to the surface \(engineer to decide\)$/);
    await editor.apply(fix!.edit!);
    expect(await editor.codes(uri)).not.toContain('water-added-to-surface');
  });

  test('of a missing value goes when the clause is put in, under a number of the section', async () => {
    await editor.open(uri, changed(changed(paving, weekOfCuring, vagueCuring), longerCuring, ''));
    const found = (await editor.diagnostics(uri)).find(({ code }) => code === 'curing-duration-missing');
    expect(found).toBeDefined();
    const before = editor.text(uri).getText();
    const [fix] = await editor.fixes(uri, found!);
    await editor.apply(fix!.edit!);
    const after = editor.text(uri).getText();
    const added = after.split('\n').filter((line) => line !== '' && !before.split('\n').includes(line));
    expect(added).toEqual([expect.stringMatching(/^[F-H]\. Cure continuously for 7 days/)]);
    expect(await editor.codes(uri)).not.toContain('curing-duration-missing');
  });

  test('is fixed with the line ends that the section has', async () => {
    await editor.open(uri, changed(paving, shaken, sprinkled).replaceAll('\n', '\r\n'));
    const found = only(await editor.diagnostics(uri), 'water-added-to-surface');
    const [fix] = await editor.fixes(uri, found);
    await editor.apply(fix!.edit!);
    expect(editor.text(uri).getText().replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  });

  test('is the same in a section with Windows line ends, accents and tabs before it', async () => {
    const odd = changed(paving, shaken, `\t${sprinkled}`).replace('Tallow Ridge', '½ Tällow 🜄 Ridge');
    await editor.open(uri, odd.replaceAll('\n', '\r\n'));
    const found = only(await editor.diagnostics(uri), 'water-added-to-surface');
    expect(editor.wordsAt(uri, found.range)).toContain('sprinkle the surface');
  });
});

test('the page of a rule is Markdown, and there is none for a rule that is not there', async () => {
  await editor.open(uri, paving);
  const page = await editor.rpc.sendRequest<string>('firstwinter/rulePage', { rule: 'water-added-to-surface' });
  expect(page).toMatch(/^# /);
  expect(page).toContain('## By whose word');
  expect(page).toContain('## It is silent on');
  expect(await editor.rpc.sendRequest('firstwinter/rulePage', { rule: 'no-such-rule' })).toBe(null);
});

test('a closed section is answered with nothing', async () => {
  await editor.open(uri, changed(paving, shaken, sprinkled));
  expect(await editor.codes(uri)).toContain('water-added-to-surface');
  await editor.close(uri);
  expect(await editor.diagnostics(uri)).toEqual([]);
  await editor.open(uri, paving);
});
