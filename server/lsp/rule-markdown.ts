/** The page of a rule as Markdown, rendered from the rule itself. */
import type { Level } from '../../rules/model/project.ts';
import type { Example, Rule } from '../../rules/model/rule.ts';
import { exampleText, pointers } from '../render/explain.ts';
import { projectFileName } from '../settings.ts';
import { caution, listed, paragraphs, plain } from './markdown.ts';

export function ruleMarkdown(rule: Rule): string {
  const { id, family, title, severity, reason, clause, examples } = rule;
  return `${paragraphs([
    `# ${plain(title)}`,
    `${levelWords[severity]}. Rule \`${id}\`, family \`${family}\`.`,
    plain(reason),
    '## By whose word',
    listed(pointers(rule)),
    caution,
    '## What to write',
    clauses(clause.inchPound, clause.metric),
    'What stands in square brackets is for the engineer to choose.',
    '## It speaks on',
    ...Object.entries(examples.flagged).map(exampleBlock),
    '## It is silent on',
    ...Object.entries(examples.clean).map(exampleBlock),
    '## Another level',
    `In \`${projectFileName}\`:`,
    fenced(`{ "levels": { "${id}": "off" } }`, 'jsonc'),
  ])}\n`;
}

const levelWords: Readonly<Record<Level, string>> = {
  must: 'To be changed before bid',
  should: 'Should be changed',
  note: 'Note',
  off: 'Off unless a project switches it on',
};

const clauses = (inchPound: string, metric: string): string =>
  inchPound === metric ? quoted(inchPound) : paragraphs([quoted(inchPound), 'Metric:', quoted(metric)]);

const quoted = (text: string): string => plain(text).replace(/^/gm, '> ');

const exampleBlock = ([name, example]: [string, Example]): string =>
  `${plain(name)}:\n\n${fenced(exampleText(example), 'text')}`;

/** The fence is longer than any in the text. */
function fenced(text: string, language: string): string {
  const longest = Math.max(2, ...[...text.matchAll(/`+/g)].map(([run]) => run.length));
  const fence = '`'.repeat(longest + 1);
  return `${fence}${language}\n${text}\n${fence}`;
}
