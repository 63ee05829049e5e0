/** The text finishes an exterior slab and does not forbid water on its surface. */
import { absence } from '../kinds/absence.ts';
import { protecting, unitless } from '../kinds/define.ts';
import type { View } from '../kinds/view.ts';
import { clauses, grounds } from '../tables/clauses.ts';

export default absence({
  title: 'Nothing forbids water on the fresh surface',
  severity: 'should',
  reason:
    'Water worked into the skin is the commonest single cause of scaling: the w/cm of the top soars, its air is knocked out, and a weak 1/8 in. (3 mm) peels.',
  citations: protecting(clauses['w-cm'], grounds.finishingWater, grounds.scalingReview, grounds.floorGuide),
  clause: unitless(
    'Do not add water to the surface, from hose, brush, bucket or broom, and do not work in rain, bleed water, fog droplets or evaporation retarder. After bull-floating wait until bleed water and sheen have gone. Finish with the fewest passes: strike off, bull-float, edge, broom. Fogging into the air above the slab and a film of evaporation retarder between operations are permitted if nothing is finished in.',
  ),
  outranks: ['bleed-water-not-addressed', 'over-finishing-not-limited'],

  when: (view) => view.isExposed && view.isFinishedByHand && (view.hasArticle('finishing') || view.says('finish')),
  // What is allowed in so many words has a finding of its own and needs no second one that it is not forbidden.
  met: (view) => view.every('surface-water').some(({ force, act }) => force !== 'state' && act.object === 'surface'),
  duty: 'surface-water',
  asks: 'clause',
  belongs: ['finishing', 'placing', 'quality'],
  message: ({ elements, where }) =>
    `Nothing in ${where} forbids water on the surface of ${elements} while it is finished`,
  lines: [
    { text: 'when bleeding is over and finishing may go on', silent: (view) => !view.says('bleed-water') },
    { text: 'a limit on the passes', silent: (view) => !limitsPasses(view) },
  ],

  examples: {
    flagged: {
      'a sequence and no ban': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
     ^^^^^^^^^ forbids water on the surface of shelter walks
A. Shelter walks, Exposure Class F3: screed, bull-float, and broom.
`,
      'a texture free of marks': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
     ^^^^^^^^^ forbids water on the surface of bus apron
A. Bus apron, Exposure Class F3: finish to a uniform texture free of marks.
`,
      'overworking is another matter': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
     ^^^^^^^^^ forbids water on the surface
A. Plaza slabs, exterior: broom finish. Do not overwork the surface.
`,
      'water on the subgrade is another matter': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.01 PREPARATION
A. Do not add water to the subgrade of shelter walks after rolling.
3.04 FINISHING
     ^^^^^^^^^ forbids water on the surface
A. Shelter walks: broom finish.
`,
    },
    clean: {
      'the ban in one sentence': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Shelter walks: broom finish. Do not apply water to the surface during finishing.
`,
      'a bare ban under the heading of a decorative finish': `
SECTION 32 13 16 - DECORATIVE CONCRETE PAVING
PART 3 - EXECUTION
3.04 EXPOSED AGGREGATE FINISH
A. Plaza slabs, exterior: expose the aggregate evenly. Never wet the slab surface.
`,
      'kept free of added water': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Shelter walks: broom finish. Keep the surface free of added water.
`,
      'an interior floor is trowelled': `
SECTION 03 35 00 - FLOOR FINISHING
PART 3 - EXECUTION
3.03 FINISHING
A. Ticket-hall floor, interior: trowel to a hard finish.
`,
    },
  },
});

/** A sentence that limits working, or a sequence that leaves no room for more of it. */
const limitsPasses = (view: View): boolean =>
  view.every('over-finishing').some(({ force, act }) => force === 'ban' || act.verb === 'limit') ||
  view.every('finish').some(({ act }) => act.steps?.includes('bull-float') && act.steps.includes('broom'));
