/** What ACI 318 asks of a member with the given exposure classes: the strictest of its classes, plain concrete apart. */
import type { YesNo } from '../model/project.ts';
import type { Quantity } from '../model/quantity.ts';
import type { AirBand, ChlorideLimit, CuringMinimum, Limits, Sourced } from '../model/requirement.ts';
import type { Row } from '../model/table.ts';
import type { Step, Worked } from '../model/worked.ts';
import { binderRules, reactivityEvidence, scmCaps } from '../tables/cementitious.ts';
import { chlorideMaxima } from '../tables/chloride.ts';
import { curingMinimum } from '../tables/curing.ts';
import { type AciEdition, type ExposureClass, exposureClasses } from '../tables/exposure.ts';
import { type MixtureLimit, mixtureLimits, plainConcreteInF3 } from '../tables/mixture-limits.ts';
import { type FreezingClass, requiredAir } from './required-air.ts';
import { bothUnits, say } from './unit-twins.ts';

/** What is known of the member and its mixture. */
export interface Situation {
  readonly edition: AciEdition;
  readonly classes: readonly string[];
  readonly reinforced: YesNo;
  readonly prestressed: 'yes' | 'no';
  readonly aggregate?: Quantity<'length'>;
  /** Specified f'c. */
  readonly strength?: Quantity<'stress'>;
}

export function aciLimits(situation: Situation): Worked<Limits> {
  const classes = knownClasses(situation);
  const mixture = mixtureOf(situation, classes);
  const air = airOf({ ...situation, strength: situation.strength ?? mixture.value.strength?.value.inchPound }, classes);
  const scm = classes.some(({ name }) => name === 'F3') ? scmCaps[situation.edition] : [];
  const chloride = chlorideOf(situation, classes);
  const curing = curingMinimum[situation.edition];
  const cementitious = textRules(situation.edition, classes);
  return {
    value: { ...mixture.value, air: air?.value, scm, chloride, curing, cementitious },
    steps: [
      ...mixture.steps,
      ...(air?.steps ?? []),
      ...scmSteps(scm),
      ...(chloride ? [chlorideStep(chloride)] : []),
      ...cementitious.map(({ value, origin }) => ({ text: value, origin })),
      curingStep(curing),
    ],
  };
}

/** The classes of the list that the edition has, in its own order. */
export function knownClasses({
  edition,
  classes,
}: Pick<Situation, 'edition' | 'classes'>): readonly Row<ExposureClass>[] {
  return exposureClasses[edition].filter(({ name }) => classes.includes(name));
}

/** The most severe freezing class of the list; undefined where none is given. */
export function freezingClass(classes: readonly ExposureClass[]): ExposureClass | undefined {
  return classes.findLast(({ category }) => category === 'F');
}

/** Undefined where nothing freezes. */
export function airOf(situation: Situation, classes: readonly ExposureClass[]): Worked<AirBand> | undefined {
  const freezing = freezingClass(classes);
  if (!freezing || freezing.level === 0) return undefined;
  return requiredAir({ ...situation, class: freezing.name as FreezingClass });
}

export function scmSteps(caps: Limits['scm']): readonly Step[] {
  const [first] = caps;
  if (!first) return [];
  const text = caps.map(({ material, max }) => `${material} ${max}`).join(', ');
  return [{ text: `Class F3, percent of cementitious mass at most: ${text}`, origin: first.origin }];
}

/** w/cm is the least, f'c the greatest over the classes; a class of level 0 brings only its strength. */
function mixtureOf(situation: Situation, classes: readonly ExposureClass[]): Worked<Pick<Limits, 'wcm' | 'strength'>> {
  const rows = classes.map((each) => rowFor(situation, each));
  const wcm = strictest(rows, ({ wcm }) => wcm && -wcm.amount);
  const strength = strictest(rows, ({ strength }) => strength.inchPound.amount);
  return {
    value: {
      ...(wcm?.wcm && { wcm: { value: wcm.wcm, origin: wcm.origin } }),
      ...(strength && { strength: { value: strength.strength, origin: strength.origin } }),
    },
    steps: [...rows.map((row) => rowStep(row, situation)), ...(1 < rows.length ? [governing(wcm, strength)] : [])],
  };
}

