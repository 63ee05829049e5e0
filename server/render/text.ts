/** The report of a check as plain text: by section and paragraph, in words, for a specifier. */
import type { Article, SectionDocument } from '../../rules/model/specification.ts';
import type { Failure, Finding } from '../checking.ts';
import { type FindingOptions, findingLines } from './finding.ts';
import { manualHeader, questionLines, sectionHead, skippedLines, toolLine } from './header.ts';
import { count, heading, list, type Page, paged, wrap } from './layout.ts';
import type { CheckedManual, Run } from './report.ts';

export interface TextOptions extends FindingOptions {
  readonly notes: 'all' | 'folded';
}

/** Notes of one section that are shown before the rest is folded. */
const shownNotes = 5;

export function checkText(run: Run<CheckedManual>, page: Page, options: TextOptions): string {
  const blocks = [
    [toolLine(run, page)],
    ...run.manuals.flatMap((manual) => manualBlocks(manual, run, page, options)),
    skippedLines(run.skipped, page),
    failureLines(run, page),
    closing(run, page),
    cautions(page),
  ];
  return paged(blocks);
}

type Lines = readonly string[];

function manualBlocks(manual: CheckedManual, run: Run, page: Page, options: TextOptions): readonly Lines[] {
  const { file } = manual.settings;
  const title = run.manuals.length < 2 ? [] : heading(`MANUAL under ${file ?? 'no project file'}`, page);
  return [
    [...title, ...manualHeader(manual, page), ...questionLines(manual, page)],
    ...manual.specification.documents.flatMap((document) =>
      documentBlocks(
        document,
        manual.checked.findings.filter(({ span }) => span.path === document.path),
        page,
        options,
      ),
    ),
  ];
}

function documentBlocks(
  document: SectionDocument,
  findings: readonly Finding[],
  page: Page,
  options: TextOptions,
): readonly Lines[] {
  const head = sectionHead(document, page);
  if (findings.length === 0) return [[...head, silence(document)]];
  const shown = options.notes === 'all' ? findings : foldNotes(findings);
  const folded = findings.length - shown.length;
  const more = 0 < folded ? [[`  ${count(folded, 'more note')}: --notes shows all`]] : [];
  return [head, ...byArticle(document, shown).flatMap((group) => articleBlocks(group, page, options)), ...more];
}

/** A section that says nothing we understand must not look like a clean one. */
function silence({ facts }: SectionDocument): string {
  if (facts.length === 0) return '  Nothing to say, and nothing was read that bears on durability.';
  return `  Nothing to change. ${count(facts.length, 'statement')} on durability read.`;
}

function foldNotes(findings: readonly Finding[]): readonly Finding[] {
  let notes = 0;
  return findings.filter(({ severity }) => severity !== 'note' || ++notes <= shownNotes);
}

interface Group {
  readonly article?: Article;
  readonly findings: readonly Finding[];
}

/** Findings in the order of the text, those of one article together. */
function byArticle({ articles }: SectionDocument, findings: readonly Finding[]): readonly Group[] {
  const groups = new Map<Article | undefined, Finding[]>();
  for (const finding of [...findings].sort((a, b) => a.span.start - b.span.start)) {
    const article = articles.find(({ span }) => span.start <= finding.span.start && finding.span.start < span.end);
    groups.set(article, [...(groups.get(article) ?? []), finding]);
  }
  return [...groups].map(([article, own]) => ({ article, findings: own }));
}

function articleBlocks({ article, findings }: Group, page: Page, options: TextOptions): readonly Lines[] {
  const name = [article?.number, article?.title].filter(Boolean).join(' ');
  const title = name === '' ? [] : heading(name, page);
  const [first, ...rest] = findings.map((finding) => findingLines(finding, page, options));
  return [[...title, ...first!], ...rest];
}

function failureLines({ manuals }: Run<CheckedManual>, page: Page): Lines {
  const failures: readonly Failure[] = manuals.flatMap(({ checked }) => checked.failures);
  if (failures.length === 0) return [];
  const head =
    'These rules failed. That is a fault of First Winter, not of the text; they said nothing, the others ran:';
  return [...wrap(head, page.width), ...failures.flatMap(({ rule, error }) => wrap(`  ${rule}: ${error}`, page.width))];
}

function closing({ manuals }: Run<CheckedManual>, page: Page): Lines {
  if (manuals.length === 0) return [page.style.strong('Nothing was checked.')];
  const findings = manuals.flatMap(({ checked }) => checked.findings);
  const sections = manuals.reduce((sum, manual) => sum + manual.specification.documents.length, 0);
  const [musts, shoulds, notes] = (['must', 'should', 'note'] as const).map(
    (level) => findings.filter(({ severity }) => severity === level).length,
  ) as [number, number, number];
  const where = `in ${count(sections, 'section')}`;
  if (findings.length === 0) return [page.style.strong(`Nothing found ${where}.`)];
  const total = [`${musts} must`, `${shoulds} should`, count(notes, 'note')].filter((part) => !part.startsWith('0 '));
  const next = nextSteps(musts, shoulds).join('; ');
  return [page.style.strong(`${list(total)} ${where}.`), ...wrap(`Next: ${next}.`, page.width)];
}

function nextSteps(musts: number, shoulds: number): readonly string[] {
  return [
    ...(0 < musts ? [`change the ${count(musts, 'must')} before bid`] : []),
    ...(0 < shoulds ? [`decide on the ${count(shoulds, 'should')} with the engineer of record`] : []),
    '"firstwinter explain RULE" gives the ground of a rule, --working the way to each value',
  ];
}

const cautions = (page: Page): Lines =>
  wrap(
    'First Winter reads and compares; it is no licensed opinion. The code adopted where the work stands comes first: ' +
      'check each value against that edition. What is lawful and what lasts under salt are two things, and both are ' +
      'named where they differ.',
    page.width,
  ).map(page.style.faint);
