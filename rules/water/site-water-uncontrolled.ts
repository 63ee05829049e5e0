/** Water may be added at the site with nothing that holds it to the design water. */

import { protecting } from '../kinds/define.ts';
import { practice } from '../kinds/practice.ts';
import { clauses, grounds } from '../tables/clauses.ts';

export default practice({
  title: 'Water is added at the site without control',
  severity: 'must',
  reason:
    'Every gallon over the design water raises the w/cm by 0.01 to 0.02, and with it the bleeding and the weak top layer that scales.',
  citations: protecting(clauses['w-cm'], grounds.siteWater),
  clause: {
    inchPound:
      'Add water at the site once only, before discharge begins, up to the amount withheld from the approved mixture, and only if slump and air stay in range. Mix 30 revolutions at mixing speed, record the gallons on the ticket, and take samples after it.',
    metric:
      'Add water at the site once only, before discharge begins, up to the amount withheld from the approved mixture, and only if slump and air stay in range. Mix 30 revolutions at mixing speed, record the litres on the ticket, and take samples after it.',
  },
  outranks: ['slump-raised-with-water', 'site-water-silent'],

  kind: 'site-water',
  gate: 'freezing',
  harmful: ({ act }) => act.manner !== 'controlled',
  when: (view) => view.isExposed,
  message: ({ where, elements, words }) =>
    `${where} allows water at the site without limit for ${elements} ("${words}")`,
  detail: () => 'It neither holds the water to the w/cm of the mixture nor allows one addition only, before discharge.',

  examples: {
    flagged: {
      'water to restore slump': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.02 PLACING CONCRETE
A. Shelter walks are Exposure Class F3. Add water at the site to restore slump.
                                        ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ allows water at the site without limit
`,
      'the finisher decides': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.02 PLACING CONCRETE
A. Bus apron is Exposure Class F3. Drivers may temper the load with water as requested by the finisher.
                                   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ without limit
`,
      'as needed, and only remixed': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.02 PLACING CONCRETE
A. Shelter walks are Exposure Class F3. Water may be added at the site as needed, provided that the concrete is remixed.
                                        ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ without limit
`,
    },
    clean: {
      'no water at the site': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.02 PLACING CONCRETE
A. Shelter walks are Exposure Class F3. Add no water at the site.
`,
      'the withheld water, once': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.02 PLACING CONCRETE
A. Shelter walks are Exposure Class F3. Add withheld water once, before discharge, not exceeding w/cm 0.45; record the gallons (litres) on the ticket.
`,
      'slump by admixture': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.02 PLACING CONCRETE
A. Bus apron is Exposure Class F3. Adjust slump at the site with water-reducing admixture only.
`,
      'water that is only written down': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.02 PLACING CONCRETE
A. Bus apron is Exposure Class F3. Record on the batch ticket the time, the mixture, and any water added.
`,
    },
  },
});
