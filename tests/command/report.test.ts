/** The report as text, from findings made by hand: order, folding, words. */
import { expect, test } from 'vitest';
import type { Article, SectionDocument } from '../../rules/model/specification.ts';
import type { Finding } from '../../server/checking.ts';
import { statusOf } from '../../server/hosts/cli/check.ts';
import { status } from '../../server/hosts/cli/status.ts';
import { plainStyle } from '../../server/render/layout.ts';
import { locator } from '../../server/render/places.ts';
import type { CheckedManual, Run } from '../../server/render/report.ts';
import { checkText } from '../../server/render/text.ts';
import { settle } from '../../server/settings.ts';

const page = { width: 96, style: plainStyle };
const folded = { notes: 'folded', working: 'folded' } as const;
const path = 'walks.md';
const span = (start: number, end = start + 1) => ({ path, start, end });

const finding = (start: number, given: Partial<Finding> = {}): Finding => ({
  rule: 'air-content-low',
  family: 'air',
  severity: 'must',
  span: span(start),
  place: '2.03.B',
  message: `Message ${start}.`,
  detail: '',
  elements: [],
  evidence: [],
  because: [],
  steps: [],
  citations: [],
  ...given,
});

const article = (number: string, title: string, start: number, end: number): Article => ({
  number,
  title,
  region: 'mixtures',
  span: span(start, end),
  titleSpan: span(start),
  next: { at: end, before: '\nC. ' },
});

const walks: SectionDocument = {
  path,
  section: '32 13 13',
  title: 'Concrete Paving',
  articles: [article('2.03', 'MIXTURES', 0, 50), article('3.04', 'CURING', 50, 100)],
  facts: [],
  unread: [{ span: span(3), place: '2.03.A', words: 'Sand 3', reason: 'a number without a unit' }],
  clauses: 7,
  designStandard: false,
  newArticles: {},
  handsTo: ['03 30 00'],
};

function report(findings: readonly Finding[], given: Partial<Run<CheckedManual>> = {}, document = walks) {
  const manual: CheckedManual = {
    settings: settle({ flags: {}, paths: new Map() }),
    specification: { documents: [document], elements: [], facts: [] },
    texts: new Map([[path, 'x'.repeat(100)]]),
    checked: { findings, failures: [], questions: [] },
  };
  return {
    tool: { name: 'firstwinter', version: '1.2.3' },
    manuals: [manual],
    skipped: [],
    problems: [],
    ...given,
  } satisfies Run<CheckedManual>;
}

const text = (findings: readonly Finding[], options: Parameters<typeof checkText>[2] = folded) =>
  checkText(report(findings), page, options);

test('findings stand under their article in the order of the text', () => {
  const out = text([finding(60, { place: '3.04.A' }), finding(20), finding(10)]);
  const order = ['2.03 MIXTURES', 'Message 10.', 'Message 20.', '3.04 CURING', 'Message 60.'];
  const places = order.map((words) => out.indexOf(words));
  expect(places).not.toContain(-1);
  expect(places).toEqual([...places].sort((a, b) => a - b));
});

test('a finding says place, level, found, required, why, on whose word and what to write', () => {
  const out = text([
    finding(10, {
      detail: 'Because.',
      found: '2 percent',
      required: '4.5 to 7.5 percent',
      elements: ['walks', 'ramps'],
      because: [{ at: span(1), place: '1.01.A', message: 'walks are F3' }],
      citations: [{ document: 'ACI 318', edition: '19', clause: '19.3.3.1', status: 'seen second hand' }],
      suggestion: { title: 'Insert', mechanical: false, edits: [{ span: span(5, 5), text: '\nC. Air: 6 percent.\n' }] },
    }),
  ]);
  expect(out).toContain(
    [
      '2.03 MIXTURES',
      '  2.03.B  MUST change',
      '    Message 10.',
      '    For       walks and ramps',
      '    Found     2 percent',
      '    Required  4.5 to 7.5 percent',
      '    Why       Because.',
      '    See       1.01.A: walks are F3',
      '    By        ACI 318-19, 19.3.3.1 (seen second hand)',
      '    Write     C. Air: 6 percent.',
      '    rule air-content-low',
    ].join('\n'),
  );
});

