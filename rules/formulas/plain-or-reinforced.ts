/** Whether the steel of a slab is enough to call it reinforced, or so little that it counts as plain concrete. */
import { inUnit, type Quantity } from '../model/quantity.ts';
import type { Worked } from '../model/worked.ts';
import { minimumSteelRatio } from '../tables/reinforcement.ts';

export interface SlabSteel {
  readonly thickness: Quantity<'length'>;
  readonly spacing: Quantity<'length'>;
  /** Area of one bar, square inches. */
  readonly barArea: number;
}

const inchesPerFoot = 12;

/** A 5.5 in. slab with No. 4 bars at 24 in. has 0.10 in2/ft of the 0.119 that make it reinforced. */
export function plainOrReinforced({ thickness, spacing, barArea }: SlabSteel): Worked<'plain' | 'reinforced'> {
  const steel = (barArea * inchesPerFoot) / inUnit(spacing, 'in');
  const least = minimumSteelRatio.value * inchesPerFoot * inUnit(thickness, 'in');
  const value = steel < least ? 'plain' : 'reinforced';
  return {
    value,
    steps: [
      { text: `steel: ${barArea} in2 every ${inUnit(spacing, 'in')} in. = ${steel.toFixed(3)} in2/ft` },
      {
        text: `least: ${minimumSteelRatio.value} of the gross area = ${least.toFixed(3)} in2/ft`,
        origin: minimumSteelRatio.origin,
      },
      { text: `the slab counts as ${value} concrete` },
    ],
  };
}
