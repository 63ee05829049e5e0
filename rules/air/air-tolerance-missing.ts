/** A single value of air has no tolerance, so no load can be accepted or rejected by it. */

import { needsAir } from '../kinds/air.ts';
import { unitless } from '../kinds/define.ts';
import { limit, type Shortfall } from '../kinds/limit.ts';
import type { View } from '../kinds/view.ts';
import type { ValueFact } from '../model/fact.ts';
import { airTolerance } from '../tables/air.ts';
import { clauses } from '../tables/clauses.ts';

export default limit({
  title: 'Air content without a tolerance',
  severity: 'should',
  reason: 'A bare target can be neither accepted nor rejected at the truck; each side will argue its own band.',
  citations: clauses['air-tolerance'],
  clause: unitless('Accept total air within plus or minus 1.5 percentage points of the specified value.'),

  kind: 'air-content',
  // The classes of EN 206 set a least air, which is complete by itself.
  when: (view) => needsAir(view) && view.project.code !== 'en-206' && !view.supplied('air-tolerance'),
  short,
  message: ({ found, where, required, elements }) =>
    `Air of ${found} for ${elements} in ${where} has no tolerance; state ${required}`,

  examples: {
    flagged: {
      'a bare number': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks are Exposure Class F3. Air content: 6 percent.
                                                     ^^^^^^^^^ has no tolerance; state ± 1.5 percentage points
`,
      'a bare number in a table': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES

| Element | Exposure class | Air content (%) |
| --- | --- | --- |
| Shelter walks | F3 | 6 |
                       ^ has no tolerance
`,
      'about so much': `
SECTION 03 30 00 - CAST-IN-PLACE CONCRETE
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Dock walls are Exposure Class F2. Target air for dock walls is about 6 percent.
                                                                  ^^^^^^^^^^^^^^^ has no tolerance
`,
    },
    clean: {
      'a tolerance after a comma': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks are Exposure Class F3. Air content: 6 percent, ± 1.5 percent.
`,
      'the tolerance is said apart': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks are Exposure Class F3. Air content: 6 percent.
B. Tolerance on air content: plus or minus 1.5 percent.
`,
      'a range is its own tolerance': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks are Exposure Class F3. Total air: 4.5 to 7.5 percent.
`,
      'the cited delivery standard carries it': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks are Exposure Class F3. Air content: 6 percent.
B. Batch, mix and deliver concrete in accordance with ASTM C94.
`,
    },
  },
});

function short(fact: ValueFact, view: View): Shortfall | undefined {
  if (!isBareTarget(fact) || view.every('air-content').some(givesBand)) return undefined;
  const { asWritten } = fact.value;
  return {
    required: `± ${airTolerance.value} percentage points`,
    instead: {
      words: `${asWritten}, plus or minus ${airTolerance.value} percentage points`,
      bare: `${asWritten} ± ${airTolerance.value}`,
    },
    severity: 'should',
  };
}

const isBareTarget = ({ value: { target, plus, minus, min, max } }: ValueFact): boolean =>
  target !== undefined && [plus, minus, min, max].every((end) => end === undefined);

/** A tolerance said apart, or a range given elsewhere for the same concrete. */
const givesBand = ({ value: { plus, minus, min, max } }: ValueFact): boolean =>
  plus !== undefined || minus !== undefined || (min !== undefined && max !== undefined);
