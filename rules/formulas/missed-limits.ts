/** Which limit of a requirement a stated value misses: what binds comes before what is only recommended. */
import type { Quantity } from '../model/quantity.ts';
import type { CuringMinimum, Limits, Requirement, ScmCap, Sourced } from '../model/requirement.ts';
import type { StrengthPair } from '../tables/strength-pair.ts';
import { isShareAbove, isShorter, isStrengthBelow, isWcmAbove } from './comparison.ts';

export type Standing = 'declared' | 'lawful' | 'recommended';

/** A limit that is missed, and whether the project, the law or only good practice sets it. */
export interface Missed<T> {
  readonly limit: T;
  readonly by: Standing;
}

export const missedWcm = (requirement: Requirement, stated: number): Missed<Sourced<Quantity<'ratio'>>> | undefined =>
  missed(
    requirement,
    ({ wcm }) => wcm,
    ({ value }) => isWcmAbove(stated, value.amount),
  );

export const missedStrength = (
  requirement: Requirement,
  stated: Quantity<'stress'>,
): Missed<Sourced<StrengthPair>> | undefined =>
  missed(
    requirement,
    ({ strength }) => strength,
    ({ value }) => isStrengthBelow(stated, value),
  );

/** `percent` is the upper end of what the text allows of the material, or of the sum. */
export const missedScm = (
  requirement: Requirement,
  material: ScmCap['material'],
  percent: number,
): Missed<ScmCap> | undefined =>
  missed(
    requirement,
    ({ scm }) => scm.find((cap) => cap.material === material),
    ({ max }) => isShareAbove(percent, max),
  );

export const missedChloride = (requirement: Requirement, percent: number): Missed<Sourced<number>> | undefined =>
  missed(
    requirement,
    ({ chloride }) => chloride,
    ({ value }) => isShareAbove(percent, value),
  );

export const missedCuring = (
  requirement: Requirement,
  days: number,
  mixture: 'ordinary' | 'high-early',
): Missed<CuringMinimum> | undefined =>
  missed(
    requirement,
    ({ curing }) => curing,
    (curing) => isShorter(days, mixture === 'ordinary' ? curing.days : curing.highEarlyDays),
  );

/** What the project declares is never milder than the law of a ground slab, so it is named first. */
const order: readonly Standing[] = ['declared', 'lawful', 'recommended'];

function missed<T>(
  requirement: Requirement,
  pick: (limits: Limits) => T | undefined,
  misses: (limit: T) => boolean,
): Missed<T> | undefined {
  for (const by of order) {
    const limits = requirement[by];
    const limit = limits && pick(limits);
    if (limit !== undefined && misses(limit)) return { limit, by };
  }
  return undefined;
}
