/** Exposure classes and what they mean, for each edition of ACI 318, and which classes of any code reckon with salts. */
import { defineTable, type Row } from '../model/table.ts';
import { aci318of14, aci318of19, aci332of20, csaA23, en206 } from './documents.ts';

/** Editions of ACI 318 whose tables are held here. */
export type AciEdition = 'aci-318-19' | 'aci-318-14';

/** Freezing, sulfate, water, corrosion. */
export type ExposureCategory = 'F' | 'S' | 'W' | 'C';

export interface ExposureClass {
  readonly name: string;
  readonly category: ExposureCategory;
  /** 0 is no exposure; within a category a higher level is more severe. */
  readonly level: number;
  readonly meaning: string;
}

const freezing: readonly ExposureClass[] = [
  { name: 'F0', category: 'F', level: 0, meaning: 'does not freeze' },
  { name: 'F1', category: 'F', level: 1, meaning: 'freezes, seldom wet' },
  { name: 'F2', category: 'F', level: 2, meaning: 'freezes, often wet' },
  { name: 'F3', category: 'F', level: 3, meaning: 'freezes, often wet, and is salted' },
];

/** Water-soluble sulfate in soil, percent by mass; dissolved sulfate in water, ppm. */
const sulfate: readonly ExposureClass[] = [
  { name: 'S0', category: 'S', level: 0, meaning: 'sulfate under 0.10 percent in soil, under 150 ppm in water' },
  { name: 'S1', category: 'S', level: 1, meaning: 'sulfate 0.10 to 0.20 percent, 150 to 1500 ppm, or seawater' },
  { name: 'S2', category: 'S', level: 2, meaning: 'sulfate 0.20 to 2.00 percent, 1500 to 10 000 ppm' },
  { name: 'S3', category: 'S', level: 3, meaning: 'sulfate over 2.00 percent, over 10 000 ppm' },
];

const corrosion: readonly ExposureClass[] = [
  { name: 'C0', category: 'C', level: 0, meaning: 'dry, or kept from moisture' },
  { name: 'C1', category: 'C', level: 1, meaning: 'moist, no chlorides from outside' },
  { name: 'C2', category: 'C', level: 2, meaning: 'moist, with chlorides from de-icers, salt or the sea' },
];

/** The classes of each edition. W1 changed its meaning: in -14 it is the class that must be tight. */
export const exposureClasses: Readonly<Record<AciEdition, readonly Row<ExposureClass>[]>> = {
  'aci-318-19': defineTable<ExposureClass>({
    origin: aci318of19('Table 19.3.1.1'),
    rows: [
      ...freezing,
      ...sulfate,
      { name: 'W0', category: 'W', level: 0, meaning: 'dry in service' },
      { name: 'W1', category: 'W', level: 1, meaning: 'wet, need not be tight' },
      { name: 'W2', category: 'W', level: 2, meaning: 'wet, must be tight' },
      ...corrosion,
    ],
  }),
  'aci-318-14': defineTable<ExposureClass>({
    origin: aci318of14('Table 19.3.1.1'),
    rows: [
      ...freezing,
      ...sulfate.map((row) => ({ ...row, origin: aci318of14('Table 19.3.1.1', 'from memory') })),
      { name: 'W0', category: 'W', level: 0, meaning: 'dry, or wet and need not be tight' },
      { name: 'W1', category: 'W', level: 1, meaning: 'wet, must be tight' },
      ...corrosion.map((row) => ({ ...row, origin: aci318of14('Table 19.3.1.1', 'from memory') })),
    ],
  }),
};

/** Systems of classes that look alike and mean different things. */
export type ExposureSystem = 'ACI 318' | 'ACI 332' | 'CSA A23.1' | 'EN 206';

export interface FreezeClass {
  readonly name: string;
  readonly system: ExposureSystem;
  /** Does the class reckon with de-icers? */
  readonly salts: 'yes' | 'no';
}

/** Every class that says the concrete freezes, in any system; the hyphen tells CSA C-2 from ACI C2. */
export const freezeClasses = defineTable<FreezeClass>({
  origin: aci318of19('Table 19.3.1.1'),
  rows: [
    { name: 'F1', system: 'ACI 318', salts: 'no' },
    { name: 'F2', system: 'ACI 318', salts: 'no' },
    { name: 'F3', system: 'ACI 318', salts: 'yes' },
    { name: 'RF1', system: 'ACI 332', salts: 'no', origin: aci332of20('exposure table') },
    { name: 'RF2', system: 'ACI 332', salts: 'no', origin: aci332of20('exposure table') },
    { name: 'RF3', system: 'ACI 332', salts: 'yes', origin: aci332of20('exposure table') },
    { name: 'RF4', system: 'ACI 332', salts: 'yes', origin: aci332of20('exposure table') },
    { name: 'XF1', system: 'EN 206', salts: 'no', origin: en206('Table 1') },
    { name: 'XF2', system: 'EN 206', salts: 'yes', origin: en206('Table 1') },
    { name: 'XF3', system: 'EN 206', salts: 'no', origin: en206('Table 1') },
    { name: 'XF4', system: 'EN 206', salts: 'yes', origin: en206('Table 1') },
    { name: 'C-XL', system: 'CSA A23.1', salts: 'yes', origin: csaA23('Table 1') },
    { name: 'C-1', system: 'CSA A23.1', salts: 'yes', origin: csaA23('Table 1') },
    { name: 'C-2', system: 'CSA A23.1', salts: 'yes', origin: csaA23('Table 1') },
    { name: 'F-1', system: 'CSA A23.1', salts: 'no', origin: csaA23('Table 1', 'from memory') },
    { name: 'F-2', system: 'CSA A23.1', salts: 'no', origin: csaA23('Table 1', 'from memory') },
  ],
});

/** The class a salted element should have: lying flat, structurally reinforced, or upright and only splashed. */
export interface SaltedClass {
  readonly system: ExposureSystem;
  readonly flat: string;
  readonly reinforced: string;
  readonly upright: string;
}

export const saltedClasses = defineTable<SaltedClass>({
  origin: aci318of19('Table 19.3.1.1'),
  rows: [
    { system: 'ACI 318', flat: 'F3', reinforced: 'F3', upright: 'F3' },
    { system: 'ACI 332', flat: 'RF3', reinforced: 'RF4', upright: 'RF3', origin: aci332of20('exposure table') },
    { system: 'CSA A23.1', flat: 'C-2', reinforced: 'C-1', upright: 'C-2', origin: csaA23('Table 1') },
    { system: 'EN 206', flat: 'XF4', reinforced: 'XF4', upright: 'XF2', origin: en206('Table 1') },
  ],
});
