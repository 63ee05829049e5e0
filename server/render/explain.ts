/** The page of one rule: what it asks, why, on whose word, the clause to write, and the texts that prove it. */
import type { CodeId } from '../../rules/model/project.ts';
import type { Example, Rule } from '../../rules/model/rule.ts';
import { asJson } from './json.ts';
import { indented, labelled, list, type Page, paged, wrap } from './layout.ts';
import { citationsJson } from './rules.ts';
import { codeNames, sayCitation } from './words.ts';

export function explainText(rule: Rule, page: Page): string {
  const { width, style } = page;
  const { inchPound, metric } = rule.clause;
  const blocks = [
    [style.strong(rule.title), style.faint(`${rule.id}, family ${rule.family}`)],
    labelled('Level', levelWords[rule.severity], width, column),
    labelled('Why', rule.reason, width, column),
    pointers(rule).flatMap((words, index) => labelled(index === 0 ? 'By' : '', words, width, column)),
    [style.strong(metric === inchPound ? 'Clause' : 'Clause, inch-pound'), ...indented(wrap(inchPound, width - 2), 2)],
    ...(metric === inchPound ? [] : [[style.strong('Clause, metric'), ...indented(wrap(metric, width - 2), 2)]]),
    ...exampleBlocks('Speaks', rule.examples.flagged, page),
    ...exampleBlocks('Silent', rule.examples.clean, page),
  ];
  return paged(blocks);
}

export function explainJson(rule: Rule): string {
  const { id, family, severity, title, reason, clause, examples } = rule;
  return asJson({
    id,
    family,
    severity,
    title,
    reason,
    citations: citationsJson(rule),
    clause,
    examples: { flagged: examplesJson(examples.flagged), clean: examplesJson(examples.clean) },
  });
}

const column = 10;

const levelWords: Readonly<Record<Rule['severity'], string>> = {
  must: 'must: change before bid, where the exposure is certain; lower as it is less so',
  should: 'should: a gap or contradiction that can be priced the wrong way',
  note: 'note: good practice, or a question for the engineer of record',
  off: 'off: switch it on in the project file, "levels"',
};

/** Each pointer once: those that hold under every code first, then those of single codes. */
export function pointers({ citations }: Rule): readonly string[] {
  const codes = new Map<string, CodeId[]>();
  for (const [code, own] of Object.entries(citations) as [CodeId, Rule['citations'][CodeId]][]) {
    for (const words of (own ?? []).map(sayCitation)) codes.set(words, [...(codes.get(words) ?? []), code]);
  }
  const all = Object.keys(citations).length;
  const shared = [...codes].filter(([, under]) => under.length === all).map(([words]) => words);
  const single = [...codes].filter(([, under]) => under.length < all);
  return [...shared, ...single.map(([words, under]) => `under ${list(under.map(nameOf))}: ${words}`)];
}

const nameOf = (code: CodeId): string => codeNames[code];

type Examples = Rule['examples']['flagged'];

function exampleBlocks(verb: string, examples: Examples, { style, width }: Page): readonly (readonly string[])[] {
  // A row of a table keeps its columns where it fits.
  const fit = (line: string): readonly string[] => (line.length <= width - 4 ? [line] : wrap(line, width - 4));
  return Object.entries(examples).map(([name, example]) => [
    `${style.strong(`${verb}:`)} ${name}`,
    ...indented(exampleText(example).split('\n').flatMap(fit), 4),
  ]);
}

const examplesJson = (examples: Examples): readonly object[] =>
  Object.entries(examples).map(([name, example]) => ({ name, text: exampleText(example) }));

/** The section text without the lines of carets that mark what a test expects. */
export function exampleText(example: Example): string {
  const text = typeof example === 'string' ? example : example.text;
  return text
    .split('\n')
    .filter((line) => !/^\s*\^+(?:\s|$)/.test(line))
    .join('\n')
    .trim();
}
