/** Finishes: the operations in the order written, each with the force of its own statement; finish codes and their legend. */
import type { FinishStep } from '../../../rules/model/acts.ts';
import type { Force } from '../../../rules/model/clause.ts';
import type { ActFact, Subject } from '../../../rules/model/fact.ts';
import { localSubject } from '../local-scope.ts';
import { type Found, Phrases } from '../phrases.ts';
import type { Run } from '../run.ts';
import { isAside, type Statement, said, spanOf, wordsOf } from '../statement.ts';
import { finishWords } from '../words/finishes.ts';
import { allWords } from './act.ts';
import { finishCodes } from './finish-codes.ts';
import { isHarm } from './refusals.ts';
import { isWettingBroom } from './surface-water.ts';

const operations = new Phrases(finishWords);

const handling: readonly string[] = ['references', 'related', 'definitions', 'submittals', 'repair', 'delivery'];

/** Operations of one sentence, grouped by force: what is ordered in order, what is forbidden apart. */
export function finishes(statements: readonly Statement[]): ActFact[] {
  const facts: ActFact[] = [];
  const groups = new Map<string, Group>();
  for (const statement of statements) {
    if (handling.includes(statement.region) || isTools(statement) || isHidden(statement)) continue;
    const steps = stepsOf(statement);
    for (const step of steps) {
      const force = forceOf(statement, step);
      const subject = localSubject(statement, step, steps);
      const key = `${groupKey(statement, statements)}|${force}|${whose(subject)}`;
      const group = groups.get(key);
      if (group) group.steps.push({ statement, step });
      else groups.set(key, { force, subject, steps: [{ statement, step }] });
    }
    facts.push(...finishCodes(statement));
  }
  for (const group of groups.values()) facts.push(finishFact(group));
  return facts;
}

interface Step {
  readonly statement: Statement;
  readonly step: Found<FinishStep | 'none'>;
}

interface Group {
  readonly force: Force;
  readonly subject: Subject;
  readonly steps: [Step, ...Step[]];
}

const whose = ({ elements, exterior }: Subject): string => `${elements.map(({ name }) => name)} ${exterior}`;

const continuing = /^(?:then|next|finally|afterwards|immediately|after|following)$/;

/** Sentences that go on with "then", "next" or "finally" belong to the finish begun before them. */
function groupKey(statement: Statement, statements: readonly Statement[]): number {
  const opening = statement.tokens[statement.sentence.from]?.text ?? '';
  const second = statement.tokens[statement.sentence.from + 1]?.text ?? '';
  const goesOn = continuing.test(opening) || (opening === 'the' && second === 'final');
  if (!goesOn) return statement.sentence.from;
  const before = statements.findLast(({ sentence }) => sentence.from < statement.sentence.from);
  return before ? groupKey(before, statements) : statement.sentence.from;
}

function stepsOf(statement: Statement): Found<FinishStep | 'none'>[] {
  if (isHarm(statement)) return [];
  const { from, to } = statement.predication;
  const found = operations.in(statement.tokens, from, to).filter(({ meaning }) => meaning !== 'none');
  // "before floating", "ahead of the broom", "while trowelling" only time something else; "after floating" is a step that came first.
  const done = found.filter((step) => !isTiming(statement, step)).map((step) => byMachine(statement, step));
  // Wetting a broom is no brooming.
  const brooms = isWettingBroom(statement) ? done.filter(({ meaning }) => meaning !== 'broom') : done;
  return [...brooms, ...draggedBurlap(statement)];
}

/** A float on a machine is a power float. */
function byMachine({ tokens, predication }: Statement, step: Found<FinishStep | 'none'>): Found<FinishStep | 'none'> {
  const machine =
    step.meaning === 'float' && tokens.slice(predication.from, predication.to).some(({ stem }) => stem === 'machin');
  return machine ? { ...step, meaning: 'power float' } : step;
}

