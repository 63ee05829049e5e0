/** Passages as a highway agency writes them: numbered articles, classes of concrete, tables. */
import type { Passage } from './passage.ts';

export const highway: readonly Passage[] = [
  {
    name: 'a table of classes',
    section: '621.02.01 CLASSES OF CONCRETE',
    text: `| Class | Minimum 28-day strength, psi | Maximum w/cm | Air, percent |
| --- | --- | --- | --- |
| S | 4,500 | 0.44 | 5.0 to 8.0 |
| F | 3,000 | 0.58 | none required |`,
    facts: [
      { kind: 'strength', force: 'require', value: { min: 4500, unit: 'psi' }, age: 28 },
      { kind: 'w-cm', force: 'require', value: { max: 0.44, unit: '' } },
      { kind: 'air-content', force: 'require', value: { min: 5, max: 8, unit: 'percent' } },
      { kind: 'strength', force: 'require', value: { min: 3000, unit: 'psi' }, age: 28 },
      { kind: 'w-cm', force: 'require', value: { max: 0.58, unit: '' } },
    ],
    none: ['exposure-class', 'slump'],
  },
  {
    name: 'a target in mixed fractions, plus or minus',
    section: '621.02.02 AIR',
    text: `The concrete as deposited shall contain 6-1/4 percent of entrained air, plus or minus 1-1/4 percent.`,
    facts: [
      { kind: 'air-content', force: 'require', value: { target: 6.25, plus: 1.25, minus: 1.25, unit: 'percent' } },
    ],
    none: ['scm', 'strength'],
  },
  {
    name: 'trap: percent of density and of moisture',
    section: '621.03.01 SUBGRADE',
    text: `Compact the subgrade to 96 percent of maximum density at a moisture content within 2 percent of optimum before the
forms are set.`,
    facts: [],
    none: ['air-content', 'w-cm', 'scm', 'curing-strength', 'site-water'],
  },
  {
    name: 'two curing times, each with its temperature',
    section: '621.03.08 CURING',
    text: `Keep the burlap wet for 60 hours where the air stays above 55°F, and for 120 hours where it falls below 55°F.`,
    facts: [
      { kind: 'curing-duration', force: 'require', value: { target: 60, unit: 'h' } },
      { kind: 'curing-duration', force: 'require', value: { target: 120, unit: 'h' } },
      { kind: 'curing-method', force: 'require', act: { manner: 'wet cover' } },
    ],
    none: ['surface-water', 'air-content'],
  },
  {
    name: 'water held back, added once before discharge',
    section: '621.03.03 DELIVERY',
    text: `Water withheld at the plant may be added at the site once, before discharge begins, provided that the design
water-cementitious materials ratio is not exceeded.`,
    facts: [{ kind: 'site-water', force: 'permit', act: { manner: 'controlled' } }],
    none: ['surface-water', 'w-cm', 'bleed-water'],
  },
  {
    name: 'water on the surface is prohibited, fog above it is not',
    section: '621.03.06 FINISHING',
    text: `Adding water to the surface to aid finishing is prohibited. Fog nozzles may be used to hold humidity above the
slab.`,
    facts: [
      { kind: 'surface-water', force: 'ban', act: { object: 'surface' } },
      { kind: 'fogging', force: 'permit' },
    ],
    none: ['site-water', { kind: 'surface-water', force: ['permit', 'require'] }],
  },
  {
    name: 'gallons a bag with an abbreviated maximum',
    section: '621.02.03 WATER',
    text: `Water: 6.25 gal. (max.) per bag of cement, free moisture in the aggregates counted.`,
    facts: [{ kind: 'w-cm', force: 'require', value: { max: 0.555, unit: '' } }],
    none: ['site-water', 'air-content'],
  },
  {
    name: 'trap: caps on fly ash and slag cement, and Class F is no exposure',
    section: '621.02.04 CEMENTITIOUS MATERIALS',
    text: `Class F fly ash may replace portland cement up to 20 percent by weight. Slag cement may replace it up to 35
percent.`,
    facts: [
      { kind: 'scm', force: ['permit', 'require'], value: { max: 20, unit: 'percent' }, of: 'fly ash' },
      { kind: 'scm', force: ['permit', 'require'], value: { max: 35, unit: 'percent' }, of: 'slag cement' },
    ],
    none: ['exposure-class', 'air-content'],
  },
  {
    name: 'trap: the class and the item of a State form',
    section: '621.02.05 REFERENCE',
    text: `Concrete for headwalls shall be Class C of the State form, item 512, as amended by the plans.`,
    facts: [],
    none: ['exposure-class', 'strength', 'air-content', 'scm'],
  },
  {
    name: 'trap: a time before traffic',
    section: '621.03.12 OPENING TO TRAFFIC',
    text: `Traffic shall stay off the pavement until the Engineer agrees, and in no case shall it be let on within 4 days.`,
    facts: [],
    none: ['curing-duration', 'curing', 'cold-protection', 'deicer-hold-off'],
  },
  {
    name: 'trap: a damp burlap drag is neither water nor curing',
    section: '621.03.06 FINISHING',
    text: `Drag the surface lengthwise with damp burlap, then tine the bus lanes transversely.`,
    facts: [{ kind: 'finish', force: 'require', act: { steps: ['burlap drag', 'tine'] } }],
    none: ['surface-water', 'curing-method', 'curing', 'aggregate-size'],
  },
  {
    name: 'trap: calcium chloride on a haul road',
    section: '621.03.15 DUST',
    text: `Calcium chloride flake may be spread on haul roads to lay the dust, at 1.5 pounds to the square yard.`,
    facts: [],
    none: ['deicer-use', 'deicers', 'accelerator', 'chloride', 'air-content'],
  },
  {
    name: 'trap: a compound put on as a fine mist',
    section: '621.03.08 CURING',
    text: `Spray the white compound in two passes as a fine mist until the face shows an even white.`,
    facts: [{ kind: 'curing-method', force: 'require', act: { manner: 'compound' } }],
    none: ['surface-water', 'fogging', 'curing-duration'],
  },
  {
    name: 'trap: a window of weather in a time-limited ban',
    section: '621.03.09 RAIN',
    text: `Where the membrane is rained on inside 4 hours, recoat it. Do not start a placement when rain is forecast within the
next 36 hours.`,
    facts: [],
    none: ['curing-duration', 'surface-water', 'cold-protection', 'drying'],
  },
  {
    name: 'trap: placing between two temperatures is not curing',
    section: '621.03.10 WEATHER LIMITS',
    text: `Concrete as placed shall be no cooler than 50°F and no hotter than 90°F. Do not place on frozen ground.`,
    facts: [{ kind: 'cold-weather', force: 'ban', act: { verb: 'frozen base' } }],
    none: ['curing-temperature', 'curing-duration', 'air-content'],
  },
  {
    name: 'trap: losses and shares of an aggregate',
    section: '621.02.06 COARSE AGGREGATE',
    text: `Loss after five cycles of magnesium sulfate shall not exceed 12 percent; soft pieces shall not exceed 3 percent.`,
    facts: [],
    none: ['air-content', 'scm', 'deicer-use', 'deicers', 'aggregate-size'],
  },
  {
    name: 'trap: water for a leak test and for washing',
    section: '621.03.14 CLEANING',
    text: `Wash the hardened deck with water at 3,000 psi before the membrane is laid. Fill the gutters with water to find leaks.`,
    facts: [],
    none: ['surface-water', 'strength', 'site-water', 'curing-method', 'curing'],
  },
  {
    name: 'working of the surface limited for the sake of the air',
    section: '621.03.06 FINISHING',
    text: `Limit working of the surface so that the entrained air stays in the top of the slab.`,
    facts: [{ kind: 'over-finishing', act: { verb: 'limit' } }],
    none: ['finish', 'air-content', { kind: 'air-entrainment', force: ['ban', 'permit', 'waive'] }],
  },
  {
    name: 'water as the finisher asks',
    section: '621.03.03 DELIVERY',
    text: `The driver may add water to the load as the finisher asks, to restore slump.`,
    facts: [{ kind: 'site-water', force: 'permit', act: { manner: 'uncontrolled' } }],
    none: ['surface-water', 'slump', 'w-cm'],
  },
  {
    name: 'five-thousand-pound concrete',
    section: '621.02.01 CLASSES OF CONCRETE',
    text: `Use 5,000-pound concrete in the bus apron, with a water-cement ratio of 0.42 by weight.`,
    facts: [
      { kind: 'strength', force: 'require', value: { target: 5000, unit: 'psi' }, subject: ['bus apron'] },
      { kind: 'w-cm', force: 'require', value: { target: 0.42, unit: '' } },
    ],
    none: ['cement-content', 'air-content'],
  },
  {
    name: 'trap: steel as a share of the section',
    section: '621.03.05 REINFORCEMENT',
    text: `Longitudinal steel shall be 0.6 percent of the section. Dowel bars: 1-1/4 inch by 18 inches, set 12 inches apart.`,
    facts: [],
    none: ['air-content', 'w-cm', 'aggregate-size', 'scm', 'chloride'],
  },
];
