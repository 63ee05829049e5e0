/** Exterior concrete in a freezing climate, and no word on cold weather. */
import { absence } from '../kinds/absence.ts';
import type { View } from '../kinds/view.ts';
import type { ColdWeatherVerb, SeasonWindow } from '../model/acts.ts';
import { clauses } from '../tables/clauses.ts';

export default absence({
  title: 'No cold-weather requirements',
  severity: 'should',
  reason:
    'Concrete that freezes before about 500 psi (3.5 MPa) loses strength for good, and its surface never recovers.',
  citations: clauses['cold-weather'],
  clause: {
    inchPound:
      'When the air is, or within 24 hours is expected to be, below 40 °F, place and protect concrete in accordance with ACI 306.1 and this section: no placing on frost, ice or snow; thin slabs placed and held at 55 °F or above; no freezing before 3500 psi; cooling by not more than 50 °F in 24 hours; temperatures recorded; a plan submitted [14] days before.',
    metric:
      'When the air is, or within 24 hours is expected to be, below 5 °C, place and protect concrete in accordance with ACI 306.1 and this section: no placing on frost, ice or snow; thin slabs placed and held at 13 °C or above; no freezing before 24 MPa; cooling by not more than 28 °C in 24 hours; temperatures recorded; a plan submitted [14] days before.',
  },
  outranks: [
    'placing-on-frozen-base',
    'first-freeze-strength-missing',
    'protection-duration-missing',
    'concrete-temperature-low',
    'cooling-too-fast',
    'temperature-records-missing',
    'cold-weather-plan-missing',
  ],

  when: (view) =>
    view.isExposed &&
    !view.has('precast') &&
    (view.hasArticle('placing', 'finishing', 'curing', 'weather') || view.says('finish')),
  met: (view) => view.every('cold-weather').some(isRule) || view.says('cold-protection') || isSummerWork(view),
  duty: 'cold-weather',
  asks: 'clause',
  belongs: ['weather', 'placing', 'curing', 'finishing'],
  message: ({ elements, where }) => `No cold-weather requirements for ${elements} in ${where}, in a freezing climate`,
  lines: [
    { text: 'placing on a frozen base', silent: lacksVerb('frozen base') },
    { text: 'strength before the first freeze', silent: always },
    { text: 'how long to protect', silent: always },
    { text: 'temperature of the concrete when placed', silent: (view) => !view.says('concrete-temperature') },
    { text: 'how fast it may cool', silent: lacksVerb('cool') },
    { text: 'records of temperature', silent: lacksVerb('record') },
    { text: 'a plan beforehand', silent: lacksVerb('plan') },
  ],

  examples: {
    flagged: {
      'placing, finishing, curing, and nothing more': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.02 PLACING CONCRETE
     ^^^^^^^^^^^^^^^^ No cold-weather requirements for exterior walks in 3.02
A. Exterior walks: place concrete in one operation.
3.04 FINISHING
A. Exterior walks: broom finish.
3.06 CURING
A. Exterior walks: wet burlap for 7 days.
`,
      'suitable weather': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.02 PLACING CONCRETE
     ^^^^^^^^^^^^^^^^ No cold-weather requirements
A. Exterior walks: place concrete in suitable weather.
`,
      'a wish is no requirement': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.02 PLACING CONCRETE
     ^^^^^^^^^^^^^^^^ No cold-weather requirements for bus apron
A. Bus apron: avoid placing concrete on cold days.
`,
    },
    clean: {
      'the specification for cold weather is cited': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.02 PLACING CONCRETE
A. Exterior walks: in cold weather comply with ACI 306.1.
`,
      'a season of mild months': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.02 PLACING CONCRETE
A. Exterior walks: place concrete only between 15 May and 15 September.
`,
      'protection below a temperature': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.02 PLACING CONCRETE
A. Exterior walks: protect concrete from freezing when the air is below 40 °F (5 °C).
`,
      'another section has it': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.02 PLACING CONCRETE
A. All concrete for exterior walks shall comply with Section 03 30 00.
`,
      'it does not freeze here': {
        climate: 'mild',
        text: `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.02 PLACING CONCRETE
A. Exterior walks: place concrete in one operation.
`,
      },
    },
  },
});

const duties: ReadonlySet<string> = new Set<ColdWeatherVerb>(['protect', 'place', 'heat', 'hold']);

/** A duty in cold weather; a plan to be submitted, or a frozen base, is not yet one. */
const isRule = ({ act, force }: { readonly act: { readonly verb: string }; readonly force: string }): boolean =>
  duties.has(act.verb) && force !== 'waive' && force !== 'recommend';

const isSummerWork = (view: View): boolean =>
  view.every('season').some(({ value }) => value === ('mild months' satisfies SeasonWindow));

/** Any word on protection is a clause, and then this card is silent. */
function always(): boolean {
  return true;
}

function lacksVerb(verb: ColdWeatherVerb): (view: View) => boolean {
  return (view) => view.every('cold-weather').every(({ act }) => act.verb !== verb);
}
