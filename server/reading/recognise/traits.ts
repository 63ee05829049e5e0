/** What kind of work it is (plain, suspended, precast, …), the placing season, the finishing tools, and choices left open. */
import type { FinishingTool, Trait } from '../../../rules/model/acts.ts';
import type { NamedFact } from '../../../rules/model/fact.ts';
import type { Designation } from '../designations.ts';
import { Phrases } from '../phrases.ts';
import { type Statement, said, spanOf, trimmed } from '../statement.ts';
import { allWords, sentenceWords } from './act.ts';

const traitPhrases = new Phrases<Trait | 'none'>([
  [
    'nonstructural',
    ['nonstructural', 'non structural', 'non-structural', 'carries no structure', 'carry no structure'],
  ],
  [
    'suspended',
    [
      'suspended',
      'over the tunnel',
      'over the utility tunnel',
      'over a utility tunnel',
      'over occupied space',
      'suspended slab',
      'structural deck',
      'over the bus tunnel',
      'spanning',
    ],
  ],
  [
    'structural',
    ['structurally reinforced', 'structural slab', 'structural', 'structural member', 'structural members'],
  ],
  ['on ground', ['on ground', 'on grade', 'slab on ground', 'slab on grade', 'on compacted base']],
  [
    'reinforced',
    [
      'structurally reinforced',
      'reinforced concrete',
      'reinforced by design',
      'reinforced apron',
      'reinforced slab',
      'reinforced',
    ],
  ],
  [
    'plain',
    [
      'plain concrete',
      'unreinforced',
      'plain',
      'wire mesh',
      'welded wire fabric',
      'welded wire reinforcement',
      'fiber reinforcement',
      'mesh only',
    ],
  ],
  ['prestressed', ['prestressed', 'post tensioned', 'post-tensioned', 'post tensioning', 'strands']],
  ['precast', ['precast', 'precast concrete']],
  ['slipform', ['slipform', 'slipformed', 'slip formed', 'slip-form', 'extruded']],
  ['pervious', ['pervious', 'porous concrete', 'no fines', 'pervious concrete']],
  ['lightweight', ['lightweight concrete', 'structural lightweight']],
  ['snow-melt', ['snow melt', 'snow melting', 'hydronic', 'hydronically heated', 'heated by tubing', 'snowmelt']],
  ['high-early', ['high early strength', 'high early', 'high-early', 'type iii']],
  ['heated', ['heated', 'conditioned space', 'conditioned room', 'air conditioned', 'kept above freezing']],
  [
    'none',
    [
      'structural engineer',
      'structural fill',
      'structural steel',
      'plain language',
      'reinforced plastic',
      'topping slab drain',
      'precast manhole',
      'precast vault',
      'structural drawings',
      'non reinforced',
      'lightweight aggregate or',
      'reinforcement',
      'precast lid',
      'heated water',
      'heated enclosure',
      'heated enclosures',
      'heated air',
      'heated materials',
      'fiber reinforced polymer',
      'snow melt chemicals',
      'snow melting chemicals',
      'snow melt chemical',
      'slag topping',
      'heated aggregate',
      'lightweight or porous aggregate',
      'lightweight or',
    ],
  ],
]);

export function traits(statement: Statement): NamedFact[] {
  if (
    ['references', 'related', 'definitions', 'submittals'].includes(statement.region) ||
    statement.predication.force === 'ban'
  )
    return [];
  // A trait needs something that has it: an element or mixture of its own words, row or heading.
  if (statement.subject.elements.length === 0 && statement.subject.mixtures.length === 0) return [];
  const { tokens, predication, named } = statement;
  // In a list of several elements only what is said of them all, behind the verb, holds for them all.
  const last = 1 < named.elements.length ? verbBehind(statement) : predication.from;
  if (last === undefined) return [];
  return traitPhrases
    .in(tokens, last, predication.to)
    .flatMap((found): NamedFact[] =>
      found.meaning === 'none' ? [] : [{ kind: 'trait', ...said(statement, found, 'state'), value: found.meaning }],
    );
}

function verbBehind({ tokens, predication, named }: Statement): number | undefined {
  const behind = named.elements.at(-1)?.to ?? predication.from;
  // "Deck slabs and ramps (structurally reinforced; …)" says it of them all too.
  if (tokens[behind]?.text === '(') return behind;
  for (let at = behind; at < predication.to; at++) if (/^(?:is|are|be|being)$/.test(tokens[at]?.text ?? '')) return at;
  return undefined;
}

