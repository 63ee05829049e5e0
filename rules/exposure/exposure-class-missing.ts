/** An exterior element that freezes has no exposure class, on which every number hangs. */
import { absence } from '../kinds/absence.ts';
import { quoted } from '../kinds/define.ts';
import { answersFreezing } from '../kinds/element-kinds.ts';
import { saysAllNumbers, specifiesMixture } from '../kinds/mixture.ts';
import type { View } from '../kinds/view.ts';
import { clauses } from '../tables/clauses.ts';

export default absence({
  title: 'No freeze-thaw exposure class',
  severity: 'should',
  reason:
    'Water-cementitious ratio, strength, air and the limits on fly ash and slag all follow from the exposure class; without one a bidder prices the cheapest mixture that makes strength.',
  citations: clauses.exposure,
  clause: {
    inchPound:
      'Assign exterior flatwork that receives de-icing chemicals to Exposure Class F3 of ACI 318, adopted here for slabs on ground too, with its values for plain concrete. Assign structurally reinforced members under salts to Classes F3 and C2. Assign enclosed heated floors to Classes F0, W0 and C0.',
    metric:
      'Assign exterior flatwork that receives de-icing chemicals to Exposure Class F3 of ACI 318M, adopted here for slabs on ground too, with its values for plain concrete. Assign structurally reinforced members under salts to Classes F3 and C2. Assign enclosed heated floors to Classes F0, W0 and C0.',
  },

  // The residential code goes by weathering and knows no classes.
  when: (view) => view.isExposed && specifiesMixture(view) && view.project.code !== 'irc',
  met: (view) => view.declaredClasses.some(answersFreezing),
  duty: 'exposure',
  asks: 'value',
  belongs: ['mixtures', 'materials', 'summary', 'quality'],
  required: (view) => view.freezeClass,
  message: ({ elements, where, views: [view] }) =>
    `No exposure class for ${elements} in ${where}; ${view.freezeClass} fits "${surestCue(view)}"`,
  detail: ([view]) =>
    view.salted === 'unknown'
      ? 'w/cm, strength and air hang on the class. Say too whether de-icers will reach it: F3 where they do, F2 where they do not.'
      : 'w/cm, strength and air hang on the class.',
  level: (views) => (views.every(saysAllNumbers) ? 'note' : undefined),

  examples: {
    flagged: {
      'a mixture for bus lanes without class or numbers': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
     ^^^^^^^^^^^^^^^^^ No exposure class for exterior bus lanes
A. Concrete for exterior bus lanes: proportion for the local weather.
`,
      'all numbers are there, the class is not': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
     ^^^^^^^^^^^^^^^^^ note: No exposure class for shelter walks
A. Shelter walks: f'c 4500 psi (31 MPa) at 28 days, w/cm not over 0.45, total air 6 percent plus or minus 1.5 percent.
`,
      'a table of mixtures without a column for the class': `
SECTION 03 30 00 - CAST-IN-PLACE CONCRETE
PART 2 - PRODUCTS
2.02 CONCRETE MIXTURES
     ^^^^^^^^^^^^^^^^^ No exposure class for bus apron

| Element | f'c at 28 days | Aggregate |
| --- | --- | --- |
| Bus apron | 5000 psi (35 MPa) | 3/4 in. |
`,
    },
    clean: {
      'the class stands in the text': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks: Exposure Classes F3, W1, C0, plain concrete.
B. Concrete for shelter walks: f'c 4500 psi (31 MPa).
`,
      'the class stands in a row of the table': `
SECTION 03 30 00 - CAST-IN-PLACE CONCRETE
PART 2 - PRODUCTS
2.02 CONCRETE MIXTURES

| Element | Exposure class | w/cm | f'c |
| --- | --- | --- | --- |
| Bus apron | F3, C2 | 0.40 | 5000 psi (35 MPa) |
`,
      'the drawings give the class': `
SECTION 03 30 00 - CAST-IN-PLACE CONCRETE
PART 2 - PRODUCTS
2.02 CONCRETE MIXTURES
A. Exposure classes of exterior concrete are as indicated on Drawings.
B. Shelter walks: f'c 4500 psi (31 MPa) at 28 days.
`,
      'an interior floor needs no freezing class': `
SECTION 03 35 00 - FLOOR FINISHING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Ticket-hall floor, interior: f'c 3500 psi (24 MPa) at 28 days.
`,
    },
  },
});

/** What is said of salts or weather tells more than the noun. */
function surestCue({ element, evidence: { counted } }: View): string {
  const cue = element.salted.cue ?? (counted.find(({ cue: { kind } }) => kind === 'weather-word') ?? counted[0])?.cue;
  return quoted(cue?.words ?? element.label);
}
