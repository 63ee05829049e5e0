/** Curing is required, and nothing says for how long. */
import { absence } from '../kinds/absence.ts';
import { curingWays, daysAsked, type Way } from '../kinds/curing-plan.ts';
import type { View } from '../kinds/view.ts';
import { clauses } from '../tables/clauses.ts';

export default absence({
  title: 'Curing without a length of time',
  severity: 'must',
  reason: 'A method without a period ends when the truck leaves; the surface dries before it is dense.',
  citations: clauses.curing,
  clause: {
    inchPound:
      'Cure continuously for 7 days counted at 50 °F or above [3 days with high-early-strength concrete], and go on until field-cured cylinders reach 70 percent of the specified strength.',
    metric:
      'Cure continuously for 7 days counted at 10 °C or above [3 days with high-early-strength concrete], and go on until field-cured cylinders reach 70 percent of the specified strength.',
  },
  outranks: ['vague-amount'],

  when: (view) => view.isExposed && view.isFlatwork && curingWays(view).length > 0,
  met: (view) => endlessWays(view).length === 0,
  duty: 'curing',
  asks: 'clause',
  lackedBy: (view) => endlessWays(view)[0]?.statement,
  belongs: ['curing', 'finishing', 'placing'],
  required: (view) => `${daysAsked(view)} days`,
  message: ({ elements, where, views: [view] }) =>
    `Curing of ${elements} in ${where} has no length of time; ${daysAsked(view)} days is asked`,
  detail: ([view]) =>
    endlessWays(view).length < curingWays(view).length
      ? 'The length given for one of the alternatives says nothing of the others.'
      : undefined,

  examples: {
    flagged: {
      'a compound and no time': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.06 CURING
A. Cure shelter walks, Exposure Class F3, with curing compound.
   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ Curing of shelter walks in 3.06.A has no length of time; 7 days is asked
`,
      'as long as necessary': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.06 CURING
A. Keep the bus apron, Exposure Class F3, moist as long as necessary.
   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ has no length of time
`,
      'adequate for the weather': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.06 CURING
A. Curing of plaza slabs, exterior, shall be adequate for the weather.
   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ has no length of time
`,
      'one alternative has a time, the other has none': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.06 CURING
A. Cure shelter walks, Exposure Class F3, by one of the following methods:
1. Keep burlap wet for 7 days.
2. Apply curing compound.
         ^^^^^^^^^^^^^^^ in 3.06.A.2 has no length of time
`,
    },
    clean: {
      'seven days of wet burlap': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.06 CURING
A. Cure shelter walks for 7 days under wet burlap.
`,
      'the length stands in another paragraph': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.06 CURING
A. Apply curing compound to exterior slabs.
B. Cure exterior slabs for not less than seven days.
`,
      'a strength ends it': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.06 CURING
A. Cure the bus apron under wet burlap until 70 percent of the specified strength is shown by maturity.
`,
      'the cited specification speaks': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.06 CURING
A. Cure shelter walks in accordance with ACI 308.1, with curing compound.
`,
      'the stem gives the time for all alternatives': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.06 CURING
A. Cure shelter walks for 7 days by one of the following methods:
1. Burlap kept wet.
2. Curing compound.
`,
    },
  },
});

/** Ways that give neither days nor a strength at which they end. */
const endlessWays = (view: View): readonly Way[] =>
  curingWays(view).filter(({ durations, ends }) => durations.length === 0 && ends.length === 0);
