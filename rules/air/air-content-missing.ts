/** Concrete that freezes is given no air content. */
import { absence } from '../kinds/absence.ts';
import { needsAir, saidForSize } from '../kinds/air.ts';
import { specifiesMixture } from '../kinds/mixture.ts';
import type { View } from '../kinds/view.ts';
import { clauses } from '../tables/clauses.ts';

export default absence({
  title: 'No air content',
  severity: 'must',
  reason:
    'Without a system of fine air bubbles the water that freezes near the surface has nowhere to go; concrete without entrained air scales in its first salted winters.',
  citations: clauses.air,
  clause: {
    inchPound:
      'Provide total air of 6.0 percent, plus or minus 1.5 percentage points, in concrete with 3/4 in. nominal maximum aggregate [7.5 percent with 3/8 in., 5.5 percent with 1-1/2 in.], sampled where the truck discharges.',
    metric:
      'Provide total air of 6.0 percent, plus or minus 1.5 percentage points, in concrete with 19 mm nominal maximum aggregate [7.5 percent with 9.5 mm, 5.5 percent with 37.5 mm], sampled where the truck discharges.',
  },
  // The values of an air content that is not there are not missing one by one.
  outranks: [
    'air-tolerance-missing',
    'air-limit-one-sided',
    'air-not-tied-to-aggregate-size',
    'air-total-or-entrained-unclear',
    'vague-amount',
  ],

  when: (view) => needsAir(view) && specifiesMixture(view),
  met: (view) => view.says('air-content'),
  duty: 'air',
  asks: 'value',
  belongs: ['mixtures', 'materials', 'summary', 'quality'],
  required: saidForSize,
  message: ({ elements, where, views: [view] }) => {
    const lack = isAirEntrained(view)
      ? `Air for ${elements} in ${where} has no number`
      : `No air content for ${elements} in ${where}`;
    const asks = saidForSize(view);
    return asks ? `${lack}; ${asks} is asked` : lack;
  },
  detail: ([view]) =>
    saidForSize(view)
      ? undefined
      : 'The number depends on the aggregate: 6 percent total air with 3/4 in. (19 mm) stone.',

  examples: {
    flagged: {
      'strength and w/cm, no air': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
     ^^^^^^^^^^^^^^^^^ No air content for shelter walks in 2.01; 6 ± 1.5 percent with 3/4 in. aggregate is asked
A. Shelter walks are Exposure Class F3, plain concrete.
B. Concrete for shelter walks: f'c 4500 psi (31 MPa), w/cm not over 0.45, 3/4 in. (19 mm) nominal maximum aggregate.
`,
      'air-entrained, with no number anywhere': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
     ^^^^^^^^^^^^^^^^^ Air for bus apron in 2.01 has no number
A. Bus apron is Exposure Class F3.
B. Concrete for the bus apron shall be air-entrained.
`,
      'the admixture in the list of materials is not an air content': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 MATERIALS
A. Air-entraining admixture: ASTM C260.
2.02 CONCRETE MIXTURES
     ^^^^^^^^^^^^^^^^^ No air content for shelter walks in 2.02
A. Shelter walks are Exposure Class F3; f'c 4500 psi (31 MPa).
`,
    },
    clean: {
      'a target with its tolerance': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks are Exposure Class F3. Total air: 6.0 percent plus or minus 1.5 percent.
`,
      'the table of the code gives the number': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks are Exposure Class F3. Air content: in accordance with ACI 318 Table 19.3.3.1 for Class F3 and 3/4 in. aggregate.
`,
      'the mixture stands in another section that was not loaded': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. All concrete for shelter walks shall comply with Section 03 30 00.
`,
      'an interior floor wants no air': `
SECTION 03 30 00 - CAST-IN-PLACE CONCRETE
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Ticket-hall floor, interior, is Exposure Class F0: f'c 3500 psi (24 MPa), w/cm 0.50.
`,
    },
  },
});

const isAirEntrained = (view: View): boolean =>
  view.every('air-entrainment').some(({ force, act }) => force === 'require' && act.manner !== 'material');
