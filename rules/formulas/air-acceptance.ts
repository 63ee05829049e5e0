/** A stated air content held against the band that is required. */
import { highest, lowest, type Measure } from '../model/measure.ts';
import type { AirBand } from '../model/requirement.ts';
import type { Step, Worked } from '../model/worked.ts';
import { airTargetSlack } from '../tables/judgment.ts';
import { isAirBelow } from './comparison.ts';

export interface AirVerdict {
  /** `range`: the least air accepted is under the band; `target`: the target itself aims too low. */
  readonly tooLow?: 'range' | 'target';
  /** Least and most air that the text accepts; absent where it sets no such end. */
  readonly lowest?: number;
  readonly highest?: number;
  /** Least air that may be accepted, reckoned from the stated target where that target is lawful. */
  readonly floor: number;
}

/** Stricter than required is never too low. The reduced target counts where the band carries one. */
export function judgeAir(stated: Measure<'share'>, band: AirBand): Worked<AirVerdict> {
  const floor = floorFor(stated, band);
  const [least, most] = [lowest(stated), highest(stated)];
  const tooLow = isUnder(least, floor) ? 'range' : aimsLow(stated, band) ? 'target' : undefined;
  return {
    value: { tooLow, lowest: least, highest: most, floor },
    steps: [step(stated, band, least, floor)],
  };
}

const isUnder = (least: number | undefined, floor: number): boolean => least !== undefined && isAirBelow(least, floor);

const lowestTarget = ({ target, reducedTarget }: AirBand): number => reducedTarget ?? target;

/** The band moves down with a stated target as far as the reduction goes, and never up. */
function floorFor({ target }: Measure<'share'>, band: AirBand): number {
  const least = lowestTarget(band);
  const aim = target === undefined ? least : Math.min(Math.max(target, least), band.target);
  return aim - (band.target - band.low);
}

function aimsLow({ target }: Measure<'share'>, band: AirBand): boolean {
  if (target === undefined || band.byRange) return false;
  return isAirBelow(target, lowestTarget(band) - airTargetSlack.value);
}

function step({ asWritten }: Measure<'share'>, band: AirBand, least: number | undefined, floor: number): Step {
  const found = least === undefined ? 'sets no floor' : `accepts ${least} percent`;
  return { text: `"${asWritten}" ${found}; at least ${floor} percent is asked`, origin: band.origin };
}
