/** A slab is trowelled, and the broom only hides it. */
import { protecting, unitless } from '../kinds/define.ts';
import { isTrowelledThenTextured } from '../kinds/finish.ts';
import { practice } from '../kinds/practice.ts';
import { clauses, grounds } from '../tables/clauses.ts';

export default practice({
  title: 'Trowel before broom',
  severity: 'must',
  reason: '"Trowel and broom" is written by habit; the trowel has done its harm before the broom hides it.',
  citations: protecting(clauses.air, grounds.hardTrowel, grounds.trowelBan, grounds.commonPractice),
  clause: unitless('Broom immediately after floating. Do not trowel before brooming.'),
  outranks: ['hard-trowel-outdoors', 'finish-conflict'],

  kind: 'finish',
  gate: 'freezing',
  harmful: isTrowelledThenTextured,
  // A slab with a finish of its own does not get the one for slabs in general.
  when: (view, fact) =>
    view.isExposed && view.isFlatwork && !view.has('pervious') && view.acts('finish').includes(fact),
  message: ({ where, elements, words }) =>
    `${where} trowels ${elements} before brooming ("${words}"); float, then broom`,

  examples: {
    flagged: {
      'trowel to a plane, then broom': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Exterior walks: trowel to a smooth plane, then broom lightly.
                   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ trowels exterior walks before brooming
`,
      'one name for both': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Plaza steps: steel trowel and medium broom finish.
                ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ before brooming
`,
      'trowel and brush': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Curb ramps: trowel and brush finish.
               ^^^^^^^^^^^^^^^^^^^^^^^ before brooming
`,
    },
    clean: {
      'float, wait, broom': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Exterior walks: bull-float, wait for the sheen to leave, then pull a medium broom.
`,
      'an interior ramp': `
SECTION 03 35 00 - FLOOR FINISHING
PART 3 - EXECUTION
3.03 FINISHING
A. Interior floor ramps: steel-trowel once, then broom for slip resistance.
`,
      'it forbids': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Exterior walks: do not trowel before brooming.
`,
    },
  },
});
