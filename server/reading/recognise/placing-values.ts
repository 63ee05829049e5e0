/** Values about placing and the site: slump, slope, coverage, evaporation and the concrete's own temperature. */
import { convert, type Unit } from '../../../rules/model/quantity.ts';
import { property, top } from './property.ts';

export const slump = property({
  kind: 'slump',
  meaning: 'slump',
  dimension: 'length',
  plausible: (value) => convert(top(value), value.measure.unit as Unit, 'mm') <= 300,
});
export const slope = property({
  kind: 'slope',
  meaning: 'slope',
  dimension: 'share',
  plausible: (value) => top(value) <= 15,
});
export const slopeByLength = property({ kind: 'slope', meaning: 'slope', dimension: 'slope' });
export const coverage = property({ kind: 'coverage', meaning: 'coverage', dimension: 'coverage', byPlace: () => true });
export const evaporation = property({
  kind: 'evaporation',
  meaning: 'evaporation',
  dimension: 'evaporation',
  byPlace: () => true,
});
export const concreteTemperature = property({
  kind: 'concrete-temperature',
  meaning: 'concrete temperature',
  dimension: 'temperature',
});