/** "Drag the surface lengthwise with damp burlap." */
function draggedBurlap({ tokens, predication }: Statement): Found<FinishStep>[] {
  const at = tokens.findIndex(
    ({ stem }, index) => predication.from <= index && index < predication.to && stem === 'drag',
  );
  const burlap = tokens.findIndex(({ text }, index) => at < index && index < predication.to && text === 'burlap');
  const parted = tokens.slice(at + 1, burlap).some(({ text }) => /^(?:or|and|hose)$/.test(text));
  return 0 <= at && at < burlap && 1 < burlap - at && !parted
    ? [{ meaning: 'burlap drag', from: at, to: burlap + 1 }]
    : [];
}

function isTiming({ tokens, predication }: Statement, { from }: Found<unknown>): boolean {
  const condition = predication.conditions.find((run) => run.from <= from && from < run.to);
  if (condition) return tokens[condition.from]?.text !== 'after' && tokens[condition.from]?.text !== 'following';
  const before = tokens
    .slice(Math.max(predication.from, from - 3), from)
    .map(({ text }) => text)
    .join(' ');
  return /(?:ahead of(?: the)?|between|to aid|to ease|to assist|help the)$/.test(before);
}

function forceOf(statement: Statement, step: Found<unknown>): Force {
  const { predication } = statement;
  if (predication.replaced.some((run) => run.from <= step.from && step.from < run.to)) return 'ban';
  if (
    predication.exception &&
    isAside(statement, step.from) &&
    predication.exception.from <= step.from &&
    step.from < predication.exception.to
  )
    return predication.force === 'ban' ? forceInException(statement, predication.exception) : 'ban';
  return predication.force === 'state' ? 'require' : predication.force;
}

/** "No finish other than steel trowel" gives the trowel; "unless the Engineer asks for a trowelled margin" waits for him. */
const forceInException = ({ tokens }: Statement, { from, open }: Run & { readonly open: boolean }): Force =>
  tokens[from]?.text === 'unless' && !open ? 'state' : 'permit';

function finishFact({ force, subject, steps }: Group): ActFact {
  const ordered = [...steps].sort((a, b) => Number(isAfter(b)) - Number(isAfter(a)));
  const [first] = steps;
  const last = steps.at(-1) as Step;
  const start = spanOf(first.statement, first.step);
  const end = spanOf(last.statement, last.step);
  const base = said(first.statement, first.step, force);
  const span = { path: '', start: start.start, end: Math.max(start.end, end.end) };
  const words =
    first === last
      ? wordsOf(first.statement, first.step)
      : first.statement.text.slice(span.start, span.end).replace(/\s+/g, ' ');
  return {
    kind: 'finish',
    ...base,
    subject,
    spans: [span],
    words,
    act: { verb: 'finish', steps: withoutEchoes(ordered.map(({ step }) => step.meaning)) },
  };
}

/** "float with a wooden float", "brushed with a fine broom": the tool repeats the operation. */
const withoutEchoes = (steps: readonly string[]): string[] => steps.filter((step, at) => step !== steps[at - 1]);

/** "Broom after floating": the step behind "after" came first. */
const isAfter = ({ statement, step }: Step): boolean =>
  isAside(statement, step.from) &&
  statement.predication.conditions.some((run) => run.from <= step.from && step.from < run.to);

/** Faces that neither weather nor salt ever reaches. */
const isHidden = (statement: Statement): boolean =>
  /\b(?:faces?|surfaces?|concrete) (?:that (?:will be|is|are) )?(?:hidden|concealed|buried)\b|\b(?:hidden|concealed|buried|unexposed) (?:faces?|surfaces?|concrete)\b/.test(
    allWords(statement),
  );

/** Lists of tools, and trowels as tools for patches and joints. */
const isTools = ({ heading, header }: Statement): boolean =>
  /\btools?\b|equipment|cleaning/.test(`${heading} ${header}`);