const tools = new Phrases<FinishingTool>([
  ['steel trowel', ['steel trowel']],
  ['power trowel', ['power trowel', 'troweling machine', 'trowelling machine']],
  ['bull float', ['bull float', 'bullfloat', 'darby']],
  ['fresno', ['fresno']],
  ['float', ['float', 'magnesium float', 'wood float', 'metal float']],
  ['broom', ['broom', 'brush']],
  ['edger', ['edger', 'edging tool']],
  ['groover', ['groover', 'jointer', 'grooving tool']],
]);

export function finishingTools(statement: Statement): NamedFact[] {
  if (statement.region !== 'finishing' && !/finish/.test(statement.heading)) return [];
  const { tokens, predication } = statement;
  return tools
    .in(tokens, predication.from, predication.to)
    .map((found) => ({ kind: 'finishing-tool', ...said(statement, found), value: found.meaning }));
}

/** "Place only between 15 May and 15 September", "placements into November". */
export function season(statement: Statement, designations: readonly Designation[]): NamedFact[] {
  const sentence = sentenceWords(statement);
  if (
    !/\b(?:plac\w*|pour\w*|concret\w*|cast\w*|construct\w*|season|work)\b/.test(sentence) ||
    /\b(?:salt\w*|de ?-? ?ic\w*|inspect\w*|submit\w*|seed\w*|plant\w*)\b/.test(sentence)
  )
    return [];
  const dates = designations
    .filter(
      ({ kind, from }) => kind === 'date' && statement.predication.from <= from && from < statement.predication.to,
    )
    .map(({ name }) => name);
  const months =
    sentence.match(/\b(?:january|february|march|april|june|july|august|september|october|november|december)\b/g) ?? [];
  const bounded =
    /\b(?:only|between|from|no(?:t)? (?:concrete )?(?:shall be )?plac\w*|not (?:be )?plac\w*|after|before|earlier|later)\b/.test(
      sentence,
    );
  if (
    dates.length < 2 &&
    months.length < 2 &&
    !/\b(?:into|through|until|all (?:year|winter)|before the new year|winter)\b/.test(sentence)
  )
    return [];
  const [first, last] = dates;
  if (dates.length === 2 && bounded && first !== undefined && last !== undefined) {
    const mild = '03-15' <= first && first < last && last <= '09-30' && statement.predication.force !== 'ban';
    const closed = statement.predication.force === 'ban' && '09-01' <= first && last <= '05-31';
    return [named(statement, mild || closed ? 'mild months' : 'late', `${first} to ${last}`)];
  }
  const late =
    /\b(?:november|december|january|february|new year|all year|winter)\b/.test(sentence) &&
    statement.predication.force !== 'ban' &&
    /\binto|through|until|before the new year|all (?:year|winter)|in winter\b/.test(sentence);
  return late ? [named(statement, 'late', months.join(' to '))] : [];
}

const named = (statement: Statement, value: string, of: string): NamedFact => ({
  kind: 'season',
  ...said(statement, trimmed(statement.tokens, statement.predication)),
  value,
  of,
});

/** Bracketed choices, blanks and placeholders: a person has still to decide. */
export function choices(statement: Statement): NamedFact[] {
  const { tokens, predication } = statement;
  const facts: NamedFact[] = [];
  for (let at = predication.from; at < predication.to; at++) {
    const { text } = tokens[at] as Statement['tokens'][number];
    if (/^_{2,}$/.test(text) || (/^(?:tbd|xx|xxx)$/.test(text) && (tokens[at]?.capital ?? false)))
      facts.push(open(statement, at, at + 1, 'blank'));
    else if (text === '[') {
      const close = tokens.findIndex((token, index) => at < index && index <= at + 12 && token.text === ']');
      if (close < 0) continue;
      facts.push(open(statement, at, close + 1, 'open'));
      at = close;
    }
  }
  return facts;
}

const open = (statement: Statement, from: number, to: number, value: string): NamedFact => ({
  kind: 'choice',
  ...said(statement, { from, to }, 'state'),
  spans: [spanOf(statement, { from, to })],
  value,
  of: allWords(statement).slice(0, 60),
});
