/** What hovers and pages are made of: words of a section stay words, notes are folded, pages hold their examples. */
import { describe, expect, test } from 'vitest';
import type { Severity } from '../../rules/model/project.ts';
import type { Rule } from '../../rules/model/rule.ts';
import type { Finding } from '../../server/checking.ts';
import { findingMarkdown } from '../../server/lsp/finding-markdown.ts';
import { plain } from '../../server/lsp/markdown.ts';
import { foldedNotes, shownFindings } from '../../server/lsp/notes.ts';
import { ruleMarkdown } from '../../server/lsp/rule-markdown.ts';

const finding: Finding = {
  rule: 'w-cm-high',
  family: 'water',
  severity: 'must',
  span: { path: 'a.md', start: 0, end: 4 },
  place: '2.03.A',
  message: 'w/cm 0.50 is above 0.45 for shelter walks',
  detail: 'Paste with more water holds more freezable water.',
  found: '0.50 [or as approved]',
  required: 'at most 0.45',
  elements: ['shelter walks', 'curbs'],
  evidence: [
    {
      element: 'shelter walks',
      band: 'strong exterior',
      points: 9,
      cues: [{ words: 'walks', place: '1.01.A', points: 6 }],
    },
    { element: 'curbs', band: 'medium exterior', points: 4, cues: [] },
  ],
  because: [{ at: { path: 'b.md', start: 1, end: 2 }, place: '1.03.A', message: 'Class F3 is stated here' }],
  steps: [
    {
      text: 'F3, plain concrete: 0.45',
      origin: { document: 'ACI 318', edition: '19', clause: 'Table 19.3.2.1', known: 'seen second hand' },
    },
  ],
  citations: [{ document: 'ACI 318', edition: '19', clause: 'Table 19.3.2.1', status: 'seen second hand' }],
  suggestion: { title: 'Write 0.45', mechanical: false, edits: [] },
};

test('markup in the words of a section does not become markup of ours', () => {
  expect(plain('Use *no* [Type I] <b> | `x` # _y_\n\n  next')).toBe(
    'Use \\*no\\* \\[Type I\\] \\<b\\> \\| \\`x\\` \\# \\_y\\_ next',
  );
});

test('a finding tells where, how much it matters, what was found, what is required, why and on whose word', () => {
  expect(findingMarkdown(finding)).toBe(`**Must change before bid · 2.03.A**: w/cm 0.50 is above 0.45 for shelter walks

- Found: 0.50 \\[or as approved\\]
- Required: at most 0.45
- For: shelter walks and curbs

Paste with more water holds more freezable water.

See also:

- 1.03.A: Class F3 is stated here

Working:

1. F3, plain concrete: 0.45 \\[ACI 318-19, Table 19.3.2.1 (seen second hand)\\]

Why it counts as exterior:

- shelter walks: strong exterior, +9 points; "walks" 1.01.A, +6
- curbs: medium exterior, +4 points

By:

- ACI 318-19, Table 19.3.2.1 (seen second hand)

Suggested: Write 0.45

*Check against the code adopted where the project is.*

rule \`w-cm-high\``);
});

test('a place that the message names is not said twice', () => {
  const message = '2.03.A asks for too little';
  expect(findingMarkdown({ ...finding, message })).toMatch(/^\*\*Must change before bid\*\*: 2\.03\.A asks/);
});

describe('notes', () => {
  const of = (severity: Severity, count: number): readonly Finding[] =>
    Array.from({ length: count }, (_, index) => ({ ...finding, severity, message: `${severity} ${index}` }));

  test('beyond the fifth are folded, whatever must or should change is not', () => {
    const all = [...of('must', 7), ...of('note', 6), ...of('should', 7)];
    expect(shownFindings(all)).toEqual(all.filter(({ message }) => message !== 'note 5'));
    expect(foldedNotes(all).map(({ message }) => message)).toEqual(['note 5']);
  });

  test('up to five are all shown', () => {
    expect(shownFindings(of('note', 5))).toHaveLength(5);
    expect(foldedNotes(of('note', 5))).toEqual([]);
  });
});

describe('the page of a rule', () => {
  const rule: Rule = {
    id: 'w-cm-high',
    family: 'water',
    title: 'The ratio is too high',
    severity: 'must',
    reason: 'More water, more pores.',
    citations: { 'aci-318-19': finding.citations },
    clause: { inchPound: 'Limit w/cm to 0.45 [0.40].', metric: 'Limit w/cm to 0.45 [0.40].' },
    gate: 'freezing',
    outranks: [],
    check: () => [],
    examples: {
      flagged: { 'a half': '\nA. w/cm 0.50.\n        ^^^^ high\n' },
      clean: { 'with a fence in it': '```\nA. w/cm 0.45.\n```' },
    },
  };
  const page = ruleMarkdown(rule);

  test('names its ground, and offers the clause once where both unit systems agree', () => {
    expect(page).toContain('## By whose word\n\n- ACI 318-19, Table 19.3.2.1 (seen second hand)');
    expect(page.split('> Limit w/cm to 0.45 \\[0.40\\].')).toHaveLength(2);
    expect(ruleMarkdown({ ...rule, clause: { ...rule.clause, metric: 'Other' } })).toContain('Metric:\n\n> Other');
  });

  test('shows its examples without the marks of the tests, in a fence that they cannot close', () => {
    expect(page).toContain('a half:\n\n```text\nA. w/cm 0.50.\n```');
    expect(page).toContain('````text\n```\nA. w/cm 0.45.\n```\n````');
    expect(page).not.toContain('^^^^');
  });
});
