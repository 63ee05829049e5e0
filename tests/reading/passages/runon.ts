/** Passages that run on: a whole section in one paragraph, labels inside the line, two kinds of work in one sentence. */
import type { Passage } from './passage.ts';

export const runon: readonly Passage[] = [
  {
    name: 'outside and inside in one line',
    section: 'CONCRETE WORK',
    text: `Exterior Slabs: concrete 4,500 psi, air 6 percent, broom finish, cure 7 days; Interior Slabs: concrete 3,500 psi, no
entrained air, steel trowel finish, cure 5 days.`,
    facts: [
      { kind: 'strength', force: 'require', value: { target: 4500, unit: 'psi' }, subject: ['slab'], exterior: 'yes' },
      {
        kind: 'air-content',
        force: 'require',
        value: { target: 6, unit: 'percent' },
        subject: ['slab'],
        exterior: 'yes',
      },
      { kind: 'finish', force: 'require', act: { steps: ['broom'] }, subject: ['slab'], exterior: 'yes' },
      { kind: 'curing-duration', force: 'require', value: { target: 7, unit: 'd' }, exterior: 'yes' },
      { kind: 'strength', force: 'require', value: { target: 3500, unit: 'psi' }, subject: ['slab'], exterior: 'no' },
      { kind: 'air-entrainment', force: 'ban', subject: ['slab'], exterior: 'no' },
      { kind: 'finish', force: 'require', act: { steps: ['hard trowel'] }, subject: ['slab'], exterior: 'no' },
      { kind: 'curing-duration', force: 'require', value: { target: 5, unit: 'd' }, exterior: 'no' },
    ],
    none: ['surface-water', 'scm'],
  },
  {
    name: 'labels inside the line',
    section: '3.06 FINISHING',
    text: `1. Strike off and bull-float before bleed water shows. 2. Wait until the bleed water has gone. 3. Broom square to
traffic. 4. Apply curing compound.`,
    facts: [
      { kind: 'finish', force: 'require', act: { steps: ['strike off', 'bull-float'] } },
      { kind: 'bleed-water', force: 'require', act: { verb: 'wait' } },
      { kind: 'finish', force: 'require', act: { steps: ['broom'] } },
      { kind: 'curing-method', force: 'require', act: { manner: 'compound' } },
    ],
    none: ['surface-water', 'curing-duration', { kind: 'bleed-water', force: ['permit'] }],
  },
  {
    name: 'trap: tolerances in a row',
    section: 'CONCRETE WORK',
    text: `3.11 TOLERANCES A. Slope: 2 percent, plus or minus 0.5 percent. B. Thickness: plus 1/2 inch, minus 1/4 inch. C. Surface:
1/4 inch in 10 feet.`,
    facts: [],
    none: ['air-content', 'aggregate-size', 'slump', 'strength'],
  },
  {
    name: 'air-entraining cement for one element only',
    section: 'CEMENT',
    text: `tank walls: Type IA cement; elsewhere Type I.`,
    facts: [{ kind: 'air-entrainment', force: 'require', subject: ['tank wall'] }],
    none: ['air-content', 'exposure-class', 'strength'],
  },
  {
    name: 'one negation shared over three',
    section: '3.06 FINISHING',
    text: `Water shall not be sprinkled on the surface, nor the broom dipped in water, nor cement dusted on the surface.`,
    facts: [
      { kind: 'surface-water', force: 'ban', act: { object: 'surface' } },
      { kind: 'surface-water', force: 'ban', act: { object: 'broom' } },
      { kind: 'dry-cement', force: 'ban' },
    ],
    none: [
      { kind: 'surface-water', force: ['permit', 'require'] },
      { kind: 'dry-cement', force: ['permit', 'require'] },
    ],
  },
  {
    name: 'trap: may not exceed is a limit, not a permission',
    section: 'MIXTURES',
    text: `water may not exceed 5 gallons a sack, air may not fall below 5 percent, slump may not exceed 4 inches.`,
    facts: [
      { kind: 'w-cm', force: ['require', 'ban'], value: { max: 0.444, unit: '' } },
      { kind: 'air-content', force: ['require', 'ban'], value: { min: 5, unit: 'percent' } },
      { kind: 'slump', force: ['require', 'ban'], value: { max: 4, unit: 'in' } },
    ],
    none: ['site-water', 'surface-water', { kind: 'air-content', force: ['permit'] }],
  },
  {
    name: 'the scope trails behind the value',
    section: 'MIXTURES',
    text: `Air shall be at most 3 percent for indoor floors and 5 to 8 percent for exterior ramps.`,
    facts: [
      {
        kind: 'air-content',
        force: 'require',
        value: { max: 3, unit: 'percent' },
        subject: ['floor'],
        exterior: 'no',
      },
      {
        kind: 'air-content',
        force: 'require',
        value: { min: 5, max: 8, unit: 'percent' },
        subject: ['ramp'],
        exterior: 'yes',
      },
    ],
    none: ['scm', 'strength'],
  },
  {
    name: 'air as needed is air by whim',
    section: 'MATERIALS',
    text: `an air-entraining agent may be used as needed and a water reducer at the contractor's option.`,
    facts: [{ kind: 'air-entrainment', force: 'permit', act: { manner: 'as needed' } }],
    none: ['air-content', 'site-water', 'surface-water', { kind: 'air-entrainment', force: ['require', 'ban'] }],
  },
  {
    name: 'trap: a garbled ratio',
    section: 'MIXTURES',
    text: `water cement ratio: six sacks per yard, 4 inch slump, 3500 psi at 28 days, stone to be clean and hard.`,
    facts: [
      { kind: 'strength', force: 'require', value: { target: 3500, unit: 'psi' }, age: 28 },
      { kind: 'slump', force: 'require', value: { target: 4, unit: 'in' } },
    ],
    none: ['w-cm', 'aggregate-size', 'air-content'],
  },
  {
    name: 'trap: wetted when finishing is over, then covered',
    section: 'CURING',
    text: `when finishing is over and the concrete has hardened wet the slab and lay polyethylene film over it, lap the film 12
inches and leave it for 7 days.`,
    facts: [
      { kind: 'curing-method', force: 'require', act: { manner: 'sheet' } },
      { kind: 'curing-duration', force: 'require', value: { target: 7, unit: 'd' } },
    ],
    none: ['surface-water', 'site-water', { kind: 'finish', force: ['ban'] }],
  },
  {
    name: 'the condition comes first',
    section: 'CONCRETE WORK',
    text: `Where exposed to weather, concrete shall have 5 to 7 percent air and a water-cementitious materials ratio of not over
0.45.`,
    facts: [
      { kind: 'air-content', force: 'require', value: { min: 5, max: 7, unit: 'percent' } },
      { kind: 'w-cm', force: 'require', value: { max: 0.45, unit: '' } },
    ],
    none: ['curing-duration', 'cold-weather'],
  },
  {
    name: 'a face wetted ahead of the broom',
    section: 'FINISHING',
    text: `steel trowel the ramp smooth, wet the surface ahead of the broom, and broom it.`,
    facts: [
      { kind: 'surface-water', force: 'require', act: { object: 'surface' } },
      { kind: 'finish', force: 'require', act: { steps: ['hard trowel', 'broom'] }, subject: ['ramp'] },
    ],
    none: ['curing-method', { kind: 'surface-water', force: ['ban'] }],
  },
  {
    name: 'trap: a condition in days',
    section: 'OPENING',
    text: `walks may be opened to feet after 3 days of curing and bollards may be set when the concrete is 7 days old.`,
    facts: [],
    none: ['curing-duration', 'cold-protection', 'deicer-hold-off'],
  },
  {
    name: 'a ban until something ends is an order to wait',
    section: 'FINISHING',
    text: `no floating and no brooming is to be done while bleed water lies on the surface.`,
    facts: [{ kind: 'bleed-water', force: 'ban', act: { verb: 'finish over' } }],
    none: ['surface-water', { kind: 'bleed-water', force: ['permit'] }],
    free: ['finish'],
  },
  {
    name: 'wait, broom, cure',
    section: 'FINISHING',
    text: `begin brooming the plaza after the bleed water has evaporated and start curing as soon as the texture will hold.`,
    facts: [
      { kind: 'bleed-water', force: 'require', act: { verb: 'wait' } },
      { kind: 'finish', force: 'require', act: { steps: ['broom'] }, subject: ['plaza'] },
    ],
    none: ['surface-water', 'curing-duration', { kind: 'bleed-water', force: ['ban', 'permit'] }],
  },
  {
    name: 'trap: water that is clean, in a list',
    section: 'MATERIALS',
    text: `water clean and fit to drink; sand washed; slump cone, air meter and thermometer by the contractor; 2 percent retainage.`,
    facts: [],
    none: ['surface-water', 'site-water', 'w-cm', 'air-content', 'slump', 'scm'],
  },
];
