/** The air that an element needs: whether at all, and how a requirement of it is said. */
import { sayInches } from '../formulas/unit-twins.ts';
import { inUnit } from '../model/quantity.ts';
import type { AirBand } from '../model/requirement.ts';
import { exposureClasses } from '../tables/exposure.ts';
import { asked } from './asked.ts';
import { sayTarget } from './say.ts';
import type { View } from './view.ts';

/** Does it freeze in a class that entrained air protects? Pervious concrete has voids enough, EN class XF1 asks for none. */
export function needsAir(view: View): boolean {
  if (!view.isExposed || view.has('pervious')) return false;
  return bandOf(view) !== undefined || isOfAnotherCode(view.freezeClass);
}

/** The most binding band that the code in force sets. */
export const bandOf = (view: View): AirBand | undefined => asked(view, ({ air }) => air)[0]?.value;

/** "6 ± 1.5 percent with 3/4 in. aggregate"; undefined where the size that decides is not known. */
export function saidForSize(view: View): string | undefined {
  const band = bandOf(view);
  const size = view.requirement?.aggregate;
  if (!band || (!size && !band.byRange)) return undefined;
  const stone = size && !band.byRange ? ` with ${sayInches(inUnit(size, 'in'))} in. aggregate` : '';
  return `${sayTarget(band)}${stone}`;
}

/** A freezing class whose numbers are not held here still needs air. */
function isOfAnotherCode(freezeClass: string | undefined): boolean {
  if (freezeClass === undefined || freezeClass === 'XF1') return false;
  return exposureClasses['aci-318-19'].every(({ name }) => name !== freezeClass);
}
