/** Concrete that freezes has no maximum water-cementitious ratio. */

import { absence } from '../kinds/absence.ts';
import { asked, classOf, standing } from '../kinds/asked.ts';
import { unitless } from '../kinds/define.ts';
import { saysNoNumber, specifiesMixture } from '../kinds/mixture.ts';
import { sayRatio } from '../kinds/say.ts';
import type { View } from '../kinds/view.ts';
import { clauses } from '../tables/clauses.ts';

export default absence({
  title: 'No maximum water-cementitious ratio',
  severity: 'should',
  reason:
    'The ratio decides how open the paste is and how fast it gains strength: how quickly brine gets in, and how soon the surface can resist freezing.',
  citations: clauses['w-cm'],
  clause: unitless(
    'Do not exceed a water-cementitious materials ratio of 0.45 by mass in flatwork on ground [0.40 in structurally reinforced members under salts], counting the water in admixtures and any water added at the site.',
  ),

  when: (view) =>
    view.isExposed &&
    limitOf(view) !== undefined &&
    specifiesMixture(view) &&
    !view.has('pervious') &&
    !view.has('lightweight'),
  met: (view) => view.says('w-cm'),
  duty: 'w-cm',
  asks: 'value',
  belongs: ['mixtures', 'materials', 'summary', 'quality'],
  required: (view) => `at most ${sayRatio(limitOf(view) ?? 0)}`,
  message: ({ elements, where, views: [view] }) =>
    `No maximum w/cm for ${elements} in ${where}; ${sayRatio(limitOf(view) ?? 0)} is asked (${classOf(view)})`,
  detail: ([view]) =>
    standing(
      view,
      asked(view, ({ wcm }) => wcm),
    ) || undefined,
  level: (views) => (views.every(saysNoNumber) ? 'must' : undefined),

  examples: {
    flagged: {
      'strength and air, no ratio': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
     ^^^^^^^^^^^^^^^^^ No maximum w/cm for shelter walks in 2.01; 0.45 is asked (Class F3)
A. Shelter walks are Exposure Class F3, plain concrete: f'c 4500 psi (31 MPa) at 28 days, total air 6% ± 1.5%.
`,
      'a wish for little water, and no number at all': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
     ^^^^^^^^^^^^^^^^^ must: No maximum w/cm for bus apron
A. Bus apron is Exposure Class F3. Use the lowest practical water content.
`,
      'sacks per yard are no ratio': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
     ^^^^^^^^^^^^^^^^^ No maximum w/cm
A. Curbs are Exposure Class F3: six sacks of cement per cu yd (335 kg per cu m), f'c 4500 psi (31 MPa).
`,
    },
    clean: {
      'the ratio is given': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks are Exposure Class F3: maximum w/cm 0.45.
`,
      'gallons per sack are a ratio': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks are Exposure Class F3: water not over 5 gallons per sack of cement.
`,
      'an interior floor is proportioned for its finish': `
SECTION 03 30 00 - CAST-IN-PLACE CONCRETE
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Ticket-hall floor, interior, Exposure Class F0: f'c 3500 psi (24 MPa); proportion for a trowel finish.
`,
      'lightweight concrete is held to its strength': `
SECTION 03 30 00 - CAST-IN-PLACE CONCRETE
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Lightweight concrete for the exterior bridge deck, Exposure Class F3: f'c 5000 psi (35 MPa).
`,
    },
  },
});

/** The strictest ratio that any layer asks for. */
function limitOf(view: View): number | undefined {
  const limits = asked(view, ({ wcm }) => wcm?.value.amount).map(({ value }) => value);
  return limits.length > 0 ? Math.min(...limits) : undefined;
}
