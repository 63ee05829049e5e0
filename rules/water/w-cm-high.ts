/** The water-cementitious ratio is above what the exposure of the element allows. */

import { isWcmAbove } from '../formulas/comparison.ts';
import { classOf, headline, missed, question, severityOf, standing } from '../kinds/asked.ts';
import { unitless } from '../kinds/define.ts';
import { limit, type Shortfall } from '../kinds/limit.ts';
import { sayRatio } from '../kinds/say.ts';
import type { View } from '../kinds/view.ts';
import type { ValueFact } from '../model/fact.ts';
import { highest } from '../model/measure.ts';
import { ratio } from '../model/quantity.ts';
import { clauses } from '../tables/clauses.ts';

export default limit({
  title: 'Water-cementitious ratio too high',
  severity: 'must',
  reason:
    'Above the limit the paste is open, gains strength late and bleeds more; the skin that the finisher makes of it is weak and thirsty.',
  citations: clauses['w-cm'],
  clause: unitless(
    'Limit the water-cementitious materials ratio of [shelter walks] to [0.45] by mass, counting the water in admixtures and any water added at the site.',
  ),

  kind: 'w-cm',
  when: (view) => view.isExposed && !view.has('pervious') && !view.has('lightweight'),
  short,
  message: ({ where, required, elements, view, fact }) =>
    `w/cm ${sayRatio(highest(fact.value) ?? 0)} for ${elements} in ${where} is above ${required} (${classOf(view)})`,

  examples: {
    flagged: {
      'a suspended deck is reinforced': `
SECTION 03 30 00 - CAST-IN-PLACE CONCRETE
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. The suspended deck over the bus tunnel is structurally reinforced and is Exposure Class F3.
B. Suspended deck: maximum w/cm 0.45.
                   ^^^^^^^^^^^^^^^^^ w/cm 0.45 for suspended deck in 2.01.B is above 0.40 (Class F3)
`,
      'a plain walk of a stated class': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks are Exposure Class F3, plain concrete: w/cm not over 0.50.
                                                        ^^^^^^^^^^^^^^^^^^ is above 0.45 (Class F3)
`,
      'a ground slab with no class is advised': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks on ground, salted in winter: maximum w/cm 0.50.
                                              ^^^^^^^^^^^^^^^^^ should: is above 0.45 (F3 by its exposure)
`,
    },
    clean: {
      'plain concrete on ground at 0.45': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks are Exposure Class F3, plain concrete: w/cm 0.45 maximum.
`,
      'wire mesh does not make it reinforced': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Curb ramps on ground, with wire mesh, are Exposure Class F3: w/cm 0.45 maximum.
`,
      'the wet mixture is for footings': `
SECTION 03 30 00 - CAST-IN-PLACE CONCRETE
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES

| Element | Exposure class | Maximum w/cm |
| --- | --- | --- |
| Footings | F0 | 0.60 |
| Shelter walks | F3 | 0.45 |
`,
      'a number of half an inch is no ratio': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks are Exposure Class F3: w/cm 0.45 maximum. Joint filler for shelter walks is 0.50 in. (13 mm) thick.
`,
    },
  },
});

function short(fact: ValueFact, view: View): Shortfall | undefined {
  const stated = highest(fact.value);
  if (stated === undefined || fact.value.dimension !== 'ratio') return undefined;
  const broken = missed(
    view,
    ({ wcm }) => wcm?.value.amount,
    (most) => isWcmAbove(stated, most),
    (most) => -most,
  );
  const first = headline(view, broken);
  if (!first) return undefined;
  return {
    required: sayRatio(first.value),
    instead: ratio(first.value),
    severity: severityOf(view, broken),
    detail: [standing(view, broken), question(view, ({ wcm }) => wcm && `w/cm at most ${sayRatio(wcm.value.amount)}`)]
      .filter(Boolean)
      .join(' '),
  };
}
