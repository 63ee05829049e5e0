/** The result of a check as data for other programs: schema version 1. */
import type { Span } from '../../rules/model/source.ts';
import type { SectionDocument } from '../../rules/model/specification.ts';
import type { Origin } from '../../rules/model/table.ts';
import type { Step } from '../../rules/model/worked.ts';
import type { Finding } from '../checking.ts';
import type { Settings } from '../settings.ts';
import { escaped } from './layout.ts';
import { locator, type Range } from './places.ts';
import { type CheckedManual, type Manual, notLoaded, type Run } from './report.ts';

export const schemaVersion = 1;

type Locate = (span: Span) => Range;

export function checkJson(run: Run<CheckedManual>): string {
  const { manuals } = run;
  const locate = locateAll(manuals);
  const findings = manuals.flatMap(({ checked }) => checked.findings);
  return asJson({
    ...envelope(run),
    documents: manuals.flatMap(({ specification }) => specification.documents.map(documentJson)),
    skipped: run.skipped,
    findings: findings.map((finding) => findingJson(finding, locate)),
    failures: manuals.flatMap(({ checked }) => checked.failures),
    questions: manuals.flatMap(({ checked }) =>
      checked.questions.map(({ at, place, text }) => ({ path: at.path, place, text })),
    ),
    problems: run.problems,
  });
}

/** What every JSON answer opens with: tool and settings; `manuals` where files stand under several project files. */
export function envelope({ tool, manuals }: Run): object {
  const [first] = manuals;
  return {
    schemaVersion,
    tool,
    settings: first ? settingsJson(first.settings) : null,
    ...(1 < manuals.length && { manuals: manuals.map(manualJson) }),
    ...(first && { notLoaded: [...new Set(manuals.flatMap(notLoaded))] }),
  };
}

export const asJson = (value: object): string => `${escaped(JSON.stringify(value, null, 2))}\n`;

export const locateAll = (manuals: readonly Manual[]): Locate =>
  locator(new Map(manuals.flatMap(({ texts }) => [...texts])));

/** Settings in force and, under `origin`, where each came from. */
function settingsJson({ project, levels, origins, file }: Settings): object {
  const { byPath, elements, aggregate, ...plain } = project;
  return {
    ...plain,
    aggregate: aggregate ? { value: aggregate.amount, unit: aggregate.unit } : null,
    elements,
    sections: byPath,
    levels: levels.everywhere,
    file: file ?? null,
    origin: Object.fromEntries(Object.entries(origins).map(([name, { from }]) => [name, from])),
  };
}

const manualJson = ({ settings, specification }: Manual): object => ({
  settings: settingsJson(settings),
  documents: specification.documents.map(({ path }) => path),
});

const documentJson = ({ path, section, title, clauses, unread }: SectionDocument): object => ({
  path,
  section: section ?? null,
  title: title ?? null,
  clauses,
  unread: unread.length,
});

function findingJson(finding: Finding, locate: Locate): object {
  const { span, because, steps, suggestion, found, required, ...rest } = finding;
  return {
    ...rest,
    path: span.path,
    ...locate(span),
    found: found ?? null,
    required: required ?? null,
    because: because.map(({ at, place, message }) => ({ place, message, path: at.path, ...locate(at) })),
    steps: steps.map(stepJson),
    suggestion: suggestion ? suggestionJson(suggestion, locate) : null,
  };
}

const suggestionJson = ({ title, mechanical, edits }: NonNullable<Finding['suggestion']>, locate: Locate): object => ({
  title,
  mechanical,
  edits: edits.map(({ span, text }) => ({ path: span.path, ...locate(span), text })),
});

export const originJson = ({ document, edition, clause, known }: Origin): object => ({
  document,
  edition,
  clause,
  status: known,
});

export const stepJson = ({ text, origin }: Step): object => ({ text, ...(origin && { origin: originJson(origin) }) });
