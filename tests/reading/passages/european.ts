/** Passages as a British or a continental office writes them: kerbs and bays, classes with an X, now and then a decimal comma. */
import type { Passage } from './passage.ts';

export const european: readonly Passage[] = [
  {
    name: 'a mix for kerbs',
    section: '4.2 Concrete',
    text: `Kerbs and channels: exposure class XF4, minimum air content 4.5 %, maximum free water/cement ratio 0.45, maximum
aggregate size 20 mm.`,
    facts: [
      { kind: 'exposure-class', name: 'XF4' },
      { kind: 'air-content', force: 'require', value: { min: 4.5, unit: 'percent' } },
      { kind: 'w-cm', force: 'require', value: { max: 0.45, unit: '' } },
      { kind: 'aggregate-size', force: 'require', value: { target: 20, unit: 'mm' } },
    ],
    none: ['strength', 'scm'],
  },
  {
    name: 'a decimal comma',
    section: '4.3 Air',
    text: `Air content of the fresh concrete: 5,5 % ± 1,0 %.`,
    facts: [{ kind: 'air-content', force: 'require', value: { target: 5.5, plus: 1, minus: 1, unit: 'percent' } }],
    none: ['scm', 'strength'],
  },
  {
    name: 'brushed while green',
    section: '7.4 Surface finish',
    text: `Brush the surface lightly with a stiff bass broom whilst the concrete is still green.`,
    facts: [{ kind: 'finish', force: 'require', act: { steps: ['broom'] } }],
    none: ['surface-water', 'bleed-water', { kind: 'finish', saying: 'trowel' }],
  },
  {
    name: 'trap: a tamped texture does not work water in',
    section: '7.4 Surface finish',
    text: `Tamp the surface of the service road with the edge of a board to leave parallel ribs.`,
    facts: [],
    none: ['bleed-water', 'over-finishing', 'surface-water', { kind: 'finish', saying: 'trowel' }],
    free: ['finish'],
  },
  {
    name: 'days in words, under polythene',
    section: '7.6 Curing',
    text: `Prevent evaporation for a minimum period of seven days with polythene sheeting held down at its edges.`,
    facts: [
      { kind: 'curing-duration', force: 'require', value: { min: 7, unit: 'd' } },
      { kind: 'curing-method', force: 'require', act: { manner: 'sheet' } },
    ],
    none: ['evaporation', 'surface-water'],
  },
  {
    name: 'trap: the sub-base is damped down',
    section: '7.1 Sub-base',
    text: `Damp down the sub-base lightly before the concrete is discharged onto it.`,
    facts: [],
    none: ['surface-water', 'curing-method', 'site-water', 'fogging'],
  },
  {
    name: 'a power float and a power trowel on a depot floor',
    section: '7.5 Floors',
    text: `Bay floors inside the depot: power float, then power trowel.`,
    facts: [{ kind: 'finish', force: 'require', act: { steps: ['power float', 'power trowel'] }, exterior: 'no' }],
    none: ['surface-water', { kind: 'finish', saying: 'hard trowel' }],
  },
  {
    name: 'trap: a footpath is closed and lit',
    section: '1.9 Public safety',
    text: `Close the footpath for three days after concreting; barriers and lights are by the Contractor.`,
    facts: [],
    none: ['curing-duration', 'curing', 'deicer-hold-off'],
  },
  {
    name: 'slag cement by its British letters',
    section: '4.4 Cement',
    text: `GGBS shall not exceed 50 % of the total cementitious content by mass.`,
    facts: [{ kind: 'scm', force: 'require', value: { max: 50, unit: 'percent' }, of: 'slag cement' }],
    none: ['air-content', 'chloride'],
  },
  {
    name: 'no salts, but grit',
    section: '9.2 Winter service',
    text: `De-icing salts shall not be spread on new ramps during the first winter. Grit may be spread.`,
    facts: [
      { kind: 'deicer-use', force: 'ban', act: { verb: 'spread' }, subject: ['ramp'] },
      { kind: 'deicer-use', force: 'permit', act: { verb: 'sand' } },
    ],
    none: ['accelerator', 'chloride'],
  },
  {
    name: 'trap: a strength at which mats come off',
    section: '7.8 Frost',
    text: `Insulating mats shall stay in place until the concrete has reached 5 N/mm².`,
    facts: [],
    none: ['strength', 'curing-duration', 'surface-water'],
  },
  {
    name: 'trap: a bituminous course',
    section: '5.1 Surfacing',
    text: `Bituminous concrete surface course: 30 mm thick, 10 mm aggregate, voids of 3 to 6 %.`,
    facts: [],
    none: ['air-content', 'strength', 'aggregate-size', 'finish'],
  },
  {
    name: 'classes by element',
    section: '4.1 Exposure',
    text: `Walls: exposure classes XC4 and XF1. Decks: exposure classes XD3 and XF4.`,
    facts: [
      { kind: 'exposure-class', name: 'XC4', subject: ['wall'] },
      { kind: 'exposure-class', name: 'XF1', subject: ['wall'] },
      { kind: 'exposure-class', name: 'XD3', subject: ['deck'] },
      { kind: 'exposure-class', name: 'XF4', subject: ['deck'] },
    ],
    none: ['strength', 'air-content'],
  },
  {
    name: 'trap: a hold before salt, in weeks and in the passive',
    section: '9.2 Winter service',
    text: `Not fewer than 28 days shall pass before de-icing salt is spread on a new ramp.`,
    facts: [{ kind: 'deicer-hold-off', force: 'require', value: { min: 28, unit: 'd' } }],
    none: ['curing-duration', 'accelerator', { kind: 'deicer-use', force: ['require', 'permit'] }],
    free: ['deicer-use'],
  },
  {
    name: 'trap: mortar and grout of the kerbs',
    section: '6.2 Bedding',
    text: `Bed the units on mortar of 1 part cement to 3 parts sand, 10 to 30 mm thick. Wet the backs of the units first.`,
    facts: [],
    none: ['surface-water', 'aggregate-size', 'w-cm', 'scm', 'site-water'],
  },
];
