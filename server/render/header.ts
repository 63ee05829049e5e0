/** The head of every report: the settings it stands on, what was read and what was not. */
import { bothUnits } from '../../rules/formulas/unit-twins.ts';
import type { SectionDocument } from '../../rules/model/specification.ts';
import { count, heading, labelled, list, type Page, wrap } from './layout.ts';
import { type CheckedManual, type Manual, notLoaded, type Run, type Skipped, sectionName } from './report.ts';
import { codeNames, sayFrom } from './words.ts';

const labelWidth = 11;

/** Settings and coverage of one manual, one labelled line each. */
export function manualHeader(manual: Manual, page: Page): readonly string[] {
  const rows = [...settingRows(manual), ['Read', sayRead(manual)] as const, ...missingRows(manual)];
  return rows.flatMap(([label, text]) => labelled(label, text, page.width, labelWidth));
}

/** What the engineer has to look up, because the text leaves it to a document that was not read. */
export function questionLines({ checked: { questions } }: CheckedManual, page: Page): readonly string[] {
  return questions.flatMap(({ text }) => labelled('Ask', text, page.width, labelWidth));
}

/** Number and title of a section over its path, underlined. */
export function sectionHead(document: SectionDocument, page: Page): readonly string[] {
  const name = sectionName(document);
  const rule = '='.repeat(page.width);
  // A text without a title is called by its file.
  if (name === document.path) return [...heading(name, page), rule];
  return [
    ...heading(`SECTION ${name.toUpperCase()}`, page),
    ...wrap(document.path, page.width).map(page.style.faint),
    rule,
  ];
}

/** Files left out for one reason that are named; a folder of other files must not bury the report. */
const namedFiles = 20;

/** Files that were left out, those with the same reason in one line. */
export function skippedLines(skipped: readonly Skipped[], page: Page): readonly string[] {
  const byReason = new Map<string, string[]>();
  for (const { path, reason } of skipped) byReason.set(reason, [...(byReason.get(reason) ?? []), path]);
  return [...byReason].flatMap(([reason, paths], index) =>
    labelled(index === 0 ? 'Skipped' : '', `${list(folded(paths))}: ${reason}`, page.width, labelWidth),
  );
}

function folded(paths: readonly string[]): readonly string[] {
  if (paths.length <= namedFiles) return paths;
  return [...paths.slice(0, namedFiles), `${count(paths.length - namedFiles, 'more file')} (--format json names all)`];
}

export const toolLine = ({ tool }: Run, page: Page): string =>
  `${page.style.strong(`First Winter ${tool.version}`)}  what will scale, and what keeps it from scaling`;

type Row = readonly [label: string, text: string];

function settingRows({ settings: { project, origins } }: Manual): readonly Row[] {
  const { code, codeAssumed, climate, deicers, aggregate, stage } = project;
  const assumed = 'assumed: neither the settings nor a requirement of the text names one';
  return [
    ['Code', `${codeNames[code]}, ${codeAssumed ? assumed : sayFrom(origins.code)}`],
    ['Climate', climate === 'unknown' ? unknownClimate : `${climate}, ${sayFrom(origins.climate)}`],
    ['De-icers', deicers === 'unknown' ? unknownDeicers : `${deicers}, ${sayFrom(origins.deicers)}`],
    ...(aggregate ? [['Aggregate', `${bothUnits(aggregate)}, ${sayFrom(origins.aggregate)}`] as const] : []),
    ...(origins.stage.from === 'default' ? [] : [['Stage', `${stage}, ${sayFrom(origins.stage)}`] as const]),
  ];
}

const unknownClimate = 'not given (--climate); what the text says of freezing counts where it says it';
const unknownDeicers = 'not given (--deicers); what the text says of de-icers counts where it says it';

function sayRead({ specification: { documents } }: Manual): string {
  const clauses = documents.reduce((sum, document) => sum + document.clauses, 0);
  const unread = documents.reduce((sum, document) => sum + document.unread.length, 0);
  const read = `${count(documents.length, 'section')}, ${count(clauses, 'clause')}`;
  if (unread === 0) return `${read}; every clause with a number or a key word was understood`;
  return `${read}; ${count(unread, 'clause')} with a number or a key word not understood ("facts" lists them)`;
}

function missingRows(manual: Manual): readonly Row[] {
  const { documents } = manual.specification;
  return notLoaded(manual).map((number): Row => {
    const from = documents.filter(({ handsTo }) => handsTo.includes(number)).map(sectionName);
    return ['Without', `Section ${number}, on which ${list(from)} relies: it is not among these files`];
  });
}
