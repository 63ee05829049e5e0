/** Strength and air of exposed residential concrete: IRC Table R402.2. */
import { psi, type Quantity } from '../model/quantity.ts';
import { defineTable } from '../model/table.ts';
import { irc, practice } from './documents.ts';
import { figure } from './figure.ts';

export type Weathering = 'negligible' | 'moderate' | 'severe';

export interface ResidentialStrength {
  readonly weathering: Weathering;
  /** Porches, carport slabs, steps and garage floors exposed to the weather. */
  readonly flat: Quantity<'stress'>;
  /** Exterior walls and other upright work. */
  readonly upright: Quantity<'stress'>;
}

export const residentialStrengths = defineTable<ResidentialStrength>({
  origin: irc('Table R402.2'),
  rows: [
    { weathering: 'negligible', flat: psi(2500), upright: psi(2500) },
    { weathering: 'moderate', flat: psi(3000), upright: psi(3000) },
    { weathering: 'severe', flat: psi(3500), upright: psi(3000) },
  ],
});

/** Total air for moderate and severe weathering, percent, for every aggregate. */
export const residentialAir = figure({ low: 5, high: 7 }, irc('Table R402.2, footnote'));

/** A steel-trowelled garage floor may have less air if it is stronger. */
export const garageFloorAlternative = figure(
  { low: 3, strength: psi(4000) },
  irc('Table R402.2, footnote', 'from memory'),
);

/** The weathering that a freezing class of ACI 318 comes closest to. */
export const weatheringOfClass = defineTable<{ readonly class: string; readonly weathering: Weathering }>({
  origin: practice('weathering of a freezing class'),
  rows: [
    { class: 'F0', weathering: 'negligible' },
    { class: 'F1', weathering: 'moderate' },
    { class: 'F2', weathering: 'severe' },
    { class: 'F3', weathering: 'severe' },
  ],
});
