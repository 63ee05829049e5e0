/** An exterior slab that freezes gets a hard trowel finish. */

import { protecting, unitless } from '../kinds/define.ts';
import { isTrowelledAtTheEnd, onlyLightly } from '../kinds/finish.ts';
import { practice } from '../kinds/practice.ts';
import { clauses, grounds } from '../tables/clauses.ts';

export default practice({
  title: 'Hard trowel finish outdoors',
  severity: 'must',
  reason:
    'Hard trowelling makes a thin dense skin, drives the air out of it and traps water beneath: the skin scales, and the walk is slippery.',
  citations: protecting(clauses.air, grounds.hardTrowel, grounds.parkingGuide, grounds.trowelBan),
  clause: unitless('Give exterior flatwork a broom finish after bull-floating. Do not steel-trowel or burnish it.'),
  outranks: ['finish-conflict', 'power-machine-on-exterior'],

  kind: 'finish',
  gate: 'freezing',
  harmful: isTrowelledAtTheEnd,
  // A slab with a finish of its own does not get the one for slabs in general.
  when: (view, fact) =>
    view.isExposed && view.isFlatwork && !view.has('pervious') && view.acts('finish').includes(fact),
  message: ({ where, elements, words }) => `${where} trowels ${elements} ("${words}"); give it a float or broom finish`,
  detail: () => 'Exterior air-entrained concrete is floated and broomed, never trowelled hard.',
  level: (fact) => (onlyLightly(fact) ? 'note' : undefined),

  examples: {
    flagged: {
      'a hard steel-trowel finish': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Plaza steps: hard steel-trowel finish.
                ^^^^^^^^^^^^^^^^^^^^^^^^ trowels plaza steps
`,
      'a dense, burnished surface': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Bus apron: trowel to a dense, burnished surface.
              ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ trowels bus apron
`,
      'a machine makes it smooth': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Driveway: power trowel smooth.
             ^^^^^^^^^^^^^^^^^^^ trowels driveway
`,
      'lightly, to close tears': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Plaza slabs, exterior: trowel lightly only to close tears.
                          ^^^^^^^^^^^^^^ note: trowels
`,
    },
    clean: {
      'a broom finish': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Bus apron: broom finish.
`,
      'it forbids': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Exterior slabs: do not steel-trowel.
`,
      'rather than trowel': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Exterior slabs: broom rather than trowel.
`,
      'an interior floor may be trowelled hard': `
SECTION 03 30 00 - CAST-IN-PLACE CONCRETE
PART 3 - EXECUTION
3.04 FINISHING
A. Ticket-hall floor, interior: hard-trowel finish.
B. Shelter walks: broom finish.
`,
      'a steel-shod strikeboard is no trowel': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.03 PLACING CONCRETE
A. Bus apron: strike off with a steel-shod strikeboard and broom.
`,
    },
  },
});