test('a value to write is told with the one it replaces', () => {
  const suggestion = {
    title: 'Replace the words',
    mechanical: false,
    edits: [{ span: span(5, 14), text: '6 percent' }],
  };
  expect(text([finding(10, { found: '2 percent', suggestion })])).toContain(
    '    Write     6 percent in place of 2 percent\n',
  );
});

test('at most five notes a section are shown, the rest is counted; --notes shows all', () => {
  const notes = [1, 2, 3, 4, 5, 6, 7].map((start) => finding(start, { severity: 'note' }));
  const must = finding(40);
  const short = text([...notes, must]);
  expect(short.match(/NOTE/g)).toHaveLength(5);
  expect(short).toContain('Message 40.');
  expect(short).toContain('2 more notes: --notes shows all');
  const long = text([...notes, must], { ...folded, notes: 'all' });
  expect(long.match(/NOTE/g)).toHaveLength(7);
  expect(long).not.toContain('more note');
});

test('the head counts what was read and what was not understood, and names a section that is not there', () => {
  const out = text([]);
  expect(out.replace(/\s+/g, ' ')).toContain(
    '1 section, 7 clauses; 1 clause with a number or a key word not understood',
  );
  expect(out.replace(/\s+/g, ' ')).toContain('Section 03 30 00, on which 32 13 13 Concrete Paving relies');
});

test('a section that is loaded is not missed, whatever way its number is written', () => {
  expect(checkText(report([], {}, { ...walks, handsTo: ['321313'] }), page, folded)).not.toContain('Without');
});

test('a section in which nothing was read does not look clean', () => {
  expect(text([])).toContain('nothing was read that bears on durability');
});

test('the end counts and says what to do next', () => {
  const out = text([finding(1), finding(2, { severity: 'should' }), finding(3, { severity: 'note' })]);
  expect(out).toContain('1 must, 1 should and 1 note in 1 section.');
  expect(out).toContain('Next: change the 1 must before bid; decide on the 1 should');
  expect(text([finding(1)])).toContain('1 must in 1 section.');
  expect(out).toContain('no licensed opinion');
});

test('a rule that failed is named as our fault', () => {
  const run = report([]);
  const [manual] = run.manuals as [CheckedManual];
  const failed = {
    ...manual,
    checked: { findings: [], failures: [{ rule: 'air-content-low', error: 'boom' }], questions: [] },
  };
  expect(checkText({ ...run, manuals: [failed] }, page, folded)).toMatch(
    /fault of First Winter.*\n(?:.*\n)? *air-content-low: boom/,
  );
});

test('a rule that failed gives status 2, whatever was found', () => {
  const broken = { checked: { findings: [], failures: [{ rule: 'air-content-low', error: 'boom' }], questions: [] } };
  const found = { checked: { findings: [finding(1)], failures: [], questions: [] } };
  expect(statusOf(status.clean, [found, broken], 'must')).toBe(status.failed);
  expect(statusOf(status.clean, [broken], 'never')).toBe(status.failed);
  expect(statusOf(status.failed, [found], 'must')).toBe(status.failed);
  expect(statusOf(status.clean, [found], 'must')).toBe(status.findings);
});

test('files left out for one reason stand in one line', () => {
  const skipped = ['a.md', 'b.md', 'c.md'].map((name) => ({ path: name, reason: 'empty' }));
  expect(checkText(report([], { skipped }), page, folded)).toContain('Skipped    a.md, b.md and c.md: empty');
});

test('lines and columns over every line end, at their borders', () => {
  const locate = locator(new Map([['t', 'ab\r\nc\rd\n\ne']]));
  const at = (offset: number) => {
    const { line, column } = locate({ path: 't', start: offset, end: offset }).start;
    return [line, column];
  };
  expect([0, 2, 4, 5, 6, 8, 9, 10].map(at)).toEqual([
    [1, 1],
    [1, 3],
    [2, 1],
    [2, 2],
    [3, 1],
    [4, 1],
    [5, 1],
    [5, 2],
  ]);
});
