/** The text lets a slab be finished while water stands on it. */
import { protecting, unitless } from '../kinds/define.ts';
import { milderIndoors } from '../kinds/outdoors.ts';
import { practice } from '../kinds/practice.ts';
import { clauses, grounds } from '../tables/clauses.ts';

export default practice({
  title: 'Finishing over bleed water',
  severity: 'must',
  reason: 'Water that is closed in leaves a weak plane just under the skin; the skin sheets off at the first freezing.',
  citations: protecting(clauses['w-cm'], grounds.finishingWater, grounds.floorGuide),
  clause: unitless(
    'Do not finish while bleed water or sheen is on the surface. Take persistent bleed water off by dragging a hose or a squeegee across the slab; never work it in.',
  ),

  kind: 'bleed-water',
  gate: 'any',
  forces: ['require', 'permit', 'recommend', 'waive'],
  // A wait that is waived is finishing over the water; working it in need not be waived to be harmless.
  harmful: ({ act, force }) => (force === 'waive' ? act.verb === 'wait' : harmfulVerbs.has(act.verb)),
  when: (view) => view.isFlatwork,
  message: ({ where, elements, words }) =>
    `${where} lets ${elements} be finished with water on the surface ("${words}")`,
  level: milderIndoors,

  examples: {
    flagged: {
      'bleed water is worked in': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Shelter walks are Exposure Class F3. Work bleed water into the surface with the float.
                                        ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ lets shelter walks be finished
`,
      'a start by the clock alone': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Loading-dock apron, exterior: start floating 45 minutes after placing, whether or not water is visible.
                                 ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ lets loading-dock apron be finished
`,
      'finishing goes on': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Plaza slabs, exterior: if bleed water persists, continue finishing.
                          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ with water on the surface
`,
    },
    clean: {
      'dragged off first': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Shelter walks: drag off bleed water; then float.
`,
      'not to be worked in': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Plaza slabs, exterior: do not work bleed water in.
`,
      'after the sheen has gone': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Bus apron: begin floating when the sheen has gone and a footprint is less than 1/4 in. (6 mm) deep.
`,
      'not until is an order to wait': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Bus apron: do not float until bleed water has disappeared.
`,
    },
  },
});

const harmfulVerbs: ReadonlySet<string> = new Set(['work in', 'finish over', 'start by time']);
