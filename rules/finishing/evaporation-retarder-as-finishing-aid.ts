/** An evaporation retarder is worked in as if it were a finishing aid. */
import { protecting, unitless } from '../kinds/define.ts';
import { practice } from '../kinds/practice.ts';
import { clauses, grounds } from '../tables/clauses.ts';

export default practice({
  title: 'Evaporation retarder as a finishing aid',
  severity: 'must',
  reason: 'A retarder is about nine parts water; worked in it acts as added water, and its film is gone.',
  citations: protecting(clauses['w-cm'], grounds.retarder, grounds.commonPractice),
  clause: unitless(
    'Use evaporation retarder between screeding and floating and between later operations. Do not use it as a finishing aid, and do not work it into the surface.',
  ),
  outranks: ['finishing-aid-allowed'],

  kind: 'evaporation-retarder',
  gate: 'any',
  harmful: ({ act }) => act.manner === 'finishing aid',
  when: (view) => view.isFlatwork,
  message: ({ where, elements }) =>
    `${where} uses evaporation retarder as a finishing aid on ${elements}; use it between operations only`,

  examples: {
    flagged: {
      'to ease trowelling': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Plaza steps are Exposure Class F3. Apply evaporation retarder as needed to ease final trowelling.
                                      ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ as a finishing aid on plaza steps
`,
      'to rewet tight areas': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Shelter walks, exterior: use monomolecular film to rewet and finish tight areas.
                            ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ as a finishing aid
`,
      'to help the broom': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Bus apron, exterior: spray evaporation retarder ahead of the broom to help it glide.
                        ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ as a finishing aid
`,
    },
    clean: {
      'between operations, not worked in': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Shelter walks: apply evaporation retarder after screeding; do not work it in.
`,
      'it forbids': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Bus apron: do not use evaporation retarder as a finishing aid.
`,
      'not to restore workability': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Plaza slabs, exterior: monomolecular film shall not be used to restore workability.
`,
    },
  },
});
