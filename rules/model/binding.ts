/** Which facts speak about which element: most specific first, nothing merged. */
import type {
  ActFact,
  ActKind,
  Fact,
  FactKind,
  Mention,
  NamedFact,
  NamedKind,
  PropertyKind,
  Subject,
  ValueFact,
} from './fact.ts';
import type { Cue, Element, ElementKind, SectionDocument, Specification } from './specification.ts';

/** Facts of one kind that reach the element, at the most specific level at which the text speaks; empty if it is silent. */
export function about(specification: Specification, element: Element, kind: PropertyKind): readonly ValueFact[];
export function about(specification: Specification, element: Element, kind: ActKind): readonly ActFact[];
export function about(specification: Specification, element: Element, kind: NamedKind): readonly NamedFact[];
export function about(specification: Specification, element: Element, kind: FactKind): readonly Fact[] {
  return closest(allAbout(specification, element, kind), element);
}

/** Of facts that reach the element, those at the most specific level. */
export function closest(reaching: readonly Fact[], element: Element): readonly Fact[] {
  const levels = reaching.map((fact) => closeness(fact.subject, element));
  const best = levels.reduce((most, level) => Math.max(most, level), 0);
  return reaching.filter((_, at) => levels[at] === best);
}

/** Every fact of one kind that reaches the element, however generally it is stated. */
export function allAbout(specification: Specification, element: Element, kind: FactKind): readonly Fact[] {
  return specification.documents.flatMap((document) =>
    document.facts.filter((fact) => fact.kind === kind && reaches(fact.subject, element, document)),
  );
}

/** Does a statement with this subject, made in `document`, speak about the element? */
export function reaches(subject: Subject, element: Element, document: SectionDocument): boolean {
  const near = closeness(subject, element);
  // "Slabs" in one section say nothing of what only another section names; a full name does.
  return element.documents.includes(document.path) ? 0 < near : near === byItsName;
}

const byItsName = 6;

const isGeneral = (subject: Subject): boolean => subject.elements.length === 0 && subject.mixtures.length === 0;

/** 0: not about it; the higher, the more specific: its own name, its mixture, its kind, a group, everything. */
function closeness(subject: Subject, element: Element): number {
  if (subject.exterior === 'no' && isOutdoor(element)) return 0;
  if (subject.exterior === 'yes' && isIndoor(element)) return 0;
  if (isGeneral(subject)) return subject.exterior === 'unknown' ? 1 : 2;
  const byName = Math.max(0, ...subject.elements.map((mention) => nearness(mention, element)));
  const byMixture = subject.mixtures.some((name) => element.mixtures.includes(name)) ? 4 : 0;
  return Math.max(byName, byMixture);
}

/** 6 the very name, 5 every thing of its kind, 3 a group that contains it, 0 something else. */
function nearness(mention: Mention, element: Element): number {
  if (mention.name === element.name) return 6;
  if (mention.kind === element.kind) return mention.bare || element.name.endsWith(` ${mention.name}`) ? 5 : 0;
  return mention.bare && groups[mention.kind]?.includes(element.kind) ? 3 : 0;
}

/** Kinds that are laid flat and out of doors by their very name. */
export const flatwork: readonly ElementKind[] = [
  'walk',
  'curb',
  'ramp',
  'steps',
  'apron',
  'drive',
  'parking',
  'plaza',
  'pad',
  'pavement',
  'dock',
];

/** Group nouns and the kinds they contain. */
const groups: Readonly<Partial<Record<ElementKind, readonly ElementKind[]>>> = {
  flatwork: [...flatwork, 'slab'],
  pavement: ['walk', 'curb', 'ramp', 'apron', 'drive', 'parking', 'plaza', 'pad'],
  slab: ['walk', 'ramp', 'apron', 'drive', 'parking', 'plaza', 'pad', 'dock', 'floor', 'deck', 'steps'],
  concrete: [...flatwork, 'slab', 'floor', 'deck', 'wall', 'footing', 'flatwork', 'other'],
};

/** By a noun, a class or a section that can only be outdoors; a walk or ramp also where nothing puts it indoors. */
const isOutdoor = (element: Element): boolean =>
  has(element, 'outdoor-noun', 'outdoor-section', 'freeze-class') ||
  (has(element, 'either-noun', 'weather-word') && !has(element, 'indoor-noun'));

const isIndoor = (element: Element): boolean => has(element, 'indoor-noun') && !has(element, 'outdoor-noun');

const has = ({ cues }: Element, ...kinds: readonly Cue['kind'][]): boolean =>
  cues.some(({ kind }) => kinds.includes(kind));
