/** The w/cm that a limit in gallons of water per sack of cement amounts to. */
import { type Quantity, ratio } from '../model/quantity.ts';
import type { Worked } from '../model/worked.ts';
import { poundsPerGallon, poundsPerSack } from '../tables/water.ts';

/** 6 gallons a sack is 6 × 8.345 / 94 = 0.533. */
export function wcmOfGallonsPerSack(gallons: number): Worked<Quantity<'ratio'>> {
  const water = gallons * poundsPerGallon.value;
  const wcm = water / poundsPerSack.value;
  return {
    value: ratio(wcm),
    steps: [
      {
        text: `${gallons} gal of water × ${poundsPerGallon.value} lb/gal = ${water.toFixed(2)} lb`,
        origin: poundsPerGallon.origin,
      },
      {
        text: `${water.toFixed(2)} lb ÷ ${poundsPerSack.value} lb a sack = w/cm ${wcm.toFixed(3)}`,
        origin: poundsPerSack.origin,
      },
    ],
  };
}
