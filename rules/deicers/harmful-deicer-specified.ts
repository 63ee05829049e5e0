/** The text itself orders a melting agent that attacks the concrete. */
import { protecting, unitless } from '../kinds/define.ts';
import { practice } from '../kinds/practice.ts';
import type { ActFact } from '../model/fact.ts';
import { clauses, grounds } from '../tables/clauses.ts';
import { harmfulDeicers } from '../tables/deicers.ts';

export default practice({
  title: 'A harmful de-icer is allowed',
  severity: 'must',
  reason:
    'Ammonium sulfate and ammonium nitrate, also in fertilizer, attack the cement paste at any age; acids dissolve it.',
  citations: protecting(clauses.exposure, grounds.harmfulDeicers),
  clause: unitless(
    'Use clean sand until the hold-off ends, and sodium chloride after it. Never use ammonium sulfate, ammonium nitrate, fertilizer or acid products to melt ice.',
  ),

  kind: 'deicer-use',
  gate: 'any',
  harmful: (fact) => harmOf(fact) !== undefined,
  when: (view) => !view.isInterior,
  message: ({ where, elements, fact }) => `${where} allows ${fact.act.material} on ${elements}; it ${harmOf(fact)}`,

  examples: {
    flagged: {
      'pellets on the steps': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.09 WINTER MAINTENANCE
A. Use ammonium sulfate pellets on entrance steps.
   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ allows ammonium sulfate on entrance steps; it attacks cement paste
`,
      'fertilizer when salt runs out': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.09 WINTER MAINTENANCE
A. Fertilizer may be spread on exterior walks to melt ice when salt is not available.
   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ allows fertilizer on exterior walks
`,
      'on the coldest days': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.09 WINTER MAINTENANCE
A. Melt ice on exterior walks with ammonium nitrate at temperatures below 10 °F (-12 °C).
   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ allows ammonium nitrate
`,
    },
    clean: {
      'it forbids': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.09 WINTER MAINTENANCE
A. Do not use ammonium sulfate on exterior walks.
`,
      'fertilizer shall not': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.09 WINTER MAINTENANCE
A. Fertilizer shall not be used as a de-icer on exterior walks.
`,
      'a floor that resists it': `
SECTION 03 35 00 - FLOOR FINISHING
PART 3 - EXECUTION
3.03 COATING
A. Warehouse floor, interior: coat the floor to resist ammonium nitrate.
`,
      'fertilizer for planting': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.10 RESTORATION
A. Restore lawns along exterior walks with topsoil, fertilizer and seed.
`,
    },
  },
});

/** "attacks cement paste"; undefined for salts that only melt. */
const harmOf = ({ act }: ActFact): string | undefined => harmfulDeicers.find(({ name }) => name === act.material)?.why;
