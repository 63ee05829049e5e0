/** Elements of the manual: names that mean the same thing brought together, with the words that tell where each stands. */

import { flatwork, reaches } from '../../rules/model/binding.ts';
import type { Fact, Mention } from '../../rules/model/fact.ts';
import type { Span } from '../../rules/model/source.ts';
import type { Cue, Element, ElementKind, SectionDocument } from '../../rules/model/specification.ts';
import { nounCues, sectionCue } from './evidence.ts';
import { namedIn } from './mentions.ts';
import type { NamedThere, Reading } from './reading.ts';
import { tokensOf } from './tokens.ts';

interface Draft {
  readonly name: string;
  readonly kind: ElementKind;
  label: string;
  readonly bare: boolean;
  readonly documents: Set<string>;
  readonly mixtures: Set<string>;
  readonly cues: Cue[];
  readonly traits: Set<string>;
  readonly first: Span;
}

export function elementsOf(readings: readonly Reading[], documents: readonly SectionDocument[]): Element[] {
  const drafts = new Map<string, Draft>();
  for (const reading of readings) {
    for (const place of reading.named) for (const each of place.elements) note(drafts, reading, place, each);
    noteTitle(drafts, reading);
  }
  const kept = [...drafts.values()].filter((draft) => !isCovered(draft, drafts));
  const widened = kept.map((draft) => withHandedTo(draft, documents));
  return widened.map((draft) => finished(draft, readings, documents));
}

/** "walk" and "sidewalk" by themselves are one thing, in one section or in two: the word that came first names it. */
const sameThing = (drafts: ReadonlyMap<string, Draft>, { kind, bare }: Mention): string | undefined =>
  bare && single.has(kind) ? [...drafts.values()].find((draft) => draft.bare && draft.kind === kind)?.name : undefined;

const single: ReadonlySet<ElementKind> = new Set<ElementKind>(['walk', 'curb', 'ramp', 'steps', 'drive']);

/** Bare group nouns are two things where one paragraph speaks of those indoors and another of those outdoors. */
function nameOf({ name, kind, bare }: Mention, exterior: NamedThere['exterior']): string {
  if (!bare || !groups.has(kind) || exterior === 'unknown') return name;
  return `${exterior === 'yes' ? 'exterior' : 'interior'} ${name}`;
}

/** Kinds that stand for whatever is named beside them. */
const wholes: ReadonlySet<ElementKind> = new Set<ElementKind>(['slab', 'concrete', 'flatwork', 'pavement']);

const groups: ReadonlySet<ElementKind> = new Set<ElementKind>(['slab', 'concrete', 'flatwork', 'deck', 'wall']);

function note(
  drafts: Map<string, Draft>,
  reading: Reading,
  place: NamedThere,
  each: NamedThere['elements'][number],
): void {
  const { mention, label } = each;
  const exterior = each.exterior;
  const name = sameThing(drafts, mention) ?? nameOf(mention, exterior);
  const { path } = reading.source;
  const draft = drafts.get(name) ?? {
    name,
    kind: mention.kind,
    label,
    bare: mention.bare,
    documents: new Set<string>(),
    mixtures: new Set<string>(),
    cues: [],
    traits: new Set<string>(),
    first: { path, start: place.start, end: place.end },
  };
  drafts.set(name, draft);
  draft.documents.add(path);
  if (/s$/.test(label) && !/s$/.test(draft.label)) draft.label = label;
  for (const mixture of place.mixtures) draft.mixtures.add(mixture);
  for (const trait of each.traits) draft.traits.add(trait);
  const span = { path, start: place.start, end: place.end };
  for (const cue of nounCues(label, exterior, place.place, span))
    if (!draft.cues.some((known) => isSameCue(known, cue))) draft.cues.push(cue);
}

/** A word said twice is one piece of evidence. */
const isSameCue = (a: Cue, b: Cue): boolean => a.kind === b.kind && a.words === b.words;

/** A section that names nothing but itself is about what its title says. */
function noteTitle(drafts: Map<string, Draft>, reading: Reading): void {
  if ([...drafts.values()].some(({ documents }) => documents.has(reading.source.path)) || !reading.title) return;
  const tokens = tokensOf(reading.title.toLowerCase(), 0, reading.title.length);
  const titled = namedIn(tokens, { from: 0, to: tokens.length });
  const place: NamedThere = { ...titled, place: reading.section ?? '', start: 0, end: 1 };
  for (const each of titled.elements) note(drafts, reading, place, each);
}

const outdoors: ReadonlySet<ElementKind> = new Set(flatwork.filter((kind) => kind !== 'pavement'));

