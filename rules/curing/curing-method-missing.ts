/** Curing has a length of time and no method. */
import { absence } from '../kinds/absence.ts';
import { curingWays } from '../kinds/curing-plan.ts';
import { protecting } from '../kinds/define.ts';
import { sayWritten } from '../kinds/say.ts';
import type { View } from '../kinds/view.ts';
import type { ValueFact } from '../model/fact.ts';
import { clauses, grounds } from '../tables/clauses.ts';
import { curingMaterials } from '../tables/curing-materials.ts';

export default absence({
  title: 'Curing without a method',
  severity: 'should',
  reason: '"Cure for 7 days" without a method gives seven days of drying.',
  citations: protecting(clauses.curing, grounds.curingMethods),
  clause: {
    inchPound:
      'Cover with burlap kept wet, or with impervious sheet conforming to ASTM C171, or apply compound conforming to ASTM C309 at 200 ft2/gal or richer. Start as soon as the texture holds and no free water shows, within [2] hours of texturing, and count days at 50 °F or above.',
    metric:
      'Cover with burlap kept wet, or with impervious sheet conforming to ASTM C171, or apply compound conforming to ASTM C309 at 5 m2/L or richer. Start as soon as the texture holds and no free water shows, within [2] hours of texturing, and count days at 10 °C or above.',
  },
  outranks: [
    'curing-start-missing',
    'curing-temperature-missing',
    'curing-compound-standard-missing',
    'curing-compound-rate-missing',
    'sheet-cure-standard-missing',
  ],

  when: (view) => view.isExposed && view.isFlatwork,
  met: (view) => durationOf(view) === undefined,
  duty: 'curing',
  asks: 'clause',
  lackedBy: durationOf,
  belongs: ['curing', 'finishing', 'placing'],
  message: ({ elements, where, views: [view] }) => {
    const duration = durationOf(view);
    return `${where} cures ${elements} ${duration ? `for ${sayWritten(duration.value)} ` : ''}but names no method`;
  },
  lines: [
    {
      text: 'when curing starts',
      silent: (view) => curingWays(view).every(({ facts }) => facts.every(isWithoutStart)),
    },
    {
      text: 'the temperature at which days count',
      silent: (view) => !view.says('curing-temperature') && !view.says('cold-protection'),
    },
    { text: 'a standard for the material', silent: (view) => !isMaterialNamed(view) },
    { text: 'the rate of a compound', silent: (view) => !view.says('coverage') },
  ],

  examples: {
    flagged: {
      'seven days of nothing': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.06 CURING
A. Cure shelter walks, Exposure Class F3, for 7 days.
                                              ^^^^^^ 3.06.A cures shelter walks for 7 days but names no method
`,
      'approved means': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.06 CURING
A. Cure the bus apron, Exposure Class F3, for 7 days by approved means.
                                              ^^^^^^ names no method
`,
      'continuous for a week': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.06 CURING
A. Curing of plaza slabs, exterior, shall be continuous for one week.
                                                            ^^^^^^^^ names no method
`,
    },
    clean: {
      'wet burlap': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.06 CURING
A. Cover shelter walks with wet burlap for 7 days.
`,
      'a compound that is left alone': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.06 CURING
A. Apply curing compound to the bus apron once no free water shows, and leave the film undisturbed for 7 days.
`,
      sheeting: `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.06 CURING
A. Cure shelter walks with polyethylene sheeting for 7 days.
`,
      'the cited specification names the methods': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.06 CURING
A. Cure shelter walks for 7 days in accordance with ACI 308.1.
`,
    },
  },
});

/** The statement of time to which no method belongs. */
function durationOf(view: View): ValueFact | undefined {
  const bare = curingWays(view).find(({ methods }) => methods.length === 0);
  return bare?.durations[0];
}

const isWithoutStart = (fact: ReturnType<typeof curingWays>[number]['facts'][number]): boolean =>
  !('act' in fact) || fact.act.time === undefined;

const isMaterialNamed = (view: View): boolean =>
  view.every('standard').some(({ value }) => curingMaterials.some(({ designation }) => designation === value));
