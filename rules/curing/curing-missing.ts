/** An exterior slab is placed and finished, and nothing requires that it be cured. */

import { bothUnits } from '../formulas/unit-twins.ts';
import { absence } from '../kinds/absence.ts';
import { curingAsked, curingWays, daysAsked } from '../kinds/curing-plan.ts';
import { clauses } from '../tables/clauses.ts';

export default absence({
  title: 'Nothing requires curing',
  severity: 'must',
  reason:
    'For scaling the top few millimetres are the whole slab; uncured, they lose their water within hours and stay weak and open.',
  citations: clauses.curing,
  clause: {
    inchPound:
      'Cure exterior flatwork for at least 7 days counted at 50 °F or above, starting as soon as the broom texture holds and no free water shows, under burlap kept wet, impervious sheet, or ASTM C309 compound at 200 ft2/gal or richer. In cold weather hold thin slabs at 55 °F or above for the protection period of ACI 306.1 and keep them from freezing until 3500 psi.',
    metric:
      'Cure exterior flatwork for at least 7 days counted at 10 °C or above, starting as soon as the broom texture holds and no free water shows, under burlap kept wet, impervious sheet, or ASTM C309 compound at 5 m2/L or richer. In cold weather hold thin slabs at 13 °C or above for the protection period of ACI 306.1 and keep them from freezing until 24 MPa.',
  },
  // With no curing at all its parts are not missing one by one.
  outranks: [
    'curing-duration-missing',
    'curing-method-missing',
    'curing-start-missing',
    'curing-temperature-missing',
    'curing-compound-standard-missing',
    'curing-compound-rate-missing',
    'sheet-cure-standard-missing',
    'curing-longer-for-scm-missing',
  ],

  when: (view) =>
    view.isExposed &&
    view.isFlatwork &&
    !view.has('precast') &&
    (view.hasArticle('finishing', 'placing') || view.says('finish')),
  met: (view) => curingWays(view).length > 0,
  duty: 'curing',
  asks: 'clause',
  belongs: ['curing', 'finishing', 'placing'],
  required: (view) => `${daysAsked(view)} days at ${bothUnits(curingAsked(view).temperature)} or above`,
  message: ({ elements, where, views: [view] }) =>
    `Nothing requires curing of ${elements} in ${where}; ${daysAsked(view)} days is asked`,

  examples: {
    flagged: {
      'broomed, and the forms removed': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
     ^^^^^^^^^ Nothing requires curing of shelter walks in 3.04; 7 days is asked
A. Shelter walks, Exposure Class F3: broom across the path of travel. Remove forms the next day.
`,
      'a submittal is no curing': `
SECTION 32 13 13 - CONCRETE PAVING
PART 1 - GENERAL
1.05 SUBMITTALS
A. Submit the curing method for the bus apron.
PART 3 - EXECUTION
3.04 FINISHING
     ^^^^^^^^^ Nothing requires curing of bus apron
A. Bus apron, Exposure Class F3: broom finish.
`,
      'protection from traffic is no curing': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
     ^^^^^^^^^ Nothing requires curing
A. Shelter walks, Exposure Class F3: broom finish. Keep traffic off finished walks for 7 days.
`,
    },
    clean: {
      'a cited specification speaks': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Shelter walks: broom finish. Cure in accordance with ACI 308.1.
`,
      'another section cures': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Bus apron: broom finish.
3.05 CURING
A. Cure the bus apron as specified in Section 03 39 00.
`,
      'cured for a week': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Shelter walks: broom finish. Moist-cure for 7 days, beginning right after brooming.
`,
      'an interior floor': `
SECTION 03 35 00 - FLOOR FINISHING
PART 3 - EXECUTION
3.03 FINISHING
A. Ticket-hall floor, interior: trowel to a hard finish.
`,
    },
  },
});
