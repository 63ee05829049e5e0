/** Nobody measures the air of the fresh concrete by a named method. */
import { absence } from '../kinds/absence.ts';
import { needsAir } from '../kinds/air.ts';
import type { View } from '../kinds/view.ts';
import { airTests } from '../tables/air-tests.ts';
import { clauses } from '../tables/clauses.ts';

export default absence({
  title: 'No test method for air',
  severity: 'should',
  reason: 'Air that nobody measures by a named method cannot be rejected.',
  citations: clauses['air-test'],
  clause: {
    inchPound:
      'Sample concrete by ASTM C172 after any water or admixture is added. Measure air by ASTM C231, with its aggregate correction, for normalweight concrete, or by ASTM C173 for lightweight or porous aggregate, on the first three loads each day and with every strength sample. Adjust a load out of range once and retest it, or reject it. Tests are made by an ACI Concrete Field Testing Technician, Grade I, or equal.',
    metric:
      'Sample concrete by ASTM C172M after any water or admixture is added. Measure air by ASTM C231M, with its aggregate correction, for normalweight concrete, or by ASTM C173M for lightweight or porous aggregate, on the first three loads each day and with every strength sample. Adjust a load out of range once and retest it, or reject it. Tests are made by an ACI Concrete Field Testing Technician, Grade I, or equal.',
  },

  when: (view) => needsAir(view) && !view.has('precast') && (view.hasArticle('field-quality') || view.says('test')),
  met: (view) => view.every('test').some(({ value, of }) => value === 'air' && of !== undefined) || isTestCited(view),
  duty: 'air-test',
  asks: 'clause',
  belongs: ['field-quality', 'quality', 'placing'],
  message: ({ elements, where }) =>
    `No method is named in ${where} for testing the air of ${elements}; name ASTM C231 or C173`,
  lines: [
    { text: 'how often air is tested', silent: isSilentOn('air frequency') },
    { text: 'where the sample is taken', silent: isSilentOn('air sampling') },
    { text: 'what follows a test out of range', silent: isSilentOn('air action') },
    { text: 'who may test', silent: isSilentOn('air tester') },
  ],

  examples: {
    flagged: {
      'air is tested, nobody knows how': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks are Exposure Class F3. Total air: 6 percent plus or minus 1.5 percent.
PART 3 - EXECUTION
3.08 FIELD QUALITY CONTROL
     ^^^^^^^^^^^^^^^^^^^^^ for testing the air of shelter walks; name ASTM C231 or C173
A. Test air content regularly.
`,
      'the method stands in the list of references only': `
SECTION 32 13 13 - CONCRETE PAVING
PART 1 - GENERAL
1.02 REFERENCES
A. ASTM C231 - Air Content of Freshly Mixed Concrete by the Pressure Method.
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks are Exposure Class F3. Total air: 6 percent plus or minus 1.5 percent.
PART 3 - EXECUTION
3.08 FIELD QUALITY CONTROL
     ^^^^^^^^^^^^^^^^^^^^^ testing the air
A. Test slump and make cylinders once for each 50 cu yd (40 cu m).
`,
      'an approved manner': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Bus apron is Exposure Class F3. Total air: 6 percent plus or minus 1.5 percent.
PART 3 - EXECUTION
3.08 FIELD QUALITY CONTROL
     ^^^^^^^^^^^^^^^^^^^^^ testing the air of bus apron
A. The Owner's laboratory will check the air content of the bus apron in an approved manner.
`,
    },
    clean: {
      'the pressure method by its number': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks are Exposure Class F3. Total air: 6 percent plus or minus 1.5 percent.
PART 3 - EXECUTION
3.08 FIELD QUALITY CONTROL
A. Measure air content by ASTM C231 on the first three loads each day.
`,
      'the cited specification speaks': `
SECTION 32 13 13 - CONCRETE PAVING
PART 1 - GENERAL
1.04 QUALITY ASSURANCE
A. Comply with ACI 301.
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks are Exposure Class F3. Total air: 6 percent plus or minus 1.5 percent.
PART 3 - EXECUTION
3.08 FIELD QUALITY CONTROL
A. Make cylinders once for each 50 cu yd (40 cu m).
`,
      'a section without tests asks none': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks are Exposure Class F3. Total air: 6 percent plus or minus 1.5 percent.
`,
      'an interior floor': `
SECTION 03 30 00 - CAST-IN-PLACE CONCRETE
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Ticket-hall floor, interior: f'c 3500 psi (24 MPa).
PART 3 - EXECUTION
3.08 FIELD QUALITY CONTROL
A. Test slump and make cylinders once for each 50 cu yd (40 cu m).
`,
    },
  },
});

/** A testing sentence that names the method without the word air. */
const isTestCited = (view: View): boolean =>
  view.every('standard').some(({ value, of }) => of === 'test' && airTests.some((row) => row.designation === value));

function isSilentOn(point: string): (view: View) => boolean {
  return (view) => view.every('test').every(({ value }) => value !== point);
}
