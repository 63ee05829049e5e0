/** All kinds of fact: each recogniser reads one statement; finishes read a passage, because their steps run over sentences. */
import type { Fact } from '../../../rules/model/fact.ts';
import type { Designations } from '../designations.ts';
import type { Statement } from '../statement.ts';
import { accelerator, airEntrainment } from './admixtures.ts';
import { aggregateSize } from './aggregate-size.ts';
import { airContent } from './air-content.ts';
import { bleedWater } from './bleed-water.ts';
import { cementContent, chloride, scm } from './cementitious.ts';
import { coldProtection, coldWeather } from './cold-weather.ts';
import { curing } from './curing.ts';
import { curingDuration, curingStrength, curingTemperature, drying } from './curing-values.ts';
import { deicers } from './deicers.ts';
import { dryCement, dryShake } from './dry-cement.ts';
import { evaporationRetarder, fogging } from './evaporation-retarder.ts';
import { exposureClasses, freezingWords } from './exposure-class.ts';
import { finishes } from './finish.ts';
import { overFinishing } from './over-finishing.ts';
import { concreteTemperature, coverage, evaporation, slope, slopeByLength, slump } from './placing-values.ts';
import { withConsequences, withVerdicts } from './refusals.ts';
import { sealers } from './sealers.ts';
import { siteWater } from './site-water.ts';
import { standards, tests } from './standards.ts';
import { strength } from './strength.ts';
import { surfaceWater } from './surface-water.ts';
import { choices, finishingTools, season, traits } from './traits.ts';
import { waterRatio } from './water-ratio.ts';
import { wetCuringInFrost } from './wet-curing-in-frost.ts';

/** A fact whose spans are relative to its article and carry no path yet. */
export type Recognised = Fact;

type Recogniser = (statement: Statement, designations: Designations) => Recognised[];

/** Things done that a text refuses by what it threatens: "… will be rejected". */
const practices: readonly Recogniser[] = [
  accelerator,
  surfaceWater,
  dryCement,
  dryShake,
  evaporationRetarder,
  siteWater,
];

const recognisers: readonly Recogniser[] = [
  airContent,
  airEntrainment,
  waterRatio,
  strength,
  aggregateSize,
  scm,
  chloride,
  cementContent,
  slump,
  slope,
  slopeByLength,
  coverage,
  evaporation,
  concreteTemperature,
  curingDuration,
  curingTemperature,
  curingStrength,
  drying,
  curing,
  wetCuringInFrost,
  coldWeather,
  coldProtection,
  deicers,
  sealers,
  bleedWater,
  overFinishing,
  fogging,
  exposureClasses,
  freezingWords,
  traits,
  finishingTools,
  choices,
  (statement, { found }) => standards(statement, found),
  (statement, { found }) => tests(statement, found),
  (statement, { found }) => season(statement, found),
];

export function recognise(statements: readonly Statement[], designations: Designations): Recognised[] {
  const judged = withVerdicts(statements);
  const refused = judged.map(withConsequences);
  const single = [
    ...judged.flatMap((each) => recognisers.flatMap((recogniser) => recogniser(each, designations))),
    ...refused.flatMap((each) => practices.flatMap((recogniser) => recogniser(each, designations))),
  ];
  return [...single, ...finishes(refused)].sort((a, b) => a.spans[0].start - b.spans[0].start);
}
