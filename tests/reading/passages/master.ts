/** Passages out of a firm's three-part master: lettered paragraphs, titles with a colon, imperative mood. */
import type { Passage } from './passage.ts';

export const master: readonly Passage[] = [
  {
    name: 'a mixture as a list under its elements',
    section: '2.05 CONCRETE MIXTURES',
    text: `A. Exterior slabs, walks and ramps:
   1. Compressive Strength: 4500 psi at 28 days.
   2. Maximum W/CM Ratio: 0.45.
   3. Nominal Maximum Aggregate Size: 3/4 inch.
   4. Air Content: 6 percent, plus or minus 1.5 percent.`,
    facts: [
      {
        kind: 'strength',
        force: 'require',
        value: { target: 4500, unit: 'psi' },
        age: 28,
        subject: ['slab', 'walk', 'ramp'],
        exterior: 'yes',
      },
      { kind: 'w-cm', force: 'require', value: { max: 0.45, unit: '' }, subject: ['slab', 'walk', 'ramp'] },
      {
        kind: 'aggregate-size',
        force: 'require',
        value: { target: 0.75, unit: 'in' },
        subject: ['slab', 'walk', 'ramp'],
      },
      {
        kind: 'air-content',
        force: 'require',
        value: { target: 6, plus: 1.5, minus: 1.5, unit: 'percent' },
        subject: ['slab', 'walk', 'ramp'],
        exterior: 'yes',
      },
    ],
    none: ['slump', 'curing-duration'],
  },
  {
    name: 'four exposure classes in a row',
    section: '2.05 CONCRETE MIXTURES',
    text: `B. Exposure Classes of the bus apron: F3, C2, S0 and W1.`,
    facts: [
      { kind: 'exposure-class', name: 'F3', subject: ['bus apron'] },
      { kind: 'exposure-class', name: 'C2', subject: ['bus apron'] },
      { kind: 'exposure-class', name: 'S0', subject: ['bus apron'] },
      { kind: 'exposure-class', name: 'W1', subject: ['bus apron'] },
    ],
    none: ['strength', 'scm'],
  },
  {
    name: 'a broom, and no water on the broom',
    section: '3.06 FINISHING',
    text: `A. Broom Finish: Draw a fiber broom across exterior walks, square to traffic. Do not wet the broom.`,
    facts: [
      { kind: 'finish', force: 'require', act: { steps: ['broom'] }, subject: ['walk'], exterior: 'yes' },
      { kind: 'surface-water', force: 'ban', act: { object: 'broom' } },
    ],
    none: [{ kind: 'surface-water', force: ['require', 'permit'] }],
  },
  {
    name: 'the trowel before the broom',
    section: '3.06 FINISHING',
    text: `B. Shelter walks: float, steel trowel, then broom.`,
    facts: [
      {
        kind: 'finish',
        force: 'require',
        act: { steps: ['float', 'hard trowel', 'broom'] },
        subject: ['shelter walk'],
      },
    ],
    none: ['surface-water', 'bleed-water'],
  },
  {
    name: 'trap: a machine with float pans does not trowel',
    section: '3.06 FINISHING',
    text: `C. Float the garage ramp with a walk-behind machine fitted with float pans.`,
    facts: [{ kind: 'finish', force: 'require', act: { steps: ['power float'] } }],
    none: [
      { kind: 'finish', saying: 'trowel' },
      { kind: 'finishing-tool', saying: 'trowel' },
    ],
  },
  {
    name: 'trap: one of the following, and Type 2 and Class B belong to the compound',
    section: '3.08 CURING',
    text: `A. Cure by one of the following:
   1. Wet cover: burlap kept wet for 7 days.
   2. Membrane: white curing compound, ASTM C309, Type 2, Class B.`,
    facts: [
      { kind: 'curing-duration', force: 'require', value: { target: 7, unit: 'd' } },
      { kind: 'curing-method', act: { manner: 'wet cover' } },
      { kind: 'curing-method', act: { manner: 'compound' } },
    ],
    none: ['exposure-class', 'surface-water'],
  },
  {
    name: 'trap: a ticket only records the water',
    section: '1.04 SUBMITTALS',
    text: `C. Delivery tickets: batch water, water held back, and water put in at the site.`,
    facts: [],
    none: ['site-water', 'surface-water', 'w-cm', 'bleed-water'],
  },
  {
    name: 'trap: forms and bars are wetted',
    section: '3.03 PREPARATION',
    text: `A. Hose down wood forms before placing, and mist the reinforcement where it is hot to the touch.`,
    facts: [],
    none: ['surface-water', 'fogging', 'curing-method', 'site-water'],
  },
  {
    name: 'trap: a wall is dampened to be rubbed',
    section: '3.07 FORMED FINISHES',
    text: `B. Rubbed Finish: Within one day of stripping, dampen the wall faces and rub them with a carborundum brick.`,
    facts: [{ kind: 'finish', force: 'require', act: { steps: ['rub'] } }],
    none: ['surface-water', 'curing-duration', 'site-water'],
  },
  {
    name: 'wait for the bleed water; leave the surface alone',
    section: '3.06 FINISHING',
    text: `D. Do not start floating until bleed water has left the surface. Do not overwork the surface.`,
    facts: [
      { kind: 'bleed-water', force: 'require', act: { verb: 'wait' } },
      { kind: 'over-finishing', act: { verb: 'limit' } },
    ],
    none: ['surface-water', { kind: 'over-finishing', saying: 'repeat' }],
    free: ['finish'],
  },
  {
    name: 'a retarder between operations, not to finish with',
    section: '3.06 FINISHING',
    text: `E. An evaporation retarder may be sprayed between finishing operations.`,
    facts: [{ kind: 'evaporation-retarder', force: 'permit', act: { manner: 'between operations' } }],
    none: ['surface-water', { kind: 'evaporation-retarder', saying: 'finishing aid' }],
  },
  {
    name: 'air by reference to a table',
    section: '2.05 CONCRETE MIXTURES',
    text: `C. Air content: as given in ACI 318, Table 19.3.3.1, for the exposure class assigned.`,
    facts: [{ kind: 'elsewhere', name: 'air' }],
    none: ['air-content', 'strength', 'exposure-class'],
  },
  {
    name: 'trap: a sealer has a date of its own',
    section: '3.10 SEALING',
    text: `A. Apply silane sealer to shelter walks no sooner than 28 days after placing, when the surface has been dry for 24
hours.`,
    facts: [{ kind: 'sealer', force: 'require' }],
    none: ['curing-duration', 'sealer-instead', 'deicer-hold-off', 'curing'],
  },
  {
    name: 'trap: an admixture without chloride',
    section: '2.04 ADMIXTURES',
    text: `B. Accelerating admixture: ASTM C494, Type C, without chloride. No salt in the mix.`,
    facts: [],
    none: ['deicer-use', 'deicers', 'exposure-class', 'deicer-hold-off'],
  },
  {
    name: 'trap: stripping forms',
    section: '3.09 FORM REMOVAL',
    text: `A. Leave forms of curbs in place 24 hours and those of walls until 70 percent of the strength is reached.`,
    facts: [],
    none: ['curing-duration', 'cold-protection', 'air-content'],
  },
  {
    name: 'trap: no wet screeds, and a waiver',
    section: '3.05 PLACING',
    text: `A. Set screeds on chairs; no wet screeds. No vibrating is needed in slabs of 4 inches and less.`,
    facts: [],
    none: ['surface-water', 'bleed-water', 'aggregate-size', 'finish', 'slump'],
  },
  {
    name: 'three caps in a list',
    section: '2.05 CONCRETE MIXTURES',
    text: `D. Limit percentage, by weight, of cementitious materials other than portland cement as follows:
   1. Fly Ash: Maximum 25 percent.
   2. Slag Cement: Maximum 50 percent.
   3. Silica Fume: Maximum 10 percent.`,
    facts: [
      { kind: 'scm', force: 'require', value: { max: 25, unit: 'percent' }, of: 'fly ash' },
      { kind: 'scm', force: 'require', value: { max: 50, unit: 'percent' }, of: 'slag cement' },
      { kind: 'scm', force: 'require', value: { max: 10, unit: 'percent' }, of: 'silica fume' },
    ],
    none: ['air-content', 'chloride', 'strength'],
  },
  {
    name: 'bleed water worked in',
    section: '3.06 FINISHING',
    text: `F. Work bleed water back into the surface with the float.`,
    facts: [{ kind: 'bleed-water', force: 'require', act: { verb: 'work in' } }],
    none: ['surface-water', 'site-water'],
    free: ['finish'],
  },
];
