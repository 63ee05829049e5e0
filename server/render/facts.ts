/** What was read in a manual and what was left unread, as text and as data. */
import { type ActFact, type Fact, isAct, isValue, type Subject, type ValueFact } from '../../rules/model/fact.ts';
import type { Measure } from '../../rules/model/measure.ts';
import type { SectionDocument, Unread } from '../../rules/model/specification.ts';
import { manualHeader, sectionHead, skippedLines, toolLine } from './header.ts';
import { asJson, envelope, locateAll } from './json.ts';
import { count, heading, indented, labelled, list, type Page, paged, wrap } from './layout.ts';
import type { Range } from './places.ts';
import type { Run } from './report.ts';

export function factsText(run: Run, page: Page): string {
  const blocks = [
    [toolLine(run, page)],
    ...run.manuals.flatMap((manual) => [
      manualHeader(manual, page),
      ...manual.specification.documents.map((document) => documentLines(document, page)),
    ]),
    skippedLines(run.skipped, page),
  ];
  return paged(blocks);
}

export function factsJson(run: Run): string {
  const locate = locateAll(run.manuals);
  const documents = run.manuals.flatMap(({ specification }) => specification.documents);
  return asJson({
    ...envelope(run),
    documents: documents.map(({ path, section, title, clauses, facts, unread }) => ({
      path,
      section: section ?? null,
      title: title ?? null,
      clauses,
      facts: facts.map((fact) => factJson(fact, locate(fact.spans[0]))),
      unread: unread.map(({ span, place, words, reason }) => ({ place, reason, text: words, ...locate(span) })),
    })),
    skipped: run.skipped,
    problems: run.problems,
  });
}

type Lines = readonly string[];

function documentLines(document: SectionDocument, page: Page): Lines {
  const { facts, unread } = document;
  return [
    ...sectionHead(document, page),
    `${count(facts.length, 'statement')} read`,
    ...byPlace(facts).flatMap(([place, own]) => placeLines(place, own, page)),
    ...unreadLines(unread, page),
  ];
}

function byPlace(facts: readonly Fact[]): readonly (readonly [string, readonly Fact[]])[] {
  const places = new Map<string, Fact[]>();
  for (const fact of facts) places.set(fact.place, [...(places.get(fact.place) ?? []), fact]);
  return [...places];
}

function placeLines(place: string, facts: readonly Fact[], page: Page): Lines {
  return [
    '',
    ...indented(heading(place || 'Title', page), 2),
    ...facts.flatMap((fact) => [
      ...indented(labelled(fact.kind, sayFact(fact), page.width - 4, 20), 4),
      ...indented(wrap(`"${fact.words}"`, page.width - 24), 24).map(page.style.faint),
    ]),
  ];
}

/** "require: 4.5 to 7.5 percent, for shelter walks". */
function sayFact(fact: Fact): string {
  const { subject, addressee, when, except, doubt } = fact;
  const parts = [
    `${fact.force}: ${sayValue(fact)}`,
    ...(subjectNames(subject).length === 0 ? [] : [`for ${list(subjectNames(subject))}`]),
    ...(subject.exterior === 'unknown' ? [] : [subject.exterior === 'yes' ? 'exterior' : 'not exterior']),
    ...(addressee === 'contractor' ? [] : [`to the ${addressee}`]),
    ...(when ? [`when: ${when.words}`] : []),
    ...(except ? [`except: ${except.words}`] : []),
    ...(doubt ? [`in doubt: ${doubt}`] : []),
  ];
  return parts.join(', ');
}

function sayValue(fact: Fact): string {
  if (isValue(fact)) return [fact.of, sayMeasure(fact.value)].filter(Boolean).join(' ');
  if (isAct(fact)) return sayAct(fact);
  return fact.value;
}

function sayAct({ act }: ActFact): string {
  const { steps, ...slots } = act;
  const words = Object.values(slots).filter(Boolean).join(', ');
  return steps === undefined ? words : `${words} (${steps.join(', then ')})`;
}

/** The normal form, so that a reader sees how a value was understood. */
function sayMeasure({ min, max, target, plus, minus, unit }: Measure): string {
  const parts = [
    ...(target === undefined ? [] : [`${target}${sayTolerance(plus, minus)}`]),
    ...(min === undefined ? [] : [`at least ${min}`]),
    ...(max === undefined ? [] : [`at most ${max}`]),
  ];
  return `${parts.join(', ')} ${unit}`.trim();
}

function sayTolerance(plus: number | undefined, minus: number | undefined): string {
  if (plus === undefined && minus === undefined) return '';
  return plus === minus ? ` ± ${plus}` : ` plus ${plus ?? 0} minus ${minus ?? 0}`;
}

function unreadLines(unread: readonly Unread[], page: Page): Lines {
  if (unread.length === 0) return [];
  const byReason = new Map<string, Unread[]>();
  for (const clause of unread) byReason.set(clause.reason, [...(byReason.get(clause.reason) ?? []), clause]);
  return [
    '',
    `${count(unread.length, 'clause')} not understood`,
    ...[...byReason].flatMap(([reason, clauses]) => [
      '',
      ...indented(heading(`${reason} (${clauses.length})`, page), 2),
      ...clauses.flatMap(({ place, words }) =>
        indented(labelled(place || 'Title', `"${words}"`, page.width - 4, 14), 4),
      ),
    ]),
  ];
}

const subjectNames = ({ elements, mixtures }: Subject): readonly string[] => [
  ...elements.map(({ name }) => name),
  ...mixtures,
];

function factJson(fact: Fact, range: Range): object {
  const { kind, force, addressee, subject, words, place, among, doubt, when, except } = fact;
  return {
    kind,
    force,
    addressee,
    subject: subjectNames(subject),
    exterior: subject.exterior,
    text: words,
    place,
    ...range,
    ...(isValue(fact) ? valueJson(fact) : { value: isAct(fact) ? fact.act : fact.value }),
    of: 'of' in fact ? fact.of : undefined,
    when: when?.words,
    except: except?.words,
    among,
    doubt,
  };
}

const valueJson = ({ value, age, working }: ValueFact): object => ({ ...measureJson(value), age, steps: working });

function measureJson({ min, max, target, plus, minus, unit, asWritten, also }: Measure): object {
  return { min, max, target, plus, minus, unit, asWritten, also: also?.map((twin) => measureJson(twin)) };
}
