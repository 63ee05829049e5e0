/** The text keeps a slab wet until it freezes. */
import { protecting } from '../kinds/define.ts';
import { practice } from '../kinds/practice.ts';
import { clauses, grounds } from '../tables/clauses.ts';

export default practice({
  title: 'Wet curing into frost',
  severity: 'must',
  reason: 'Young concrete that is full of water when it freezes is damaged for good.',
  citations: protecting(clauses.curing, grounds.coldCuring, grounds.commonPractice),
  clause: {
    inchPound:
      'When freezing is forecast, stop adding water, cover at once with a vapor-tight sheet under insulation and let curing days run on at 50 °F or above. Keep the covers until 3500 psi, then uncover in steps and let the surface dry before it freezes.',
    metric:
      'When freezing is forecast, stop adding water, cover at once with a vapor-tight sheet under insulation and let curing days run on at 10 °C or above. Keep the covers until 24 MPa, then uncover in steps and let the surface dry before it freezes.',
  },

  kind: 'wet-curing-in-frost',
  gate: 'freezing',
  harmful: () => true,
  when: (view) => view.isExposed,
  message: ({ where, elements, words }) => `${where} keeps ${elements} wet into frost ("${words}")`,
  detail: () => 'When freezing is forecast stop adding water, cover the slab, and let curing go on in warmth.',

  examples: {
    flagged: {
      'saturated until the first freeze': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.06 CURING
A. Shelter walks, Exposure Class F3: keep burlap saturated until the first freeze.
                                     ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ keeps shelter walks wet into frost
`,
      'frosty nights included': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.06 CURING
A. Bus apron, Exposure Class F3: wet-cure at all temperatures, frosty nights included.
                                 ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ keeps bus apron wet into frost
`,
      'flooded on frosty nights': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.06 CURING
A. Plaza slabs, exterior: flood the slab at night in frosty weather.
                          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ wet into frost
`,
    },
    clean: {
      'wetting stops before frost': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.06 CURING
A. Shelter walks: keep burlap wet for 7 days. Stop wetting when air below 35 °F (2 °C) is forecast within 24 hours.
`,
      'insulated covers without water': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.06 CURING
A. Bus apron, from November on: insulated covers for 7 days, no added water.
`,
      'seven days of wetting are no order to wet in frost': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.06 CURING
A. Shelter walks: keep burlap wet for 7 days.
`,
    },
  },
});
