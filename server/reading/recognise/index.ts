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

const recognisers: readonly ((statement: Statement, designations: Designations) => Recognised[])[] = [
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
  accelerator,
  surfaceWater,
  bleedWater,
  dryCement,
  dryShake,
  overFinishing,
  evaporationRetarder,
  fogging,
  siteWater,
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
  const single = statements.flatMap((statement) =>
    recognisers.flatMap((recogniser) => recogniser(statement, designations)),
  );
  return [...single, ...finishes(statements)].sort((a, b) => a.spans[0].start - b.spans[0].start);
}
