/** More fly ash, slag or silica fume than a salted, hand-finished surface stands. */

import { isShareAbove } from '../formulas/comparison.ts';
import { classOf, headline, missed, severityOf, standing } from '../kinds/asked.ts';
import { unitless } from '../kinds/define.ts';
import { limit, type Shortfall } from '../kinds/limit.ts';
import { sayShare } from '../kinds/say.ts';
import type { View } from '../kinds/view.ts';
import type { ValueFact } from '../model/fact.ts';
import { highest, lowest } from '../model/measure.ts';
import { percent } from '../model/quantity.ts';
import type { Limits, ScmCap } from '../model/requirement.ts';
import { clauses } from '../tables/clauses.ts';

export default limit({
  title: 'Supplementary material over its cap',
  severity: 'must',
  reason:
    'Surfaces rich in fly ash or slag set and gain strength late and are finished too soon; silica fume bleeds little and crusts. Over its cap each has scaled more under salts when finished by hand.',
  citations: clauses.scm,
  clause: unitless(
    'In concrete of Class F3 limit fly ash and other pozzolans to 25 percent, slag cement to 50 percent and silica fume to 10 percent of all cementitious material by mass, counting what blended cement contains.',
  ),

  kind: 'scm',
  // Slipformed pavement is not finished by hand; agencies rule it.
  when: (view) => view.isExposed && !view.has('slipform') && !view.has('pervious'),
  short,
  message: ({ where, required, elements, view, fact }) =>
    `${capital(fact.of ?? 'it')} up to ${sayShare(most(fact) ?? 0)} in ${elements} (${where}) is over the cap of ${required} (${classOf(view)})`,

  examples: {
    flagged: {
      'fly ash in place of much cement': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks are Exposure Class F3. Replace 40 percent of the cement with fly ash.
                                                ^^^^^^^^^^ Fly ash up to 40 percent in shelter walks
`,
      'a range is read at its upper end': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Bus apron is Exposure Class F3. Slag cement: 50 to 65 percent of cementitious material.
                                                ^^^^^^^^^^^^^^^^ is over the cap of 50 percent (Class F3)
`,
      'silica fume': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks are Exposure Class F3. Silica fume: 12 percent of cementitious material.
                                                     ^^^^^^^^^^ over the cap of 10 percent
`,
    },
    clean: {
      'slag at its cap': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Bus apron is Exposure Class F3. Slag cement: 35 to 50 percent of cementitious material.
`,
      'mass footings are not salted': `
SECTION 03 30 00 - CAST-IN-PLACE CONCRETE
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Footings are Exposure Class F0. Fly ash in footings: 40 percent of cementitious material.
`,
      'fly ash at its cap': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks are Exposure Class F3. Fly ash: 25% maximum.
`,
      'Class F fly ash is no exposure class': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks are Exposure Class F3. Use Class F fly ash, not over 20 percent of cementitious material.
`,
    },
  },
});

/** What the text allows; where it sets only a floor, what it forces. */
const most = ({ value }: ValueFact): number | undefined => highest(value) ?? lowest(value);

function short(fact: ValueFact, view: View): Shortfall | undefined {
  const stated = fact.value.dimension === 'share' ? most(fact) : undefined;
  const material = materialOf(fact.of);
  if (stated === undefined || material === undefined) return undefined;
  const over = missed(
    view,
    (limits) => capOf(limits, material),
    (cap) => isShareAbove(stated, cap),
    (cap) => -cap,
  );
  const first = headline(view, over);
  if (!first) return undefined;
  return {
    required: sayShare(first.value),
    instead: percent(first.value),
    severity: severityOf(view, over),
    detail: standing(view, over) || undefined,
  };
}

const capOf = ({ scm }: Limits, material: ScmCap['material']): number | undefined =>
  scm.find((cap) => cap.material === material)?.max;

/** The cap on fly ash is one on every pozzolan; sums of several materials are another question. */
function materialOf(named: string | undefined): ScmCap['material'] | undefined {
  if (named === 'fly ash' || named === 'pozzolan') return 'fly ash';
  return named === 'slag cement' || named === 'silica fume' ? named : undefined;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
