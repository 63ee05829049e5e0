/** The list of all rules, one line each: the id is the file's name, the family its folder's. */

import airContentLow from './air/air-content-low.ts';
import airContentMissing from './air/air-content-missing.ts';
import airEntrainmentForbiddenOutdoors from './air/air-entrainment-forbidden-outdoors.ts';
import airEntrainmentOptional from './air/air-entrainment-optional.ts';
import airTestMethodMissing from './air/air-test-method-missing.ts';
import airToleranceMissing from './air/air-tolerance-missing.ts';
import scmOverCap from './cementitious/scm-over-cap.ts';
import calciumChlorideAllowed from './cold-weather/calcium-chloride-allowed.ts';
import coldWeatherClauseMissing from './cold-weather/cold-weather-clause-missing.ts';
import curingDurationMissing from './curing/curing-duration-missing.ts';
import curingMethodMissing from './curing/curing-method-missing.ts';
import curingMissing from './curing/curing-missing.ts';
import curingTooShort from './curing/curing-too-short.ts';
import wetCureIntoFreezing from './curing/wet-cure-into-freezing.ts';
import deicerHoldOffMissing from './deicers/deicer-hold-off-missing.ts';
import harmfulDeicerSpecified from './deicers/harmful-deicer-specified.ts';
import exposureClassMissing from './exposure/exposure-class-missing.ts';
import exposureTooMildForUse from './exposure/exposure-too-mild-for-use.ts';
import dryCementOnSurface from './finishing/dry-cement-on-surface.ts';
import evaporationRetarderAsFinishingAid from './finishing/evaporation-retarder-as-finishing-aid.ts';
import finishingOverBleedWater from './finishing/finishing-over-bleed-water.ts';
import hardTrowelOutdoors from './finishing/hard-trowel-outdoors.ts';
import surfaceWaterBanMissing from './finishing/surface-water-ban-missing.ts';
import trowelBeforeBroom from './finishing/trowel-before-broom.ts';
import waterAddedToSurface from './finishing/water-added-to-surface.ts';
import type { Rule } from './model/rule.ts';
import sealerInPlaceOfAir from './sealers/sealer-in-place-of-air.ts';
import strengthLow from './strength/strength-low.ts';
import strengthMissing from './strength/strength-missing.ts';
import siteWaterUncontrolled from './water/site-water-uncontrolled.ts';
import wCmHigh from './water/w-cm-high.ts';
import wCmMissing from './water/w-cm-missing.ts';

export const rules: readonly Rule[] = [
  { id: 'exposure-class-missing', family: 'exposure', ...exposureClassMissing },
  { id: 'exposure-too-mild-for-use', family: 'exposure', ...exposureTooMildForUse },
  { id: 'air-content-low', family: 'air', ...airContentLow },
  { id: 'air-content-missing', family: 'air', ...airContentMissing },
  { id: 'air-entrainment-forbidden-outdoors', family: 'air', ...airEntrainmentForbiddenOutdoors },
  { id: 'air-entrainment-optional', family: 'air', ...airEntrainmentOptional },
  { id: 'air-test-method-missing', family: 'air', ...airTestMethodMissing },
  { id: 'air-tolerance-missing', family: 'air', ...airToleranceMissing },
  { id: 'site-water-uncontrolled', family: 'water', ...siteWaterUncontrolled },
  { id: 'w-cm-high', family: 'water', ...wCmHigh },
  { id: 'w-cm-missing', family: 'water', ...wCmMissing },
  { id: 'strength-low', family: 'strength', ...strengthLow },
  { id: 'strength-missing', family: 'strength', ...strengthMissing },
  { id: 'scm-over-cap', family: 'cementitious', ...scmOverCap },
  { id: 'dry-cement-on-surface', family: 'finishing', ...dryCementOnSurface },
  { id: 'evaporation-retarder-as-finishing-aid', family: 'finishing', ...evaporationRetarderAsFinishingAid },
  { id: 'finishing-over-bleed-water', family: 'finishing', ...finishingOverBleedWater },
  { id: 'hard-trowel-outdoors', family: 'finishing', ...hardTrowelOutdoors },
  { id: 'surface-water-ban-missing', family: 'finishing', ...surfaceWaterBanMissing },
  { id: 'trowel-before-broom', family: 'finishing', ...trowelBeforeBroom },
  { id: 'water-added-to-surface', family: 'finishing', ...waterAddedToSurface },
  { id: 'curing-duration-missing', family: 'curing', ...curingDurationMissing },
  { id: 'curing-method-missing', family: 'curing', ...curingMethodMissing },
  { id: 'curing-missing', family: 'curing', ...curingMissing },
  { id: 'curing-too-short', family: 'curing', ...curingTooShort },
  { id: 'wet-cure-into-freezing', family: 'curing', ...wetCureIntoFreezing },
  { id: 'calcium-chloride-allowed', family: 'cold-weather', ...calciumChlorideAllowed },
  { id: 'cold-weather-clause-missing', family: 'cold-weather', ...coldWeatherClauseMissing },
  { id: 'deicer-hold-off-missing', family: 'deicers', ...deicerHoldOffMissing },
  { id: 'harmful-deicer-specified', family: 'deicers', ...harmfulDeicerSpecified },
  { id: 'sealer-in-place-of-air', family: 'sealers', ...sealerInPlaceOfAir },
];
