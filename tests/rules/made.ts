/** Specifications made by hand, so that rules and makers are tested without the reader. */
import type {
  Act,
  ActFact,
  ActKind,
  Fact,
  NamedFact,
  NamedKind,
  PropertyKind,
  Said,
  ValueFact,
} from '../../rules/model/fact.ts';
import type { Measure } from '../../rules/model/measure.ts';
import type { Project } from '../../rules/model/project.ts';
import { type Unit, units } from '../../rules/model/quantity.ts';
import type { Context } from '../../rules/model/rule.ts';
import type { Article, Cue, Element, ElementKind, Region, SectionDocument } from '../../rules/model/specification.ts';

export const path = '32 13 13.md';

/** Freezing, no word on de-icers, ACI 318-19. */
export const project: Project = {
  code: 'aci-318-19',
  codeAssumed: true,
  climate: 'freezing',
  deicers: 'unknown',
  structural: 'unknown',
  reinforced: 'unknown',
  units: 'both',
  stage: 'being-written',
  elements: {},
  byPath: {},
};

let offset = 0;

/** Every fact stands on words of its own. */
function span() {
  offset += 10;
  return { path, start: offset, end: offset + 8 };
}

const everything = { elements: [], mixtures: [], exterior: 'unknown', by: 'section' } as const;

function said(over: Partial<Said>): Said {
  const words = 'as written';
  return {
    spans: [span()],
    words,
    place: '3.04.A',
    article: 0,
    force: 'require',
    addressee: 'contractor',
    subject: everything,
    ...over,
  };
}

export function value(
  kind: PropertyKind,
  unit: Unit,
  bounds: Partial<Pick<Measure, 'min' | 'max' | 'target' | 'plus' | 'minus'>>,
  over: Partial<ValueFact> = {},
): ValueFact {
  const { dimension } = units[unit];
  const measure = { dimension, unit, asWritten: 'as written', ...bounds } as unknown as Measure;
  return { ...said(over), kind, value: measure, ...over };
}

export function act(kind: ActKind, slots: Act, over: Partial<ActFact> = {}): ActFact {
  return { ...said(over), kind, act: slots, ...over };
}

export function name(kind: NamedKind, named: string, over: Partial<NamedFact> = {}): NamedFact {
  return { ...said(over), kind, value: named, ...over };
}

/** The subject of a statement that names one element. */
export function about(...elements: readonly Element[]): Pick<Said, 'subject'> {
  const mentions = elements.map((each) => ({ name: each.name, kind: each.kind, bare: false }));
  return { subject: { elements: mentions, mixtures: [], exterior: 'unknown', by: 'words' } };
}

const outdoors: Cue = { kind: 'outdoor-noun', words: 'walk', place: '3.04.A' };
const indoors: Cue = { kind: 'indoor-noun', words: 'floor', place: '3.04.B' };
const heated: Cue = { kind: 'no-freeze-class', words: 'F0', place: '2.01' };

export function element(label: string, kind: ElementKind, cues: readonly Cue[], over: Partial<Element> = {}): Element {
  return {
    name: label.replace(/s$/, ''),
    label,
    kind,
    documents: [path],
    mixtures: [],
    cues,
    salted: { value: 'unknown' },
    traits: new Set(),
    first: { path, start: 0, end: 1 },
    ...over,
  };
}

/** A walk outdoors by strong evidence, and a floor indoors. */
export const walk = (over: Partial<Element> = {}) => element('shelter walks', 'walk', [outdoors], over);
export const floor = (over: Partial<Element> = {}) => element('ticket-hall floor', 'floor', [indoors, heated], over);

export function article(region: Region, number: string): Article {
  const titleSpan = span();
  return { number, title: region, region, span: span(), titleSpan, next: { at: titleSpan.end, before: '\nA. ' } };
}

export interface Made {
  readonly elements: readonly Element[];
  readonly facts?: readonly Fact[];
  readonly articles?: readonly Article[];
  readonly document?: Partial<SectionDocument>;
  readonly project?: Partial<Project>;
}

/** One section with these elements and facts. */
export function context(made: Made): Context {
  const facts = made.facts ?? [];
  const articles = made.articles ?? [
    article('mixtures', '2.01'),
    article('placing', '3.02'),
    article('finishing', '3.04'),
  ];
  const document: SectionDocument = {
    path,
    section: '32 13 13',
    articles,
    facts,
    unread: [],
    clauses: facts.length,
    designStandard: false,
    newArticles: {},
    handsTo: [],
    ...made.document,
  };
  const specification = { documents: [document], elements: made.elements, facts };
  return { specification, project: { ...project, ...made.project } };
}
