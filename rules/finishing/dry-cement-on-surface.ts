/** Dry cement is put on the wet surface. */
import { protecting, unitless } from '../kinds/define.ts';
import { milderIndoors } from '../kinds/outdoors.ts';
import { practice } from '../kinds/practice.ts';
import { clauses, grounds } from '../tables/clauses.ts';

export default practice({
  title: 'Dry cement on the surface',
  severity: 'must',
  reason: 'Cement dusted on wet concrete makes a rich skin that crazes and holds little air.',
  citations: protecting(clauses.air, grounds.floorGuide, grounds.commonPractice),
  clause: unitless('Do not apply dry cement, or a dry mixture of cement and sand, to dry the surface.'),

  kind: 'dry-cement',
  gate: 'any',
  harmful: () => true,
  when: (view) => view.isFlatwork,
  message: ({ where, elements, words }) =>
    `${where} puts dry cement on the surface of ${elements} ("${words}"); forbid it`,
  level: milderIndoors,

  examples: {
    flagged: {
      'dusted to take up water': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Shelter walks are Exposure Class F3. Dust the surface with dry cement to absorb excess water.
                                        ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ on the surface of shelter walks
`,
      'a thin coat to speed finishing': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Bus apron, exterior: a thin coat of dry cement and sand may be used to speed finishing.
                        ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ on the surface of bus apron
`,
      'blotted with dry mix': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Plaza slabs, exterior: blot wet areas with dry cement.
                          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ forbid it
`,
    },
    clean: {
      'it forbids': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Shelter walks: do not use dry cement to absorb bleed water.
`,
      'a squeegee instead': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Bus apron: remove bleed water by squeegee.
`,
      'a stabilised base': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.01 PREPARATION
A. Spread dry cement on the subbase of shelter walks and mix it in.
`,
    },
  },
});
