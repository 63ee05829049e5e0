/** De-icers reach an element whose class does not reckon with them. */
import { type Clash, conflict } from '../kinds/conflict.ts';
import type { View } from '../kinds/view.ts';
import type { NamedFact } from '../model/fact.ts';
import { clauses } from '../tables/clauses.ts';
import { type ExposureSystem, freezeClasses, saltedClasses } from '../tables/exposure.ts';

export default conflict({
  title: 'The exposure class leaves out the de-icers',
  severity: 'must',
  reason:
    'A class without de-icers brings no caps on fly ash and slag and, for reinforced concrete, a higher w/cm. Salts keep the surface wet, add pressure of their own and multiply the cycles at the surface.',
  citations: clauses.exposure,
  clause: {
    inchPound:
      'Assign [shelter walks] to Exposure Class F3 of ACI 318 [CSA A23.1: C-2, or C-1 where structurally reinforced] [EN 206: XF4].',
    metric:
      'Assign [shelter walks] to Exposure Class F3 of ACI 318M [CSA A23.1: C-2, or C-1 where structurally reinforced] [EN 206: XF4].',
  },

  when: (view) => view.salted === 'yes' || (view.salted === 'unknown' && view.element.kind === 'parking'),
  clash: mildClasses,
  message: ({ clash, elements, where }) =>
    `Class ${clash.found} for ${elements} in ${where} leaves out the de-icers; assign ${clash.required}`,

  examples: {
    flagged: {
      'salted daily, and F2': `
SECTION 32 13 13 - CONCRETE PAVING
PART 1 - GENERAL
1.03 EXPOSURE
A. The bus apron will be salted daily from November to April.
B. Bus apron: Exposure Class F2.
              ^^^^^^^^^^^^^^^^^ Class F2 for bus apron
`,
      'a CSA class without de-icers at the entrances': {
        code: 'csa-a23-1-19',
        text: `
SECTION 32 13 13 - CONCRETE SIDEWALKS
PART 1 - GENERAL
1.03 EXPOSURE
A. The Owner will spread rock salt on the entrance walks.
B. Entrance walks: CSA A23.1 Class F-2.
                   ^^^^^^^^^^^^^^^^^^^ assign C-2
`,
      },
      'an EN class without de-icers under brine': {
        code: 'en-206',
        text: `
SECTION 03 30 00 - CONCRETE WORKS
PART 2 - PRODUCTS
2.01 EXPOSURE
A. Platform slabs receive de-icing brine.
B. Platform slabs: Exposure Class XF3.
                   ^^^^^^^^^^^^^^^^^^ assign XF4
`,
      },
    },
    clean: {
      'salted, and F3': `
SECTION 32 13 13 - CONCRETE PAVING
PART 1 - GENERAL
1.03 EXPOSURE
A. The bus apron will be salted daily from November to April.
B. Bus apron: Exposure Class F3.
`,
      'upright faces under salt splash': {
        code: 'en-206',
        text: `
SECTION 03 30 00 - CONCRETE WORKS
PART 2 - PRODUCTS
2.01 EXPOSURE
A. Parapet walls are hit by splash of de-icing salts: Exposure Class XF2.
`,
      },
      'no de-icers will be used': `
SECTION 32 13 13 - CONCRETE PAVING
PART 1 - GENERAL
1.03 EXPOSURE
A. Pool deck: Exposure Class F2; no de-icing chemicals will be used on it.
`,
      'a rock-salt finish is no de-icer': `
SECTION 32 13 16 - DECORATIVE CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Courtyard walks: Exposure Class F2. Give them a rock-salt finish.
`,
    },
  },
});

function* mildClasses(view: View): Iterable<Clash> {
  const stated = view.names('exposure-class');
  if (stated.some(({ value }) => reckonsWithSalts(view, value))) return;
  for (const fact of stated) {
    const system = systemOf(fact);
    if (system) yield clashOf(view, fact, system);
  }
}

function clashOf(view: View, fact: NamedFact, system: ExposureSystem): Clash {
  const { cue } = view.element.salted;
  const required = classUnderSalts(view, system);
  return {
    fact,
    found: fact.value,
    required,
    instead: required,
    against: cue?.span ? [{ at: cue.span, message: `"${cue.words}"` }] : [],
    severity: view.saltedByText === 'yes' ? 'must' : 'should',
  };
}

/** The 2025 edition folds F3 into F2 together with C2. */
function reckonsWithSalts(view: View, token: string): boolean {
  const folded = view.project.code === 'aci-318-25' && token === 'C2';
  return folded || freezeClasses.some(({ name, salts }) => name === token && salts === 'yes');
}

/** The system of a class that leaves salts out; undefined for classes of another question (sulfate, water, corrosion). */
function systemOf({ value }: NamedFact): ExposureSystem | undefined {
  if (value === 'F0') return 'ACI 318';
  return freezeClasses.find(({ name }) => name === value)?.system;
}

function classUnderSalts(view: View, system: ExposureSystem): string | undefined {
  const row = saltedClasses.find((each) => each.system === system);
  if (!view.isFlatwork) return row?.upright;
  return view.reinforced === 'yes' ? row?.reinforced : row?.flat;
}
