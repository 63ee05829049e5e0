/** Finishes: the operations in the order written, each with the force of its own statement; finish codes and their legend. */
import type { FinishStep } from '../../../rules/model/acts.ts';
import type { Force } from '../../../rules/model/clause.ts';
import type { ActFact } from '../../../rules/model/fact.ts';
import { type Found, Phrases } from '../phrases.ts';
import { isAside, type Statement, said, spanOf, wordsOf } from '../statement.ts';

const operations = new Phrases<FinishStep | 'none'>([
  [
    'hard trowel',
    [
      'hard trowel',
      'hard-trowel finish',
      'hard steel trowel',
      'hard steel-trowel finish',
      'steel trowel',
      'steel-trowel finish',
      'smooth steel trowel',
      'hard troweled',
      'smooth trowel finish',
      'smooth trowel',
      'trowel smooth',
      'burnish',
      'burnished',
      'trowel to a dense',
      'trowel to a hard',
      'trowel to a smooth',
      'dense burnished',
      'hard smooth trowel',
      'trowel hard',
      'trowel till it rings',
      'trowel until it rings',
      'hard finish',
      'trowel everything smooth',
      'hard slick finish',
      'trowel dense',
      'hard and slick',
      'trowel slick',
      'slick trowel',
      'hard, dense',
      'trowel it smooth',
      'smooth troweled',
      'dense hard trowel',
    ],
  ],
  [
    'power trowel',
    [
      'power trowel',
      'machine trowel',
      'trowel by machine',
      'power troweled',
      'power trowel everything smooth',
      'trowelling machine',
      'troweling machine',
      'walk-behind trowel',
      'ride-on trowel',
    ],
  ],
  [
    'light trowel',
    ['light trowel', 'lightly trowel', 'light steel trowel', 'light troweling', 'trowel lightly', 'light trowel only'],
  ],
  ['trowel', ['trowel', 'trowel finish', 'troweled', 'hand trowel', 'trowel to smooth plane', 'trowel to plane']],
  [
    'broom',
    [
      'broom',
      'broom finish',
      'brush finish',
      'broom texture',
      'light broom',
      'medium broom',
      'heavy broom',
      'fine broom',
      'coarse broom',
      'hair broom',
      'soft broom',
      'stiff broom',
      'broomed',
      'brush',
      'brushed',
      'brush texture',
      'hair brush',
    ],
  ],
  ['power float', ['power float', 'machine float', 'power floating']],
  ['bull-float', ['bull float', 'bullfloat', 'darby', 'bull floating']],
  [
    'float',
    [
      'float',
      'float finish',
      'wood float',
      'magnesium float',
      'metal float',
      'steel float',
      'floated',
      'float pans',
      'float shoes',
      'aluminum float',
      'sponge float',
      'swirl float',
      'aluminium float',
      'hand float',
    ],
  ],
  ['strike off', ['strike off', 'strikeoff', 'screed', 'struck off', 'strike-off']],
  ['burlap drag', ['burlap drag', 'drag finish', 'burlap-drag finish', 'pull damp burlap']],
  ['tine', ['tine', 'tined', 'grooved', 'tining']],
  ['exposed aggregate', ['exposed aggregate', 'exposed-aggregate finish', 'expose aggregate']],
  ['rock salt', ['rock salt finish', 'salt finish', 'rock-salt finish', 'rock salt texture']],
  ['stamp', ['stamp', 'stamped', 'imprint', 'patterned']],
  ['rub', ['rubbed finish', 'rub', 'rubbed', 'sack rub']],
  [
    'edge',
    [
      'edger',
      'edging tool',
      'trowel edges',
      'trowel the edges',
      'steel trowel edges',
      'edges with a',
      'tool edges',
      'radius edge',
      'groover',
      'jointer',
      'steel-trowel edges',
      'trowel marks at edges',
    ],
  ],
  [
    'none',
    [
      'steel shod',
      'steel-shod strikeboard',
      'strikeboard',
      'broom clean',
      'broom-clean',
      'swept with a broom',
      'push broom',
      'brush coat',
      'brush on',
      'brush or roller',
      'apply by brush',
      'by brush',
      'wire brush',
      'brush or spray',
      'trowel marks',
      'float marks',
      'broom marks',
      'broom strokes',
      'marks of',
      'brush coats',
      'trowel mortar',
      'margin trowel',
      'brush-coat',
      'steel forms',
      'broom away',
      'broom off',
      'trowel grade',
      'trowel applied',
      'float glass',
      'float valve',
      'wet broom',
      'brushes clean',
      'broom finish panel',
      'street broom',
      'brush hog',
      'brush water',
      'brush out',
      'power broom',
      'rotary broom',
      'gutter broom',
      'clean broom',
      'trowel edge of form',
      'float switch',
      'screed rails',
      'screed boards',
      'wet screed',
      'vibrating screed',
      'screed pins',
      'power sweeper',
      'brush and tree',
      'clear brush',
      'hard trowel area',
      'floor to be trowel',
      'floors to be trowel',
      'floors to be troweled',
      'to be troweled',
      'to be hard troweled',
      'receiving a trowel finish',
      'to receive a trowel finish',
      'with a trowel finish',
      'that receive trowel',
      'proportion for trowel finish',
      'for trowel finish',
    ],
  ],
]);

const handling: readonly string[] = ['references', 'related', 'definitions', 'submittals', 'repair', 'delivery'];

