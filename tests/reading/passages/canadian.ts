/** Passages as a Canadian town or consultant writes them: .1 and .2, classes with a hyphen, metric. */
import type { Passage } from './passage.ts';

export const canadian: readonly Passage[] = [
  {
    name: 'a mix in one line',
    section: '2.3 CONCRETE MIXES',
    text: `.1 Exterior flatwork: exposure class C-2, 32 MPa at 28 days, maximum water-cementing materials ratio 0.45, air content
5 to 8 %, nominal maximum aggregate size 20 mm.`,
    facts: [
      { kind: 'exposure-class', name: 'C-2', subject: ['flatwork'], exterior: 'yes' },
      { kind: 'strength', force: 'require', value: { target: 32, unit: 'MPa' }, age: 28, subject: ['flatwork'] },
      { kind: 'w-cm', force: 'require', value: { max: 0.45, unit: '' }, subject: ['flatwork'] },
      {
        kind: 'air-content',
        force: 'require',
        value: { min: 5, max: 8, unit: 'percent' },
        subject: ['flatwork'],
        exterior: 'yes',
      },
      { kind: 'aggregate-size', force: 'require', value: { target: 20, unit: 'mm' }, subject: ['flatwork'] },
    ],
    none: ['scm', 'curing-duration'],
  },
  {
    name: 'air to a table of the standard',
    section: '2.3 CONCRETE MIXES',
    text: `.2 Air content: to CSA A23.1, Table 4, for the size of aggregate used.`,
    facts: [{ kind: 'elsewhere', name: 'air' }],
    none: ['air-content', 'aggregate-size', 'exposure-class', 'w-cm'],
  },
  {
    name: 'an interior floor without air',
    section: '2.3 CONCRETE MIXES',
    text: `.3 Interior floors: exposure class N-CF, 25 MPa at 28 days, water-cementing materials ratio not over 0.55. Do not entrain
air.`,
    facts: [
      { kind: 'exposure-class', name: 'N-CF', subject: ['floor'], exterior: 'no' },
      { kind: 'strength', force: 'require', value: { target: 25, unit: 'MPa' }, subject: ['floor'], exterior: 'no' },
      { kind: 'w-cm', force: 'require', value: { max: 0.55, unit: '' }, subject: ['floor'] },
      { kind: 'air-entrainment', force: 'ban' },
    ],
    none: ['air-content', { kind: 'air-entrainment', force: ['require', 'permit'] }],
  },
  {
    name: 'curing until both a time and a share of the strength',
    section: '3.5 CURING',
    text: `.1 Cure sidewalks for at least 7 days at 10 °C or above and until 70 % of the specified strength is reached.`,
    facts: [
      { kind: 'curing-duration', force: 'require', value: { min: 7, unit: 'd' }, subject: ['sidewalk'] },
      { kind: 'curing-temperature', force: 'require', value: { min: 10, unit: 'degC' } },
    ],
    none: ['air-content', 'strength', 'scm'],
  },
  {
    name: 'trap: a season of months is no curing',
    section: '1.5 SCHEDULE',
    text: `.1 Place exterior flatwork between 1 May and 15 September.`,
    facts: [{ kind: 'season', name: 'mild months' }],
    none: ['curing-duration', 'deicer-hold-off', 'air-content'],
  },
  {
    name: 'trap: granular base compacted and sprinkled',
    section: '3.1 BASE',
    text: `.2 Compact granular base to 98 % of standard maximum dry density; sprinkle where it is dusty.`,
    facts: [],
    none: ['air-content', 'surface-water', 'scm', 'curing-method', 'strength'],
  },
  {
    name: 'sodium chloride off the first winter',
    section: '3.9 OPENING',
    text: `.3 Sodium chloride shall not be used on new sidewalks for the first winter.`,
    facts: [
      {
        kind: 'deicer-use',
        force: 'ban',
        act: { verb: 'spread', material: 'sodium chloride' },
      },
    ],
    none: ['accelerator', 'chloride', { kind: 'deicer-use', force: ['permit', 'require'] }],
  },
  {
    name: 'water added at the truck once, within the mix',
    section: '3.2 DELIVERY',
    text: `.1 Water may be added at the site once only, before discharge, and not beyond the specified slump or the maximum
water-cementing materials ratio.`,
    facts: [{ kind: 'site-water', force: 'permit', act: { manner: 'controlled' } }],
    none: ['surface-water', 'w-cm'],
  },
  {
    name: 'trap: a ban on the trowel is no ban on air',
    section: '3.4 FINISHING',
    text: `.5 A steel trowel finish shall not be given to air-entrained concrete.`,
    facts: [{ kind: 'finish', force: 'ban', act: { steps: ['hard trowel'] } }],
    none: ['air-content', { kind: 'air-entrainment', force: ['ban', 'waive'] }],
  },
  {
    name: 'a strength with its twin',
    section: '2.3 CONCRETE MIXES',
    text: `.4 Compressive strength of ramps: 35 MPa (5,075 psi) at 28 days.`,
    facts: [{ kind: 'strength', force: 'require', value: { target: 35, unit: 'MPa' }, age: 28, subject: ['ramp'] }],
    none: ['air-content', 'curing-duration'],
  },
  {
    name: 'trap: slag under the slab',
    section: '2.1 FILL',
    text: `.2 Blast furnace slag shall not be used as fill under slabs, nor as coarse aggregate.`,
    facts: [],
    none: ['scm', 'exposure-class', 'aggregate-size'],
  },
  {
    name: 'a cap on all supplementary materials',
    section: '2.2 CEMENTITIOUS MATERIALS',
    text: `.1 Supplementary cementing materials shall not exceed 25 % of the mass of cementing materials in sidewalks.`,
    facts: [{ kind: 'scm', force: 'require', value: { max: 25, unit: 'percent' }, subject: ['sidewalk'] }],
    none: ['air-content', 'chloride', 'exposure-class'],
  },
  {
    name: 'trap: fog and wind breaks',
    section: '3.3 HOT WEATHER',
    text: `.4 Where evaporation is above 0.5 kg/m2/h, put up wind breaks or raise the humidity with fog sprays above the deck.`,
    facts: [{ kind: 'fogging', force: 'require' }],
    none: ['surface-water', 'curing-duration', 'site-water'],
  },
  {
    name: 'trap: topsoil and seed',
    section: '3.12 REINSTATEMENT',
    text: `.1 Topsoil: 4 % organic matter at least, 100 mm thick. Water the sod daily for 14 days and keep it moist.`,
    facts: [],
    none: ['air-content', 'curing-duration', 'curing-method', 'surface-water', 'aggregate-size'],
  },
  {
    name: 'shares of fly ash and of silica fume',
    section: '2.2 CEMENTITIOUS MATERIALS',
    text: `.2 Fly ash: 15 to 25 % by mass of cementing materials. Silica fume: not more than 8 %.`,
    facts: [
      { kind: 'scm', force: 'require', value: { min: 15, max: 25, unit: 'percent' }, of: 'fly ash' },
      { kind: 'scm', force: 'require', value: { max: 8, unit: 'percent' }, of: 'silica fume' },
    ],
    none: ['air-content', 'chloride'],
  },
  {
    name: 'bleed water dragged off and not worked in',
    section: '3.4 FINISHING',
    text: `.3 Drag bleed water off with a hose. Do not work bleed water into the surface.`,
    facts: [
      { kind: 'bleed-water', force: 'require', act: { verb: 'remove' } },
      { kind: 'bleed-water', force: 'ban', act: { verb: 'work in' } },
    ],
    none: ['surface-water', 'site-water', { kind: 'bleed-water', saying: 'finish over' }],
  },
  {
    name: 'trap: a main is disinfected',
    section: '3.14 WATERMAIN',
    text: `.1 Disinfect the main with chlorine at 50 mg/L for 24 h; hold 1 MPa for two hours with no loss.`,
    facts: [],
    none: ['strength', 'curing-duration', 'chloride', 'deicers', 'surface-water'],
  },
];
