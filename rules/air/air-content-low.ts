/** The air that the text accepts falls below the band for the class and the aggregate. */

import { judgeAir } from '../formulas/air-acceptance.ts';
import { isAirBelow } from '../formulas/comparison.ts';
import { requiredAir } from '../formulas/required-air.ts';
import type { AnyQuantity } from '../formulas/unit-twins.ts';
import { needsAir } from '../kinds/air.ts';
import { asked, classOf, severityOf, standing } from '../kinds/asked.ts';
import type { InWords } from '../kinds/instead.ts';
import { limit, type Shortfall } from '../kinds/limit.ts';
import { sayBand, sayShare } from '../kinds/say.ts';
import type { View } from '../kinds/view.ts';
import type { ValueFact } from '../model/fact.ts';
import { asOf, type Measure } from '../model/measure.ts';
import { percent } from '../model/quantity.ts';
import type { AirBand } from '../model/requirement.ts';
import { airTolerance, commonestAggregate } from '../tables/air.ts';
import { clauses } from '../tables/clauses.ts';

export default limit({
  title: 'Too little air',
  severity: 'must',
  reason: 'Below the band the paste at the surface is no longer protected, and scaling under salts rises steeply.',
  citations: clauses['air-low'],
  clause: {
    inchPound:
      'Provide total air of [6.0] percent, plus or minus 1.5 percentage points, with [3/4 in.] nominal maximum aggregate.',
    metric:
      'Provide total air of [6.0] percent, plus or minus 1.5 percentage points, with [19 mm] nominal maximum aggregate.',
  },
  outranks: ['air-tolerance-missing', 'air-tolerance-too-wide', 'air-limit-one-sided'],

  kind: 'air-content',
  when: needsAir,
  short,
  message: ({ found, where, required, elements, view }) =>
    `Air for ${elements} in ${where} can be too low ("${found}"); ${required} is asked (${classOf(view)})`,

  examples: {
    flagged: {
      'a low target with its tolerance': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks are Exposure Class F3, plain concrete with 3/4 in. (19 mm) nominal maximum aggregate.
B. Concrete for shelter walks: f'c 4500 psi (31 MPa); air content: 4% ± 1.5%.
                                                                   ^^^^^^^^^ 4.5 to 7.5 percent is asked
`,
      'too low for every size of aggregate': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks are Exposure Class F3. Air content: not less than 3 percent.
                                                     ^^^^^^^^^^^^^^^^^^^^^^^ at least 4 percent is asked
`,
      'small stone needs more air': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Walk toppings are Exposure Class F3, with 3/8 in. (9.5 mm) nominal maximum aggregate.
B. Total air for walk toppings: 6% ± 1.5%.
                                ^^^^^^^^^ 6 to 9 percent is asked
`,
      'a class that is only computed makes it advice': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Bus apron, salted in winter: 3/4 in. (19 mm) nominal maximum aggregate; total air 3 to 5 percent.
                                                                                     ^^^^^^^^^^^^^^ should: Air for bus apron
`,
    },
    clean: {
      'large stone needs less air': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Bus apron is Exposure Class F3, with 1-1/2 in. (37.5 mm) nominal maximum aggregate. Total air: 5.5% ± 1.5%.
`,
      'strong concrete may have one point less': `
SECTION 03 30 00 - CAST-IN-PLACE CONCRETE
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Bus apron is Exposure Class F3, with 3/4 in. (19 mm) nominal maximum aggregate.
B. Bus apron: f'c 6000 psi (41 MPa) at 28 days; total air 5.0% ± 1.5%.
`,
      'a percentage of compaction is not air': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks are Exposure Class F3. Total air: 4.5 to 7.5 percent.
PART 3 - EXECUTION
3.01 BASE
A. Compact the base of shelter walks to 3 percent below optimum moisture.
`,
      'the floor of the same section has its own air': `
SECTION 03 30 00 - CAST-IN-PLACE CONCRETE
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks are Exposure Class F3. Total air for shelter walks: 6% ± 1.5%.
B. Ticket-hall floor, interior: total air not over 3 percent.
`,
    },
  },
});

function short(fact: ValueFact, view: View): Shortfall | undefined {
  const stated = asOf(fact.value, 'share');
  if (!stated) return undefined;
  const low = asked(view, ({ air }) => air).flatMap(({ value, by }) => {
    const { value: verdict } = judgeAir(stated, value);
    return verdict.tooLow ? [{ by, band: value, verdict }] : [];
  });
  const [worst] = low;
  if (!worst) return undefined;
  return {
    required: sayRequired(view, worst.band),
    instead: rightAir(stated, worst.band, view),
    severity: severityOf(view, low),
    detail: [leastSaid(worst.verdict.lowest, worst.band), standing(view, low)].filter(Boolean).join(' '),
  };
}

const usualAir = requiredAir({ class: 'F3', edition: 'aci-318-19', aggregate: commonestAggregate.value }).value;

/** A floor stays a floor; a target gets its tolerance. */
function rightAir({ min, max }: Measure<'share'>, band: AirBand, view: View): AnyQuantity | InWords {
  if (min !== undefined && max === undefined) return percent(band.low);
  if (band.byRange) return { words: sayBand(band), bare: `${band.low} to ${band.high}` };
  const target = view.requirement?.aggregate ? band.target : `[${usualAir.target}]`;
  return {
    words: `${target} percent, plus or minus ${airTolerance.value} percentage points`,
    bare: `${target} ± ${airTolerance.value}`,
  };
}

/** With no size of aggregate only the floor that holds for every size is held against the text. */
const sayRequired = (view: View, band: AirBand): string =>
  view.requirement?.aggregate || band.byRange ? sayBand(band) : `at least ${sayShare(band.low)}`;

const leastSaid = (least: number | undefined, { low }: AirBand): string | undefined =>
  least !== undefined && isAirBelow(least, low) ? `As written, a load with ${sayShare(least)} is accepted.` : undefined;