/** Operations of one sentence, grouped by force: what is ordered in order, what is forbidden apart. */
export function finishes(statements: readonly Statement[]): ActFact[] {
  const facts: ActFact[] = [];
  const groups = new Map<string, Group>();
  for (const statement of statements) {
    if (handling.includes(statement.region) || isTools(statement)) continue;
    for (const step of stepsOf(statement)) {
      const force = forceOf(statement, step);
      const key = `${groupKey(statement, statements)}|${force}`;
      const group = groups.get(key);
      if (group) group.steps.push({ statement, step });
      else groups.set(key, { force, steps: [{ statement, step }] });
    }
    facts.push(...codes(statement));
  }
  for (const { force, steps } of groups.values()) facts.push(finishFact(force, steps));
  return facts;
}

interface Step {
  readonly statement: Statement;
  readonly step: Found<FinishStep | 'none'>;
}

interface Group {
  readonly force: Force;
  readonly steps: Step[];
}

/** Sentences that go on with "then", "next" or "finally" belong to the finish begun before them. */
function groupKey(statement: Statement, statements: readonly Statement[]): number {
  const opening = statement.tokens[statement.sentence.from]?.text ?? '';
  if (!/^(?:then|next|finally|afterwards|immediately)$/.test(opening)) return statement.sentence.from;
  const before = statements.findLast(({ sentence }) => sentence.from < statement.sentence.from);
  return before ? groupKey(before, statements) : statement.sentence.from;
}

function stepsOf(statement: Statement): Found<FinishStep | 'none'>[] {
  const { from, to } = statement.predication;
  const found = operations.in(statement.tokens, from, to).filter(({ meaning }) => meaning !== 'none');
  // "before floating", "ahead of the broom", "while trowelling" only time something else; "after floating" is a step that came first.
  return found.filter((step) => !isTiming(statement, step));
}

function isTiming({ tokens, predication }: Statement, { from }: Found<unknown>): boolean {
  const condition = predication.conditions.find((run) => run.from <= from && from < run.to);
  if (condition) return tokens[condition.from]?.text !== 'after' && tokens[condition.from]?.text !== 'following';
  const before = tokens
    .slice(Math.max(predication.from, from - 3), from)
    .map(({ text }) => text)
    .join(' ');
  return (
    /(?:ahead of(?: the)?|between|for|to aid|to ease|to assist|help the|without|with the|by means of)$/.test(before) &&
    /(?:ahead of(?: the)?|between|to aid|to ease|to assist|help the)$/.test(before)
  );
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
    return predication.force === 'ban' ? 'permit' : 'ban';
  return predication.force === 'state' ? 'require' : predication.force;
}

function finishFact(force: Force, steps: readonly Step[]): ActFact {
  const ordered = [...steps].sort((a, b) => Number(isAfter(b)) - Number(isAfter(a)));
  const [first] = steps as readonly [Step, ...Step[]];
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

/** Lists of tools, and trowels as tools for patches and joints. */
const isTools = ({ heading, header }: Statement): boolean =>
  /\btools?\b|equipment|cleaning/.test(`${heading} ${header}`);

/** "T-1", "Finish B" in a schedule; the legend "T-1 = steel trowel" resolves it when the manual is assembled. */
function codes(statement: Statement): ActFact[] {
  const { tokens, predication, block } = statement;
  const facts: ActFact[] = [];
  for (let at = predication.from; at < predication.to; at++) {
    const code = codeAt(tokens, at);
    if (!code) continue;
    const behind = tokens[code.to]?.text ?? '';
    const isLegend =
      behind === '=' ||
      (behind === ':' && /^finish$/.test(tokens[at - 1]?.text ?? '')) ||
      (behind === '-' && /legend|finish/.test(statement.heading));
    const isUse =
      /finish/.test(`${statement.header}`) ||
      (block.kind === 'row' && predication.to - predication.from <= 4 && /-/.test(code.name));
    if (!isLegend && !isUse) continue;
    facts.push({
      kind: 'finish',
      ...said(statement, { from: at, to: code.to }),
      act: {
        verb: 'finish',
        manner: `${isLegend ? 'legend' : 'code'} ${code.name}`,
        steps: isLegend ? legendSteps(statement, code.to) : [],
      },
    });
  }
  return facts;
}

function legendSteps(statement: Statement, from: number): FinishStep[] {
  return operations
    .in(statement.tokens, from, statement.sentence.to)
    .flatMap(({ meaning }) => (meaning === 'none' ? [] : [meaning]));
}

function codeAt(tokens: Statement['tokens'], at: number): { readonly name: string; readonly to: number } | undefined {
  const token = tokens[at];
  if (token?.kind !== 'word' || !token.capital || 3 < token.text.length || (tokens[at - 1] && !token.spaced))
    return undefined;
  const [dash, number] = [tokens[at + 1], tokens[at + 2]];
  if (dash?.text === '-' && !dash.spaced && number?.kind === 'number' && !number.spaced)
    return { name: `${token.text}-${number.text}`.toUpperCase(), to: at + 3 };
  if (dash?.kind === 'number' && !dash.spaced) return { name: `${token.text}-${dash.text}`.toUpperCase(), to: at + 2 };
  return token.text.length === 1 ? { name: token.text.toUpperCase(), to: at + 1 } : undefined;
}
