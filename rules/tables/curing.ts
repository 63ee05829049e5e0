/** How long, how warm and how richly concrete is cured. */
import { fahrenheit, hours, percent, quantity } from '../model/quantity.ts';
import type { CuringMinimum } from '../model/requirement.ts';
import { aci318of14, aci318of19, astmC309, practice } from './documents.ts';
import type { AciEdition } from './exposure.ts';
import { figure } from './figure.ts';

const minimum = { days: 7, highEarlyDays: 3, temperature: fahrenheit(50) };

export const curingMinimum: Readonly<Record<AciEdition, CuringMinimum>> = {
  'aci-318-19': { ...minimum, origin: aci318of19('26.5.3.2(a), (b)') },
  'aci-318-14': { ...minimum, origin: aci318of14('26.5.3.2(a), (b)') },
};

/** Leanest rate of a curing compound: the rate at which its water loss is tested. */
export const compoundCoverage = figure(quantity(200, 'ft2/gal'), astmC309('water-loss test by ASTM C156'));

/** Final curing starts within this time of texturing. */
export const curingStart = figure(hours(2), practice('start of final curing'));

/** Share of f'c at which curing may end where strength decides. */
export const curingEnd = figure(percent(70), practice('end of curing by strength'));

/** More supplementary material than this, in concrete cooler than this, is cured this many days. */
export const slowMixtureCuring = figure(
  { flyAsh: 25, slag: 35, below: fahrenheit(60), days: 10 },
  practice('curing of slow mixtures'),
);
