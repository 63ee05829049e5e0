/** Small changes of Parts 1 and 2, and of the testing, of the clean paving section. */
import { type Mutation, must, should } from './planted.ts';

const rowOfP = '| 0.45 | 4500 psi (31 MPa) | 6.0 ± 1.5 | 3/4 in. (19 mm) |';
const classTable = `A. Exposure classes are those of ACI 318. They are adopted here for concrete on ground as well, with the values that the code gives for plain concrete.

| Element | Built as | Exposure class |
| --- | --- | --- |
| Shelter walks | plain, on ground | F3 |
| Curb ramps | plain, on ground | F3 |
| Plaza steps | plain, on ground | F3 |
| Curbs | plain, on ground | F3 |
| Bus bay | plain, on ground | F3 |
| Bus apron | structurally reinforced, over the tunnel | F3, W1, C2 |
`;
const airTesting =
  'Measure air by ASTM C231 on the first three loads of each day, on every third load after that, and with each set of cylinders. Accept loads at the truck within the air range of 2.03. When pumping, read air at the hose as well, for information.';

/** Each brings up what it names and nothing else. */
export const changedProducts: readonly Mutation[] = [
  {
    name: 'the tolerance on air widened to ± 2.5',
    find: rowOfP,
    replace: rowOfP.replace('± 1.5', '± 2.5'),
    expect: must('air-content-low'),
  },
  {
    name: 'air aimed at 4 percent',
    find: rowOfP,
    replace: rowOfP.replace('6.0 ±', '4.0 ±'),
    expect: must('air-content-low'),
  },
  {
    name: 'pea gravel with the air of a larger stone',
    find: rowOfP,
    replace: rowOfP.replace('3/4 in. (19 mm)', '3/8 in. (9.5 mm)'),
    expect: must('air-content-low'),
  },
  {
    name: 'the air cell left empty',
    find: rowOfP,
    replace: rowOfP.replace('6.0 ± 1.5', ''),
    expect: must('air-content-missing'),
  },
  {
    name: 'air left to the Contractor: no number, and an option',
    find: rowOfP,
    replace: rowOfP.replace('6.0 ± 1.5', "at Contractor's option"),
    expect: [...must('air-content-missing'), ...must('air-entrainment-optional')],
  },
  {
    name: 'no air entrainer in the steps',
    find: 'A. Air-entrain all concrete of this Section.',
    replace: 'A. Air-entrain the concrete of this Section, but do not use air-entraining admixture in plaza steps.',
    expect: must('air-entrainment-forbidden-outdoors'),
  },
  {
    name: 'the tolerance dropped: ASTM C94 for delivery carries one',
    find: rowOfP,
    replace: rowOfP.replace(' ± 1.5', ''),
    expect: [],
  },
  {
    name: 'the tolerance dropped, and ASTM C94 only in the reference list',
    find: rowOfP,
    replace: rowOfP.replace(' ± 1.5', ''),
    also: [{ find: 'concrete in accordance with ASTM C94.', replace: 'concrete in agitating trucks.' }],
    expect: should('air-tolerance-missing'),
  },
  {
    name: 'ASTM C231 and the testing sentence deleted',
    find: airTesting,
    replace: '',
    also: [{ find: '   10. ASTM C231: air by the pressure method\n', replace: '' }],
    expect: should('air-test-method-missing'),
  },
  {
    name: 'air is measured, by no named method; ASTM C231 stands in the reference list',
    find: 'Measure air by ASTM C231 on',
    replace: 'Measure air on',
    expect: should('air-test-method-missing'),
  },
  {
    name: 'the reinforced apron at 0.45',
    find: '| Bus apron | 0.40 |',
    replace: '| Bus apron | 0.45 |',
    expect: must('w-cm-high'),
  },
  {
    name: 'the plain mixture at 0.50',
    find: rowOfP,
    replace: rowOfP.replace('0.45', '0.50'),
    expect: must('w-cm-high'),
  },
  { name: 'no w/cm', find: rowOfP, replace: rowOfP.replace('0.45', ''), expect: should('w-cm-missing') },
  {
    name: 'water at the site as the finishers ask',
    find: 'B. Add water at the site once only, before discharge begins, up to the amount withheld from the approved mixture and within the maximum w/cm. Mix 30 more revolutions, write the amount on the ticket, and take test samples after that.',
    replace: 'B. Drivers may add water at the site as the finishers ask for it.',
    expect: must('site-water-uncontrolled'),
  },
  {
    name: 'the plain mixture at 3500 psi',
    find: rowOfP,
    replace: rowOfP.replace('4500 psi (31 MPa)', '3500 psi (24 MPa)'),
    expect: must('strength-low'),
  },
  {
    name: 'the reinforced apron at 4500 psi',
    find: '| 5000 psi (35 MPa) |',
    replace: '| 4500 psi (31 MPa) |',
    expect: must('strength-low'),
  },
  {
    name: 'no strength; those before frost and before salt are not the specified one',
    find: rowOfP,
    replace: rowOfP.replace('4500 psi (31 MPa)', ''),
    expect: should('strength-missing'),
  },
  {
    name: 'fly ash to 40 percent',
    find: 'fly ash 25 percent at most',
    replace: 'fly ash 40 percent at most',
    expect: must('scm-over-cap'),
  },
  {
    name: 'fly ash to 35 percent',
    find: 'fly ash 25 percent at most',
    replace: 'fly ash 35 percent at most',
    expect: must('scm-over-cap'),
  },
  {
    name: 'slag cement to 65 percent',
    find: 'slag cement 50 percent at most',
    replace: 'slag cement 65 percent at most',
    expect: must('scm-over-cap'),
  },
  {
    name: 'a milder class for salted ramps',
    find: '| Curb ramps | plain, on ground | F3 |',
    replace: '| Curb ramps | plain, on ground | F2 |',
    expect: must('exposure-too-mild-for-use'),
  },
  {
    name: 'no class, in the table or in words, with all values given',
    find: classTable,
    replace: 'A. The concrete of this Section stands outdoors.\n',
    also: [
      {
        find: 'B. The concrete of this Section will freeze, will often be wet, and will be salted by the Owner with sodium chloride.\n\n',
        replace: '',
      },
    ],
    expect: [{ rule: 'exposure-class-missing', severity: 'note' }],
  },
];
