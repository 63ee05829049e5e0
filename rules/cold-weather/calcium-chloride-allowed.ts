/** A chloride accelerator is allowed in concrete with steel, or an accelerator without a word on chloride. */
import { practice } from '../kinds/practice.ts';
import type { View } from '../kinds/view.ts';
import type { AcceleratorMaterial } from '../model/acts.ts';
import { type ActFact, comesTo } from '../model/fact.ts';
import type { Severity } from '../model/project.ts';
import { clauses } from '../tables/clauses.ts';

export default practice({
  title: 'Chloride accelerator allowed',
  severity: 'must',
  reason: 'Chloride corrodes the steel and can add to scaling.',
  citations: clauses.chloride,
  clause: {
    inchPound:
      'Do not use calcium chloride or admixtures that contain chloride. Where an accelerator is needed use a non-chloride one conforming to ASTM C494, Type C or E.',
    metric:
      'Do not use calcium chloride or admixtures that contain chloride. Where an accelerator is needed use a non-chloride one conforming to ASTM C494M, Type C or E.',
  },

  kind: 'accelerator',
  gate: 'any',
  harmful: ({ act }) => act.material !== ('non-chloride' satisfies AcceleratorMaterial),
  when: (view, fact) => view.isExterior && !(isUnspecified(fact) && saysNonChloride(view)),
  message: ({ where, elements, words, fact }) =>
    isUnspecified(fact)
      ? `${where} allows an accelerator in ${elements} without the word non-chloride ("${words}")`
      : `${where} allows ${materialOf(fact)} in ${elements}${fact.except ? ` ("${words}")` : ''}; use a non-chloride accelerator`,
  detail: (_, [view]) =>
    view?.reinforced === 'unknown'
      ? 'Whether the element is reinforced is not said; in plain concrete this is a note.'
      : undefined,
  level: (fact, views) => levelFor(fact, views),

  examples: {
    flagged: {
      'two percent in cold weather': `
SECTION 03 30 00 - CAST-IN-PLACE CONCRETE
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. The bus apron, exterior, is structurally reinforced. Add calcium chloride to 2 percent in cold weather.
                                                        ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ allows calcium chloride in bus apron
`,
      'an accelerator of any kind': `
SECTION 03 30 00 - CAST-IN-PLACE CONCRETE
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. The bus apron, exterior, is structurally reinforced. Accelerating admixtures are permitted.
                                                        ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ should: without the word non-chloride
`,
      'below a temperature': `
SECTION 03 30 00 - CAST-IN-PLACE CONCRETE
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. The bus apron, exterior, is structurally reinforced. Chloride accelerator is allowed below 35 °F (2 °C).
                                                        ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ use a non-chloride accelerator
`,
      'in plain concrete it is a note': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks are plain concrete. Calcium chloride may be added in cold weather.
                                     ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ note: allows calcium chloride in shelter walks
`,
    },
    clean: {
      'non-chloride by name': `
SECTION 03 30 00 - CAST-IN-PLACE CONCRETE
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. The bus apron, exterior, is structurally reinforced. Accelerator: ASTM C494 Type C, non-chloride.
`,
      'it forbids': `
SECTION 03 30 00 - CAST-IN-PLACE CONCRETE
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. The bus apron, exterior, is structurally reinforced. Use no calcium chloride.
`,
      'dust on the haul road': `
SECTION 32 11 00 - BASE COURSES
PART 3 - EXECUTION
3.02 DUST CONTROL
A. Spread calcium chloride on the haul road beside the bus apron to lay the dust.
`,
      'an accelerator beside a ban on chlorides': `
SECTION 03 30 00 - CAST-IN-PLACE CONCRETE
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. The bus apron, exterior, is structurally reinforced. Accelerating admixtures are permitted.
B. Do not use admixtures that contain chloride.
`,
    },
  },
});

const isUnspecified = ({ act }: ActFact): boolean => act.material === undefined || act.material === 'unspecified';

const materialOf = ({ act }: ActFact): string =>
  act.material === ('chloride' satisfies AcceleratorMaterial) ? 'a chloride accelerator' : (act.material ?? 'chloride');

/** The text names non-chloride accelerators, or bans chlorides, for the same concrete. */
function saysNonChloride(view: View): boolean {
  return view.every('accelerator').some((fact) => {
    const isBan = comesTo(fact) === 'ban';
    return isBan !== isChlorideFree(fact.act.material);
  });
}

const isChlorideFree = (material: string | undefined): boolean => material === 'non-chloride';

function levelFor(fact: ActFact, views: readonly View[]): Severity {
  const hasSteel = views.some((view) => view.reinforced === 'yes' || view.has('prestressed'));
  if (views.every(({ reinforced }) => reinforced === 'no')) return 'note';
  return hasSteel && !isUnspecified(fact) ? 'must' : 'should';
}
