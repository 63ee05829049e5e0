/** A sealer is taken for air, for curing or for the hold-off. */
import { protecting, unitless } from '../kinds/define.ts';
import { practice } from '../kinds/practice.ts';
import type { SealerInsteadOf } from '../model/acts.ts';
import { clauses, grounds } from '../tables/clauses.ts';

export default practice({
  title: 'A sealer in place of air or curing',
  severity: 'must',
  reason: 'A sealer delays scaling in concrete with too little air; it replaces neither air, nor curing, nor time.',
  citations: protecting(clauses.air, grounds.sealers),
  clause: unitless('Apply the sealer in addition to entrained air, curing, drying and the hold-off of de-icers.'),
  outranks: ['air-entrainment-optional'],

  kind: 'sealer-instead',
  gate: 'freezing',
  // "Air may be omitted where a sealer is applied" releases from the air.
  forces: ['require', 'permit', 'recommend', 'waive'],
  harmful: () => true,
  when: (view) => view.isExposed,
  message: ({ where, elements, fact }) =>
    `${where} lets a sealer stand in for ${standsFor(fact.act.manner)} on ${elements}; it only delays scaling`,

  examples: {
    flagged: {
      'air may be left out': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.03 SEALERS
A. Shelter walks are Exposure Class F3. Air entrainment may be omitted where a silane sealer is applied.
                                        ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ stand in for air on shelter walks
`,
      'instead of a week of curing': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.06 CURING
A. Shelter walks, Exposure Class F3: in lieu of 7-day curing apply a penetrating sealer.
                                     ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ stand in for curing
`,
      'salted in the first winter because it is sealed': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.09 SEALING
A. Exterior walks that are sealed may be salted in their first winter.
   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ stand in for the hold-off
`,
    },
    clean: {
      'besides air': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.09 SEALING
A. Shelter walks: apply a silane sealer after 28 days; total air of 6 percent plus or minus 1.5 percent is required also.
`,
      'it does not waive the hold-off': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.09 SEALING
A. Shelter walks: the sealer does not waive the first-winter hold-off of de-icers.
`,
      'upkeep of old walks': `
SECTION 32 01 29 - REPAIR OF PAVING
PART 3 - EXECUTION
3.09 SEALING
A. Old exterior walks: apply linseed oil each fall to slow further scaling.
`,
    },
  },
});

const standsFor = (manner: string | undefined): string =>
  manner === ('hold-off' satisfies SealerInsteadOf) ? 'the hold-off' : (manner ?? 'air');
