/** A value that a section states: how it was read, in both unit systems, and what the code requires there, with the working. */
import { bothUnits, say } from '../../rules/formulas/unit-twins.ts';
import { type View, viewsOf } from '../../rules/kinds/view.ts';
import { reaches } from '../../rules/model/binding.ts';
import type { PropertyKind, ValueFact } from '../../rules/model/fact.ts';
import { highest, lowest, type Measure } from '../../rules/model/measure.ts';
import { type Quantity, quantity, type Unit } from '../../rules/model/quantity.ts';
import type { AirBand, CuringMinimum, Limits } from '../../rules/model/requirement.ts';
import type { Context } from '../../rules/model/rule.ts';
import { list } from '../render/layout.ts';
import { codeNames, sayOrigin, sayStep } from '../render/words.ts';
import { caution, listed, numbered, paragraphs, plain, strong } from './markdown.ts';

export function valueMarkdown(fact: ValueFact, context: Context): string {
  const views = viewsOf(context).filter((view) => speaksOf(fact, view));
  const groups = groupsOf(fact.kind, views);
  const shown = groups.slice(0, groupsShown);
  return paragraphs([
    `${strong([propertyNames[fact.kind], fact.of].filter(Boolean).join(', '))}: ${plain(sayMeasure(fact.value))}`,
    fact.doubt && plain(`The reading is in doubt: ${fact.doubt}. A value in doubt is not held against the text.`),
    fact.working && `How it was read:\n\n${numbered(fact.working)}`,
    views.length === 0 ? 'No element of these sections is known to be meant.' : undefined,
    ...shown.map(({ names, lines, steps }) =>
      paragraphs([
        `Required for ${plain(list(names))}:\n\n${listed(lines)}`,
        0 < steps.length ? `Working:\n\n${numbered(steps)}` : undefined,
      ]),
    ),
    shown.length < groups.length
      ? `Other limits hold for ${plain(list(groups.slice(groupsShown).flatMap(({ names }) => names)))}.`
      : undefined,
    0 < groups.length ? caution : undefined,
  ]);
}

/** Groups of elements with limits of their own; a hover is no report. */
const groupsShown = 2;

const propertyNames: Readonly<Record<PropertyKind, string>> = {
  'air-content': 'Air content',
  'w-cm': 'Water-cementitious materials ratio',
  strength: 'Strength',
  'aggregate-size': 'Nominal maximum aggregate size',
  scm: 'Supplementary cementitious material',
  chloride: 'Chloride',
  'cement-content': 'Cement content',
  slump: 'Slump',
  'curing-duration': 'Length of curing',
  'curing-temperature': 'Temperature during curing',
  'curing-strength': 'Strength at the end of curing',
  'cold-protection': 'Protection in cold weather',
  'deicer-hold-off': 'Time without de-icers',
  drying: 'Drying',
  evaporation: 'Rate of evaporation',
  slope: 'Slope',
  coverage: 'Coverage',
  'concrete-temperature': 'Temperature of concrete',
};

function speaksOf(fact: ValueFact, { context, element }: View): boolean {
  const document = context.specification.documents.find(({ path }) => path === fact.spans[0].path);
  return document !== undefined && reaches(fact.subject, element, document);
}

/** "target 6 percent, 4.5 percent to 7.5 percent accepted"; "at most 0.45"; "at least 4500 psi (31 MPa)". */
function sayMeasure(measure: Measure): string {
  const amount = (number: number | undefined): string | undefined =>
    number === undefined ? undefined : bothUnits(quantity(number, measure.unit as Unit) as unknown as Quantity);
  const [low, high] = [amount(lowest(measure)), amount(highest(measure))];
  const target = measure.target === undefined ? undefined : amount(measure.target);
  if (target !== undefined && low === target && high === target) return target;
  if (target !== undefined) return `target ${target}, ${low} to ${high} accepted`;
  if (low !== undefined && high !== undefined) return `${low} to ${high}`;
  if (low !== undefined) return `at least ${low}`;
  return high === undefined ? measure.asWritten : `at most ${high}`;
}

interface Group {
  readonly names: string[];
  readonly lines: readonly string[];
  readonly steps: readonly string[];
}

/** Elements of which the same is required stand together. */
function groupsOf(kind: PropertyKind, views: readonly View[]): readonly Group[] {
  const groups = new Map<string, Group>();
  for (const view of views) {
    const lines = requiredLines(kind, view);
    if (lines.length === 0) continue;
    const steps = view.requirement?.steps.map(sayStep) ?? [];
    const key = [...lines, ...steps].join('\n');
    const group = groups.get(key) ?? { names: [], lines, steps };
    group.names.push(view.element.label);
    groups.set(key, group);
  }
  return [...groups.values()];
}

function requiredLines(kind: PropertyKind, { requirement, project }: View): readonly string[] {
  const say = sayings[kind];
  if (!say) return [];
  if (!requirement) return [`${codeNames[project.code]} is not computed by this version`];
  const { lawful, declared, recommended } = requirement;
  return [
    ...say(lawful),
    ...(declared ? say(declared).map((line) => `${line}; declared by the project`) : []),
    ...(recommended ? say(recommended).map((line) => `${line}; recommended so that it lasts`) : []),
  ];
}

/** What a set of limits asks of a property; nothing for properties that no code limits here. */
const sayings: Readonly<Partial<Record<PropertyKind, (limits: Limits) => readonly string[]>>> = {
  'w-cm': ({ wcm }) => (wcm ? [`at most ${say(wcm.value)}, ${sayOrigin(wcm.origin)}`] : []),
  strength: ({ strength }) =>
    strength
      ? [`at least ${say(strength.value.inchPound)} (${say(strength.value.metric)}), ${sayOrigin(strength.origin)}`]
      : [],
  'air-content': ({ air, airAtMost }) => [
    ...(air ? [sayAir(air)] : []),
    ...(airAtMost ? [`at most ${airAtMost.value} percent, ${sayOrigin(airAtMost.origin)}`] : []),
  ],
  scm: ({ scm }) => scm.map(({ material, max, origin }) => `${material} at most ${max} percent, ${sayOrigin(origin)}`),
  chloride: ({ chloride }) =>
    chloride ? [`at most ${chloride.value} percent by mass of ${chloride.of}, ${sayOrigin(chloride.origin)}`] : [],
  'curing-duration': ({ curing }) => (curing ? [sayDuration(curing)] : []),
  'curing-temperature': ({ curing }) =>
    curing ? [`at least ${bothUnits(curing.temperature as unknown as Quantity)}, ${sayOrigin(curing.origin)}`] : [],
};

function sayAir({ target, low, high, reducedTarget, byRange, origin }: AirBand): string {
  const band = byRange ? `${low} to ${high} percent` : `${target} percent, ${low} to ${high} accepted`;
  const reduced = reducedTarget === undefined ? '' : `; ${reducedTarget} percent is permitted at this strength`;
  return `${band}${reduced}, ${sayOrigin(origin)}`;
}

const sayDuration = ({ days, highEarlyDays, origin }: CuringMinimum): string =>
  `at least ${days} days, ${highEarlyDays} days with high early strength, ${sayOrigin(origin)}`;