/** Plain concrete in F3 has a row of its own; C2 beside it asks for the pair of reinforced concrete by itself. */
function rowFor(situation: Situation, { name }: ExposureClass): Row<MixtureLimit> {
  const row = mixtureLimits[situation.edition].find((each) => each.class === name) as Row<MixtureLimit>;
  return name === 'F3' && isPlain(situation) ? plainConcreteInF3[situation.edition] : row;
}

/** C classes are about embedded steel: they are not put on plain slabs on ground. */
export function onGround(situation: Situation): Situation {
  if (!isPlain(situation)) return situation;
  const corrosion = new Set(exposureClasses[situation.edition].filter(isCorrosion).map(({ name }) => name));
  return { ...situation, classes: situation.classes.filter((name) => !corrosion.has(name)) };
}

const isCorrosion = ({ category }: ExposureClass): boolean => category === 'C';

/** Concrete is plain until the text says that it has at least the minimum steel. */
const isPlain = ({ reinforced, prestressed }: Situation): boolean => reinforced !== 'yes' && prestressed === 'no';

function strictest(
  rows: readonly Row<MixtureLimit>[],
  severity: (row: MixtureLimit) => number | undefined,
): Row<MixtureLimit> | undefined {
  const asking = rows.filter((row) => severity(row) !== undefined);
  const most = Math.max(...asking.map((row) => severity(row) as number));
  return asking.find((row) => severity(row) === most);
}

function rowStep(row: Row<MixtureLimit>, situation: Situation): Step {
  const kind = row.class !== 'F3' ? '' : isPlain(situation) ? ', plain concrete' : ', reinforced';
  const wcm = row.wcm ? `w/cm ${say(row.wcm)}` : 'no limit on w/cm';
  return { text: `Class ${row.class}${kind}: ${wcm}, f'c ${bothUnits(row.strength.inchPound)}`, origin: row.origin };
}

function governing(wcm: MixtureLimit | undefined, strength: MixtureLimit | undefined): Step {
  const ratio = wcm?.wcm ? `w/cm at most ${say(wcm.wcm)}` : 'no limit on w/cm';
  const least = strength ? `, f'c at least ${bothUnits(strength.strength.inchPound)}` : '';
  return { text: `strictest of the classes: ${ratio}${least}` };
}

/** The limit of the C class; prestressed concrete has one limit in every class, plain concrete none. */
function chlorideOf(situation: Situation, classes: readonly ExposureClass[]): ChlorideLimit | undefined {
  const { edition, reinforced, prestressed } = situation;
  if (reinforced === 'no' && prestressed === 'no') return undefined;
  const table = chlorideMaxima[edition];
  const own = ofClass(
    table,
    classes.findLast(({ category }) => category === 'C'),
  );
  const row = own ?? (prestressed === 'yes' ? table[0] : undefined);
  if (!row) return undefined;
  return { value: prestressed === 'yes' ? row.prestressed : row.nonprestressed, of: row.of, origin: row.origin };
}

const ofClass = <R extends { readonly class: string }>(table: readonly R[], own?: ExposureClass): R | undefined =>
  table.find((each) => each.class === own?.name);

const chlorideStep = ({ value, of, origin }: ChlorideLimit): Step => ({
  text: `water-soluble chloride at most ${value} percent of ${of}`,
  origin,
});

/** Cement for the worst sulfate class; evidence on the aggregates in the wet classes of 318-19. */
function textRules(edition: AciEdition, classes: readonly ExposureClass[]): readonly Sourced<string>[] {
  const binder = ofClass(
    binderRules[edition],
    classes.findLast(({ category }) => category === 'S'),
  );
  const isWet = edition === 'aci-318-19' && classes.some(({ category, level }) => category === 'W' && 0 < level);
  return [
    ...(binder ? [{ value: `Class ${binder.class}: ${binder.text}`, origin: binder.origin }] : []),
    ...(isWet ? [reactivityEvidence] : []),
  ];
}

const curingStep = ({ days, highEarlyDays, temperature, origin }: CuringMinimum): Step => ({
  text: `curing at least ${days} days at ${bothUnits(temperature)} or above, ${highEarlyDays} days for high-early-strength concrete`,
  origin,
});
