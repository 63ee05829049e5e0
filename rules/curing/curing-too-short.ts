/** Curing ends before the surface is dense. */
import { isShorter } from '../formulas/comparison.ts';
import { bothUnits } from '../formulas/unit-twins.ts';
import { curingAsked, curingWays, daysAsked, daysOf, decisive, type Way } from '../kinds/curing-plan.ts';
import { limit, type Shortfall } from '../kinds/limit.ts';
import { sayWritten } from '../kinds/say.ts';
import type { View } from '../kinds/view.ts';
import type { CuringManner, CuringOf } from '../model/acts.ts';
import type { ValueFact } from '../model/fact.ts';
import { quantity } from '../model/quantity.ts';
import { clauses } from '../tables/clauses.ts';

export default limit({
  title: 'Curing too short',
  severity: 'must',
  reason:
    'Three cool days are a fraction of seven warm ones; when curing stops early the skin stays open and soft, most of all with much fly ash or slag.',
  citations: clauses.curing,
  clause: {
    inchPound:
      'Cure exterior flatwork for 7 days counted at 50 °F or above [3 days with high-early-strength concrete].',
    metric: 'Cure exterior flatwork for 7 days counted at 10 °C or above [3 days with high-early-strength concrete].',
  },

  kind: 'curing-duration',
  when: (view) => view.isExposed && !view.has('precast'),
  short,
  message: ({ fact, where, required, elements }) =>
    `Curing of ${sayWritten(fact.value)} for ${elements} in ${where} is shorter than ${required}`,

  examples: {
    flagged: {
      'three days': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.06 CURING
A. Cure shelter walks, Exposure Class F3, under wet burlap for 3 days.
                                                               ^^^^^^ is shorter than 7 days
`,
      'the film comes off after 72 hours': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.06 CURING
A. Cure the bus apron, Exposure Class F3, with curing compound for 72 hours.
                                                                   ^^^^^^^^ Curing of 72 hours for bus apron
`,
      'less for the walks than for the rest': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.06 CURING
A. Cure exterior concrete under wet burlap for 7 days.
B. Cure shelter walks, Exposure Class F3, for 4 days.
                                              ^^^^^^ for shelter walks
`,
      'one of the alternatives is short': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.06 CURING
A. Cure shelter walks, Exposure Class F3, by one of the following methods:
1. Keep burlap wet for 7 days.
2. Cover with polyethylene sheet for 3 days.
                                     ^^^^^^ in 3.06.A.2 is shorter than 7 days
`,
      'a figure in a table': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.06 CURING
A. Curing with wet burlap:

| Element | Curing, days |
| --- | --- |
| Shelter walks, Exposure Class F3 | 3 |
                                     ^ Curing of 3 days for shelter walks
`,
    },
    clean: {
      'high-early-strength cement': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.06 CURING
A. Cure shelter walks, Exposure Class F3, for 7 days; with high-early-strength cement cure for 3 days.
`,
      'wet first, then a compound': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.06 CURING
A. Cure shelter walks, Exposure Class F3: 3 days under wet burlap, then curing compound to 7 days.
`,
      'the film stays on when the covers come off': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.06 CURING
A. Cover shelter walks, Exposure Class F3, with wet burlap for 3 days, then apply curing compound and leave it on.
`,
      'traffic is kept off, which is no curing': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.06 CURING
A. Cure shelter walks, Exposure Class F3, under wet burlap for 7 days.
B. Open shelter walks to pedestrians after 3 days.
`,
      'forms are stripped after a day': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.05 REMOVAL OF FORMS
A. Leave forms of curbs, Exposure Class F3, in place for 24 hours.
`,
    },
  },
});

function short(fact: ValueFact, view: View): Shortfall | undefined {
  const way = curingWays(view).find(({ durations }) => durations.includes(fact));
  const days = daysFor(fact, view);
  if (!way || !isShorter(daysOf(way), days) || fact !== decisive(way) || filmGoesOn(way, fact)) return undefined;
  return {
    required: `${days} days`,
    instead: quantity(days, 'd'),
    severity: 'must',
    detail: `Days count at ${bothUnits(curingAsked(view).temperature)} or above.`,
  };
}

const daysFor = ({ of }: ValueFact, view: View): number =>
  of === ('high-early' satisfies CuringOf) ? curingAsked(view).highEarlyDays : daysAsked(view);

/** A wet or sheet cure is given this time in so many words, and a compound follows that stays on the slab. */
const filmGoesOn = ({ methods }: Way, { place }: ValueFact): boolean =>
  methods.some(isFilm) && methods.some((method) => !isFilm(method) && method.place === place);

const isFilm = ({ act }: Way['methods'][number]): boolean => act.manner === ('compound' satisfies CuringManner);
