/** What the kind of an element alone tells: how it lies, whether it carries the structure, which class it freezes in. */
import type { YesNo } from '../model/project.ts';
import type { ElementKind } from '../model/specification.ts';
import { exposureClasses, freezeClasses } from '../tables/exposure.ts';

/** Laid flat and finished on top; what "other" stands for is not known. */
export const isFlat = (kind: ElementKind): boolean => !isUpright(kind) && kind !== 'other';

const isUpright = (kind: ElementKind): boolean => kind === 'wall' || kind === 'footing';

/** Does the token say that the concrete freezes? */
export const isFreezeClass = (token: string): boolean => freezeClasses.some(({ name }) => name === token);

/** Sulfate, water and corrosion classes leave the question of freezing open; every other token answers it. */
export function answersFreezing(token: string): boolean {
  const known = exposureClasses['aci-318-19'].find(({ name }) => name === token);
  return known === undefined || known.category === 'F';
}

/** The class of ACI 318 that the evidence points to where the text declares none; a wall clear of snow is the mildest case. */
export function candidateClass(kind: ElementKind, salted: YesNo): 'F1' | 'F2' | 'F3' {
  if (salted === 'yes') return 'F3';
  if (isUpright(kind)) return 'F1';
  return salted === 'no' || kind === 'other' ? 'F2' : 'F3';
}

/** Walks, curbs and pads on ground carry no structure (ACI 318-19 1.4.8); walls, decks and footings do. */
export function loadBearing(kind: ElementKind): YesNo {
  if (isUpright(kind) || kind === 'deck') return 'yes';
  return kind === 'slab' || kind === 'concrete' || kind === 'other' ? 'unknown' : 'no';
}
