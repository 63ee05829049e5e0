/** A computed requirement without a document, as text and as data. */
import { bothUnits, inSystem } from '../../rules/formulas/unit-twins.ts';
import type { AirBand, Limits, Requirement, ScmCap } from '../../rules/model/requirement.ts';
import { asJson, originJson, schemaVersion, stepJson } from './json.ts';
import { heading, labelled, list, type Page, paged, wrap } from './layout.ts';
import { codeNames, sayStep } from './words.ts';

export function requirementText(requirement: Requirement, page: Page): string {
  const { code, classes, aggregate, lawful, recommended, alternatives, steps } = requirement;
  const { style, width } = page;
  const bySize = alternatives.filter(({ about }) => about === 'aggregate');
  const others = alternatives.filter(({ about }) => about !== 'aggregate');
  const size = aggregate ? `${bothUnits(aggregate)} aggregate` : 'aggregate not given';
  return paged([
    heading(`${codeNames[code]}: ${list(classes)}, ${size}`, page),
    [style.strong('Lawful minimum'), ...limitLines(lawful, width)],
    recommended ? [style.strong('Recommended so that it lasts'), ...limitLines(recommended, width)] : [],
    ...others.map(({ given, limits }) => [...heading(`If ${given}`, page), ...differenceLines(limits, lawful, width)]),
    bySize.length === 0 ? [] : [style.strong('Air by aggregate size'), ...sizeLines(bySize, width)],
    [style.strong('Working'), ...steps.flatMap((step) => labelled('  -', sayStep(step), width))],
    wrap(caution, width).map(style.faint),
  ]);
}

const caution = 'Check each value against the edition that the local code adopts; it comes first.';

export function requirementJson(requirement: Requirement): string {
  const { code, classes, aggregate, lawful, recommended, alternatives, steps, citations } = requirement;
  const { aggregate: size, ...limits } = { ...limitsJson(lawful), aggregate };
  return asJson({
    schemaVersion,
    code,
    exposure: classes,
    ...limits,
    aggregate: size ? { value: size.amount, unit: size.unit } : null,
    lawful: limitsJson(lawful),
    recommended: recommended ? limitsJson(recommended) : null,
    alternatives: alternatives.map(({ about, given, limits: own }) => ({ about, given, ...limitsJson(own) })),
    steps: steps.map(stepJson),
    citations: citations.map(originJson),
  });
}

function limitsJson({ wcm, strength, air, airAtMost, scm, chloride, curing, cementitious }: Limits) {
  return {
    wcm: wcm ? { max: wcm.value.amount } : null,
    strength: strength ? strengthJson(strength.value) : null,
    air: air ? airJson(air) : null,
    airAtMost: airAtMost?.value ?? null,
    cementitious: {
      caps: scm.map(({ material, max }) => ({ material, max, unit: 'percent' })),
      rules: cementitious.map(({ value }) => value),
    },
    chloride: chloride ? { max: chloride.value, unit: 'percent', of: chloride.of } : null,
    curing: curing ? curingJson(curing) : null,
  };
}

function strengthJson({ inchPound, metric }: NonNullable<Limits['strength']>['value']) {
  return { min: inchPound.amount, unit: inchPound.unit, also: { min: metric.amount, unit: metric.unit } };
}

const airJson = ({ target, low, high, reducedTarget, byRange }: AirBand) => ({
  target: byRange ? null : target,
  low,
  high,
  reducedTarget: reducedTarget ?? null,
  unit: 'percent',
});

const curingJson = ({ days, highEarlyDays, temperature }: NonNullable<Limits['curing']>) => ({
  min: days,
  unit: 'd',
  highEarly: highEarlyDays,
  temperature: { min: temperature.amount, unit: temperature.unit },
});

type Row = readonly [label: string, text: string];

const limitLines = (limits: Limits, width: number): readonly string[] => rowLines(rowsOf(limits), width);

/** Only what differs from the lawful minimum. */
function differenceLines(limits: Limits, lawful: Limits, width: number): readonly string[] {
  const same = new Map(rowsOf(lawful));
  return rowLines(
    rowsOf(limits).filter(([label, text]) => same.get(label) !== text),
    width,
  );
}

const sizeLines = (bySize: Requirement['alternatives'], width: number): readonly string[] =>
  bySize.flatMap(({ given, limits: { air } }) => labelled(`  ${given}`, air ? sayAir(air) : '', width, 44));

const rowLines = (rows: readonly Row[], width: number): readonly string[] =>
  rows.flatMap(([label, text]) => labelled(`  ${label}`, text, width, 20));

function rowsOf({ wcm, strength, air, airAtMost, scm, chloride, curing, cementitious }: Limits): readonly Row[] {
  return [
    ['w/cm', wcm ? `at most ${inSystem(wcm.value, 'both')}` : 'no limit'],
    ['Strength', strength ? `at least ${bothUnits(strength.value.inchPound)} at 28 days` : 'no limit'],
    ['Air', air ? sayAir(air) : 'none required'],
    ...(airAtMost ? [['', `no entrainer, at most ${airAtMost.value} percent in all`] as const] : []),
    ...(scm.length === 0 ? [] : [['Cementitious', sayCaps(scm)] as const]),
    ...cementitious.map(({ value }, index): Row => [scm.length === 0 && index === 0 ? 'Cementitious' : '', value]),
    ...(chloride ? [['Chloride', `at most ${chloride.value} percent of ${chloride.of}`] as const] : []),
    ...(curing ? [['Curing', sayCuring(curing)] as const] : []),
  ];
}

function sayAir({ target, low, high, reducedTarget, byRange }: AirBand): string {
  const band = `${low} to ${high} percent`;
  if (byRange) return band;
  const reduced = reducedTarget === undefined ? '' : `; a target of ${reducedTarget} percent is permitted`;
  return `${target} percent, as delivered ${band}${reduced}`;
}

const sayCaps = (caps: readonly ScmCap[]): string =>
  `at most ${caps.map(({ material, max }) => `${material} ${max}`).join(', ')} percent of cementitious material`;

const sayCuring = ({ days, highEarlyDays, temperature }: NonNullable<Limits['curing']>): string =>
  `${days} days at ${bothUnits(temperature)} or above; ${highEarlyDays} days for high-early-strength concrete`;
