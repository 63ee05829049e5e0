/** Cold weather: when it starts, how warm concrete is placed and kept, how strong it is before it may freeze. */
import { days, fahrenheit, hours, inches, type Quantity } from '../model/quantity.ts';
import { defineTable } from '../model/table.ts';
import { aci306guide, aci306specification, practice } from './documents.ts';
import { figure } from './figure.ts';
import { strengthPair } from './strength-pair.ts';

/** Air at or forecast to fall below this is cold weather. */
export const coldWeatherTrigger = figure(fahrenheit(40), aci306guide('1.1'));

/** The other definition in use: a daily mean under 40 °F (5 °C) for more than this many days in a row. */
export const coldWeatherMeanDays = figure(days(3), aci306specification('1.2'));

/** How far ahead the forecast is looked at. */
export const coldWeatherForecast = figure(hours(24), practice('forecast of cold weather'));

/** Base of a slab when concrete is placed on it: no frost, and this warm. */
export const baseTemperature = figure(fahrenheit(35), practice('temperature of the base'));

/** Strength that survives one freeze, with no water from outside. */
export const firstFreezeStrength = figure(strengthPair(500, 3.5), aci306guide('protection chapter'));

/** Strength before repeated freezing while wet; advice, no measured threshold. */
export const repeatedFreezeStrength = figure(strengthPair(3500, 24), aci306guide('protection chapter'));

/** Shortest protection from freezing, for every element. */
export const protectionPeriod = figure({ ordinary: days(3), accelerated: days(2) }, aci306specification('3.4.4'));

/** Concrete is placed at most this much warmer than its listed minimum: a difference, not a reading. */
export const warmestAboveMinimum = figure({ degF: 20, degC: 11 }, aci306guide('Table 5.1, note'));

export interface SectionSize {
  /** Least dimension of the section: from this, and up to the next row. */
  readonly from: Quantity<'length'>;
  /** Least temperature of the concrete as placed and kept. */
  readonly concrete: Quantity<'temperature'>;
  readonly metric: number;
}

export const placingTemperatures = defineTable<SectionSize>({
  origin: aci306guide('Table 5.1, line 1'),
  rows: [
    { from: inches(0), concrete: fahrenheit(55), metric: 13 },
    { from: inches(12), concrete: fahrenheit(50), metric: 10 },
    { from: inches(36), concrete: fahrenheit(45), metric: 7 },
    { from: inches(72), concrete: fahrenheit(40), metric: 5 },
  ],
});

export interface Cooling {
  readonly from: Quantity<'length'>;
  /** Greatest drop in the first 24 hours after protection: differences, not readings. */
  readonly degF: number;
  readonly degC: number;
}

export const coolingLimits = defineTable<Cooling>({
  origin: aci306guide('Table 5.1, line 6'),
  rows: [
    { from: inches(0), degF: 50, degC: 28 },
    { from: inches(12), degF: 40, degC: 22 },
    { from: inches(36), degF: 30, degC: 17, origin: aci306guide('Table 5.1, line 6', 'from memory') },
    { from: inches(72), degF: 20, degC: 11, origin: aci306guide('Table 5.1, line 6', 'from memory') },
  ],
});
