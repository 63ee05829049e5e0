/** Air entrainment of concrete that freezes is left to choice. */

import { needsAir } from '../kinds/air.ts';
import { classOf } from '../kinds/asked.ts';
import { unitless } from '../kinds/define.ts';
import { practice } from '../kinds/practice.ts';
import type { View } from '../kinds/view.ts';
import type { ActFact } from '../model/fact.ts';
import { clauses } from '../tables/clauses.ts';

export default practice({
  title: 'Air entrainment is optional',
  severity: 'must',
  reason: 'Air that may be left out is left out: the bidder who does so is lower and still within the contract.',
  citations: clauses.air,
  clause: unitless(
    'Entrain air in all concrete of Exposure Classes F1, F2 and F3, in the amount given for its class and aggregate.',
  ),
  outranks: ['permissive-where-mandatory'],

  kind: 'air-entrainment',
  gate: 'freezing',
  harmful: ({ act, force }) => act.manner === 'as needed' || act.manner === 'where required' || isChoice(act, force),
  when: (view, fact) =>
    needsAir(view) && (!view.says('air-content') || fact.act.verb === 'omit') && !isDecidedByClass(view, fact),
  message: ({ where, elements, words }) => `${where} leaves the air of ${elements} to choice ("${words}")`,
  detail: (_, [view]) => (view ? `Air is needed here (${classOf(view)}).` : undefined),

  examples: {
    flagged: {
      'may be air-entrained': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Concrete for shelter walks may be air-entrained.
   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ leaves the air of shelter walks to choice
`,
      'where required, and nothing says where': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks will be salted in winter. Provide air entrainment where required.
                                           ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ to choice
`,
      'a number that pumping may undo': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks, Exposure Class F3: total air 6 percent plus or minus 1.5 percent. For pumped concrete the air may be omitted.
                                                                                    ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ leaves the air of shelter walks to choice
`,
      "at the contractor's option": `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. At the Contractor's option, use an air-entraining admixture in exterior slabs to improve workability.
   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ to choice
`,
    },
    clean: {
      'air is ordered': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Entrain air in concrete for shelter walks.
`,
      'a correction at the truck is no option': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.02 PLACING CONCRETE
A. Shelter walks are Exposure Class F3. The producer may add air-entraining admixture at the site once to bring the air into range; retest before discharge.
`,
      'the class decides where': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks are Exposure Class F3.
B. Provide air entrainment where required by the exposure class.
`,
      'a number stands beside the permission': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks: total air 6 percent plus or minus 1.5 percent. An air-entraining admixture may be used.
`,
      'footings below frost': `
SECTION 03 30 00 - CAST-IN-PLACE CONCRETE
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Footings are Exposure Class F0. Air entrainment is optional in footings.
`,
    },
  },
});

const isChoice = ({ manner }: ActFact['act'], force: ActFact['force']): boolean =>
  force === 'permit' && manner !== 'site adjustment' && manner !== 'material';

/** "Where required by the exposure class", with the class assigned, is an order. */
const isDecidedByClass = (view: View, { act }: ActFact): boolean => act.manner === 'where required' && view.isDeclared;
