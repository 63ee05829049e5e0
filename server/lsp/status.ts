/** What there is to say of a document as a whole: one line at a glance, and the longer answer to why it is or is not checked. */
import { type View, viewsOf } from '../../rules/kinds/view.ts';
import type { Severity } from '../../rules/model/project.ts';
import type { Finding } from '../checking.ts';
import { count, list } from '../render/layout.ts';
import { codeNames } from '../render/words.ts';
import { projectFileName, type Settings, type ValueOrigin } from '../settings.ts';
import type { Answer } from './manuals.ts';
import { foldedNotes } from './notes.ts';
import type { Status } from './protocol.ts';

export function statusOf(answer: Answer): Status {
  const { page, whole, checked, findings } = answer;
  return {
    uri: page.uri,
    checked,
    text: checked ? [exposureOf(answer), counts(findings)].filter(Boolean).join(' · ') : 'not checked',
    detail: checked ? settingsLines(whole.settings).join('; ') : whyNot(answer),
    trouble: troubles(answer)[0],
  };
}

/** Plain lines, for a log and for a screen reader. */
export function whyText(answer: Answer): string {
  const lines = answer.checked ? whyChecked(answer) : [whyNot(answer)];
  return [answer.page.path, ...lines, ...troubles(answer)].join('\n');
}

function whyChecked(answer: Answer): readonly string[] {
  const { page, whole, manual, findings } = answer;
  const { reading } = page;
  const others = whole.context.specification.documents.length - 1;
  const folded = foldedNotes(findings);
  return [
    manual.isNamed(page.path)
      ? `It is checked because ${projectFileName} names it.`
      : `It is checked because it shows signs of a concrete specification section: ${list(reading.signs)}.`,
    others === 0 ? 'It is read alone.' : `It is read together with ${count(others, 'other section')}.`,
    manual.project ? `The project file is ${manual.project.file.path}.` : 'There is no project file.',
    ...settingsLines(whole.settings),
    `Exposure: ${exposureOf(answer) || 'nothing here is known to freeze'}.`,
    `Found: ${counts(findings)}. Read: ${count(reading.clauses, 'clause')}, ${count(reading.facts.length, 'statement')}.`,
    `Not understood, though a number or a key word stands in it: ${count(reading.unread.length, 'clause')}.`,
    ...(folded.length === 0 ? [] : [`Notes not shown among the findings: ${folded.length}.`]),
    ...folded.map(({ place, message }) => `  ${[place, message].filter(Boolean).join(': ')}`),
  ];
}

function whyNot({ page: { reading } }: Answer): string {
  const shown = reading.signs.length === 0 ? 'none' : `only ${list(reading.signs)}`;
  return `Not checked: a concrete specification section shows at least two signs, this document shows ${shown}. List it under "sections" in ${projectFileName} to have it read.`;
}

/** A broken rule is ours, a broken project file is the writer's; neither is silence. */
function troubles({ whole, manual }: Answer): readonly string[] {
  const failed = whole.checked.failures.map(({ rule, error }) => `The rule ${rule} failed on these sections: ${error}`);
  const faults = (manual.project?.file.problems ?? []).filter(({ weight }) => weight === 'fault');
  return [
    ...faults.map(({ line, message, cure }) => `${projectFileName}, line ${line}: ${message}: ${cure}`),
    ...failed,
  ];
}

const levels: readonly Severity[] = ['must', 'should', 'note'];

/** "2 must, 1 should and 3 notes"; levels without findings are left out. */
function counts(findings: readonly Finding[]): string {
  const said = levels.flatMap((level) => {
    const number = findings.filter(({ severity }) => severity === level).length;
    if (number === 0) return [];
    return [level === 'note' ? count(number, level) : `${number} ${level}`];
  });
  return list(said) || 'nothing to change';
}

/** "F3 (stated 1.03.A)", "F2 (by evidence)"; empty where nothing named in the document is known to freeze. */
function exposureOf({ page, whole }: Answer): string {
  const grounds = new Map<string, string>();
  for (const view of viewsOf(whole.context)) {
    if (view.freezeClass === undefined || !view.element.documents.includes(page.path)) continue;
    const stated = view.isDeclared ? statedAt(view) : undefined;
    grounds.set(view.freezeClass, grounds.get(view.freezeClass) || stated || '');
  }
  return list([...grounds].map(([name, ground]) => `${name} (${ground || 'by evidence'})`));
}

function statedAt(view: View): string {
  const place = view.names('exposure-class')[0]?.place;
  return place ? `stated ${place}` : 'stated';
}

function settingsLines({ project, origins }: Settings): readonly string[] {
  const code = project.codeAssumed ? 'assumed' : sayFrom(origins.code);
  return [
    `Code: ${codeNames[project.code]}, ${code}`,
    `Climate: ${project.climate}${project.climate === 'unknown' ? '' : `, ${sayFrom(origins.climate)}`}`,
    `De-icers: ${project.deicers}${project.deicers === 'unknown' ? '' : `, ${sayFrom(origins.deicers)}`}`,
  ];
}

function sayFrom({ from, place }: ValueOrigin): string {
  if (from === 'text') return `named by the text, ${place ?? ''}`.trim();
  return from === 'project file' ? 'from the project file' : 'assumed';
}
