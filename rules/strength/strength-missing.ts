/** Concrete that freezes has no specified strength. */

import { bothUnits } from '../formulas/unit-twins.ts';
import { absence } from '../kinds/absence.ts';
import { asked, classOf, standing } from '../kinds/asked.ts';
import { saysNoNumber, specifiesMixture } from '../kinds/mixture.ts';
import type { View } from '../kinds/view.ts';
import { clauses } from '../tables/clauses.ts';
import type { StrengthPair } from '../tables/strength-pair.ts';

export default absence({
  title: 'No specified strength',
  severity: 'should',
  reason:
    'Strength is the one number that is always tested; it stands for the w/cm and tells how early the surface can resist freezing.',
  citations: clauses.strength,
  clause: {
    inchPound:
      "Provide a specified compressive strength f'c of 4500 psi at 28 days for flatwork on ground under salts, and of 5000 psi for structurally reinforced members under salts.",
    metric:
      "Provide a specified compressive strength f'c of 31 MPa at 28 days for flatwork on ground under salts, and of 35 MPa for structurally reinforced members under salts.",
  },

  when: (view) => view.isExposed && strengthOf(view) !== undefined && specifiesMixture(view) && !view.has('pervious'),
  met: (view) => view.says('strength'),
  duty: 'strength',
  asks: 'value',
  belongs: ['mixtures', 'materials', 'summary', 'quality'],
  required: (view) => sayStrength(view),
  message: ({ elements, where, views: [view] }) =>
    `No strength for ${elements} in ${where}; ${sayStrength(view)} is asked (${classOf(view)})`,
  detail: ([view]) =>
    standing(
      view,
      asked(view, ({ strength }) => strength).filter(({ by }) => by !== 'lawful'),
    ) || undefined,
  level: (views) => (views.every(saysNoNumber) ? 'must' : undefined),

  examples: {
    flagged: {
      'ratio and air, no strength': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
     ^^^^^^^^^^^^^^^^^ No strength for shelter walks in 2.01; 4500 psi (31 MPa) is asked (Class F3)
A. Shelter walks are Exposure Class F3, plain concrete: w/cm 0.45, total air 6% ± 1.5%.
`,
      'words instead of a number, and no other number': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
     ^^^^^^^^^^^^^^^^^ must: No strength for bus apron
A. Bus apron is Exposure Class F3. Use dense, durable concrete from a single plant.
`,
      'the strength of the floor is not that of the walks': `
SECTION 03 30 00 - CAST-IN-PLACE CONCRETE
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
     ^^^^^^^^^^^^^^^^^ No strength for shelter walks
A. Shelter walks are Exposure Class F3: w/cm 0.45.
B. Ticket-hall floor, interior: f'c 3500 psi (24 MPa).
`,
    },
    clean: {
      'a strength at 28 days': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks are Exposure Class F3: f'c 4500 psi (31 MPa) at 28 days.
`,
      'a flexural strength of paving counts': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Bus lanes are Exposure Class F3: flexural strength 600 psi (4.1 MPa) at 28 days, w/cm 0.45.
`,
      'the drawings give it': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Plaza steps are Exposure Class F3: strength as indicated on Drawings.
`,
      'an interior floor': `
SECTION 03 30 00 - CAST-IN-PLACE CONCRETE
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Ticket-hall floor, interior: w/cm 0.50.
`,
    },
  },
});

/** The highest strength that any layer asks for. */
function strengthOf(view: View): StrengthPair | undefined {
  const pairs = asked(view, ({ strength }) => strength?.value).map(({ value }) => value);
  return pairs.sort((a, b) => b.inchPound.amount - a.inchPound.amount)[0];
}

function sayStrength(view: View): string {
  const pair = strengthOf(view);
  return pair ? bothUnits(pair.inchPound) : 'a strength';
}
