/** The text lets water be put on the fresh surface to ease finishing. */
import { protecting, unitless } from '../kinds/define.ts';
import { milderIndoors } from '../kinds/outdoors.ts';
import { practice } from '../kinds/practice.ts';
import { clauses, grounds } from '../tables/clauses.ts';

export default practice({
  title: 'Water is added to the surface',
  severity: 'must',
  reason:
    'Water worked into the top 1/8 in. (3 mm) can raise its w/cm by about 0.2, breaks the air bubbles there and leaves a skin that peels.',
  citations: protecting(clauses['w-cm'], grounds.finishingWater, grounds.scalingReview),
  clause: unitless(
    'Do not add water to the surface, from hose, brush, bucket or broom. Where the surface dries too fast use windbreaks, fogging into the air above the slab, or a film of evaporation retarder between operations, and finish none of it in.',
  ),

  kind: 'surface-water',
  gate: 'any',
  // A wetted broom has a card of its own.
  harmful: ({ act }) => act.object !== 'broom',
  when: (view) => view.isFlatwork,
  message: ({ where, elements, words }) => `${where} puts water on the fresh surface of ${elements} ("${words}")`,
  level: milderIndoors,

  examples: {
    flagged: {
      'sprinkled to help the finisher': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Shelter walks are Exposure Class F3. Sprinkle water lightly on the surface to assist finishing if it sets too fast.
                                        ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ on the fresh surface of shelter walks
`,
      'sprayed ahead of the float': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Bus apron, exterior: finishers may spray water on the slab ahead of the float so that the mortar closes.
                        ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ on the fresh surface of bus apron
`,
      'brushed along a slipped face': `
SECTION 32 16 13 - CURBS AND GUTTERS
PART 3 - EXECUTION
3.04 FINISHING
A. Slipformed curbs, Exposure Class F3: brush water along the slipped face to close small voids.
                                        ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ on the fresh surface
`,
      'indoors it is milder': `
SECTION 03 35 00 - FLOOR FINISHING
PART 3 - EXECUTION
3.03 FINISHING
A. Ticket-hall floor, interior: sprinkle water on the surface to aid trowelling.
                                ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ should: on the fresh surface
`,
    },
    clean: {
      'it forbids, it does not allow': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Shelter walks: do not sprinkle water on the surface.
`,
      'the subgrade may be wetted': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.01 PREPARATION
A. Shelter walks: wet the subgrade ahead of placing and leave no puddles.
`,
      'burlap is kept wet while curing': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.06 CURING
A. Bus apron: keep curing burlap wet for 7 days.
`,
      'fog into the air': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Bus apron: on dry, windy days fog the air above the slab; let no water stand on the surface.
`,
      'neither water nor cement': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Shelter walks: neither water nor dry cement shall be applied to the surface.
`,
    },
  },
});
