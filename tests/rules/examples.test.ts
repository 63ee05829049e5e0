/** Every example of every rule, read and checked with that rule alone, against its caret marks one to one. */
import { describe, expect, test } from 'vitest';
import { rules } from '../../rules/index.ts';
import type { Project, Severity } from '../../rules/model/project.ts';
import type { Example, Rule } from '../../rules/model/rule.ts';
import { check, type Finding } from '../../server/checking.ts';
import { assemble } from '../../server/reading/assemble.ts';
import { read } from '../../server/reading/read.ts';
import { type Mark, withoutMarks } from '../marks.ts';
import { project } from './made.ts';

describe.each(rules.map((rule) => [rule.id, rule] as const))('%s', (_, rule) => {
  test.each(Object.entries(rule.examples.flagged))('speaks: %s', async (name, example) => {
    const { text, marks } = withoutMarks(wordsOf(example));
    expect(marks, name).not.toEqual([]);
    const findings = await findingsIn(rule, text, example);
    expect(findings.map((finding) => pairedWith(finding, marks, text))).toEqual(
      marks.map((mark) => said(mark, rule, text)),
    );
    for (const { message } of findings) expect(message.length, message).toBeLessThanOrEqual(120);
  });

  test.each(Object.entries(rule.examples.clean))('is silent: %s', async (_, example) => {
    const { text, marks } = withoutMarks(wordsOf(example));
    expect(marks).toEqual([]);
    expect((await findingsIn(rule, text, example)).map(({ message }) => message)).toEqual([]);
  });
});

const wordsOf = (example: Example): string => (typeof example === 'string' ? example : example.text);

async function findingsIn(rule: Rule, text: string, example: Example): Promise<readonly Finding[]> {
  const { code, climate, deicers } = typeof example === 'string' ? ({} as Partial<Project>) : example;
  const settings: Project = {
    ...project,
    ...(code && { code }),
    ...(climate && { climate }),
    ...(deicers && { deicers }),
  };
  const specification = assemble([read({ path: 'example.md', text })]);
  const { findings, failures } = await check(specification, settings, [rule]);
  expect(failures).toEqual([]);
  return findings;
}

/** What a mark expects: its line, its level, its words. */
function said({ start, label }: Mark, rule: Rule, text: string): object {
  const [, level, words] = /^(?:(must|should|note): )?(.*)$/.exec(label) ?? [];
  return { line: lineAt(text, start), level: (level ?? rule.severity) as Severity, words };
}

/** The finding in the form of the mark that it overlaps; its own message where the words differ. */
function pairedWith({ span, severity, message }: Finding, marks: readonly Mark[], text: string): object {
  const mark = marks.find(({ start, end }) => span.start < end && start < span.end);
  const words = (mark?.label ?? '').replace(/^(?:must|should|note): /, '');
  const isSaid = mark !== undefined && message.includes(words);
  return { line: lineAt(text, span.start), level: severity, words: isSaid ? words : message };
}

const lineAt = (text: string, offset: number): number => text.slice(0, offset).split('\n').length;
