/** Air content: percent of concrete volume, wherever "air" owns the percentage. */
import { bottom, property, top } from './property.ts';

/** No concrete holds more; a larger percentage near "air" is a density or a humidity. */
const mostAir = 15;

export const airContent = property({
  kind: 'air-content',
  meaning: 'air',
  dimension: 'share',
  plausible: (value) => top(value) <= mostAir && 0 <= bottom(value),
  // "6% ± 1.5%" in a mixture row without heads stands beside its strength.
  byPlace: (value, { block, sentenceValues }) =>
    block.kind === 'row' && value.measure.plus !== undefined && top(value) <= mostAir && sentenceValues.length === 1,
});