/** "walks" after "shelter walks" are the shelter walks; a bare "slab" where something is named is whatever is named. */
function isCovered(draft: Draft, drafts: ReadonlyMap<string, Draft>): boolean {
  if (!draft.bare) return false;
  const others = [...drafts.values()].filter(
    (other) => other !== draft && [...other.documents].some((path) => draft.documents.has(path)),
  );
  const isInside = draft.name.startsWith('interior ');
  if (isInside) return others.some(({ kind }) => kind === 'floor');
  if (wholes.has(draft.kind)) return others.some(({ kind }) => outdoors.has(kind));
  return others.some((other) => other.kind === draft.kind && !other.bare);
}

/** General facts of a loaded section reach the elements of the sections that hand their concrete to it. */
function withHandedTo(draft: Draft, documents: readonly SectionDocument[]): Draft {
  const targets = documents.filter(({ path }) => draft.documents.has(path)).flatMap(({ handsTo }) => handsTo);
  for (const { section, path } of documents) if (section && targets.includes(section)) draft.documents.add(path);
  return draft;
}

function finished(draft: Draft, readings: readonly Reading[], documents: readonly SectionDocument[]): Element {
  const home = readings.filter(({ source }) => draft.documents.has(source.path));
  const cues = [...draft.cues, ...home.flatMap((reading) => sectionCue(reading))];
  const bare: Element = {
    name: draft.name,
    label: labelOf(draft),
    kind: draft.kind,
    documents: [...draft.documents],
    mixtures: [...draft.mixtures],
    cues,
    salted: { value: 'unknown' },
    traits: draft.traits,
    first: draft.first,
  };
  const facts = documents.flatMap((document) => document.facts.filter((fact) => reaches(fact.subject, bare, document)));
  return {
    ...bare,
    cues: [...cues, ...factCues(facts.filter((fact) => !isOnlyGeneral(fact, cues) && !presumesOutdoors(fact, cues)))],
    salted: saltedBy(facts),
    traits: new Set([...draft.traits, ...traitsFrom(facts)]),
  };
}

function labelOf({ name, label }: Draft): string {
  const prefix = /^(exterior|interior) /.exec(name)?.[1];
  return prefix && !label.includes(prefix) ? `${prefix} ${label}` : label;
}

const own: ReadonlySet<string> = new Set(['words', 'row', 'stem', 'heading']);
const freezes = /^(?:F[1-3]|RF[1-4]|XF\d|C-XL|C-\d|F-\d)$/;
const doesNotFreeze = /^(?:F0|RF0|N|X0|XC1)$/;

/** What is said of the work as a whole does not put a floor out of doors. */
const isOnlyGeneral = ({ subject }: Fact, cues: readonly Cue[]): boolean =>
  !own.has(subject.by) && subject.by !== 'article' && cues.some(({ kind }) => kind === 'indoor-noun');

/** What is said of exterior concrete is no evidence for something that nothing else puts outdoors. */
const presumesOutdoors = ({ subject }: Fact, cues: readonly Cue[]): boolean =>
  subject.exterior === 'yes' && !cues.some(({ kind }) => kind === 'outdoor-noun' || kind === 'outdoor-section');

function factCues(facts: readonly Fact[]): Cue[] {
  return facts.flatMap((fact): Cue[] => {
    const at = { words: fact.words, place: fact.place, span: fact.spans[0] };
    if (fact.kind === 'exposure-class' && freezes.test(fact.value))
      return [{ kind: 'freeze-class', ...at, words: `Class ${fact.value}` }];
    if (fact.kind === 'exposure-class' && doesNotFreeze.test(fact.value) && own.has(fact.subject.by))
      return [{ kind: 'no-freeze-class', ...at, words: `Class ${fact.value}` }];
    if (fact.kind === 'freezing' || (fact.kind === 'deicers' && fact.value === 'yes'))
      return [{ kind: 'weather-word', ...at }];
    if (fact.kind === 'finish' && fact.force !== 'ban') return finishCue(fact.act.steps ?? [], at);
    return [];
  });
}

function finishCue(steps: readonly string[], at: Omit<Cue, 'kind'>): Cue[] {
  if (steps.some((step) => step === 'broom' || step === 'burlap drag' || step === 'tine'))
    return [{ kind: 'outdoor-finish', ...at }];
  return steps.includes('hard trowel') ? [{ kind: 'indoor-finish', ...at }] : [];
}

/** The element's own words win over a general sentence, and a yes over a no at the same level. */
function saltedBy(facts: readonly Fact[]): Element['salted'] {
  const said = facts.filter((fact) => fact.kind === 'deicers');
  const chosen = said.find(({ subject }) => own.has(subject.by)) ?? said[0];
  if (chosen?.kind !== 'deicers') return { value: 'unknown' };
  const cue: Cue = { kind: 'weather-word', words: chosen.words, place: chosen.place, span: chosen.spans[0] };
  return { value: chosen.value === 'no' ? 'no' : 'yes', cue };
}

const traitsFrom = (facts: readonly Fact[]): string[] =>
  facts.flatMap((fact) => (fact.kind === 'trait' && own.has(fact.subject.by) ? [fact.value] : []));
