/** Passages as a federal guide writes them: brackets to choose from, notes between rows of asterisks, metric first. */
import type { Passage } from './passage.ts';

export const guide: readonly Passage[] = [
  {
    name: 'an air content still to be chosen',
    section: '2.5 CONCRETE',
    text: `Air content shall be [6] [5-1/2] percent for exterior slabs.`,
    facts: [{ kind: 'choice' }],
    none: ['strength', 'w-cm', 'scm'],
    free: ['air-content'],
  },
  {
    name: 'trap: a blank where the ratio goes',
    section: '2.5 CONCRETE',
    text: `Provide concrete with a water-cementitious materials ratio not over [_____].`,
    facts: [{ kind: 'choice' }],
    none: ['w-cm', 'strength', 'air-content'],
  },
  {
    name: 'trap: a note to the designer is not contract text',
    section: '2.5 CONCRETE',
    text: `**************************************************************************
NOTE: Where the slab will be salted, the designer picks 7 percent air and a
ratio of 0.40; delete both for warm regions.
**************************************************************************

Provide concrete as the mixture schedule shows.`,
    facts: [],
    none: ['air-content', 'w-cm', 'deicer-use'],
  },
  {
    name: 'metric and inch side by side without a parenthesis',
    section: '2.5 CONCRETE',
    text: `Slump shall be at most 75 mm 3 inches and the nominal maximum size of aggregate 19 mm 3/4 inch.`,
    facts: [
      { kind: 'slump', force: 'require', value: { max: 75, unit: 'mm' } },
      { kind: 'aggregate-size', force: 'require', value: { target: 19, unit: 'mm' } },
    ],
    none: ['air-content', 'strength'],
  },
  {
    name: 'a bracketed article that is kept',
    text: `]3.7 CURING

[3.7.1 Moist Curing

Cover the slab with wet burlap and keep the burlap wet for 7 days.
]`,
    facts: [
      { kind: 'curing-duration', value: { target: 7, unit: 'd' } },
      { kind: 'curing-method', act: { manner: 'wet cover' } },
    ],
    none: ['surface-water'],
  },
  {
    name: 'trap: the size of a sample panel',
    section: '1.6 SAMPLE PANEL',
    text: `Provide a sample panel 900 by 900 mm 3 by 3 feet, 75 mm 3 inches thick, and keep it until the work is accepted.`,
    facts: [],
    none: ['aggregate-size', 'slump', 'curing-duration', 'slope'],
  },
  {
    name: 'trap: water and salt of a floor hardener',
    section: '3.6 FLOOR HARDENER',
    text: `Mix the hardener at 1 kg of salt to 5 liters of water 1.7 pounds to the gallon and mop it on the cured floor in three
coats.`,
    facts: [],
    none: ['surface-water', 'site-water', 'w-cm', 'deicer-use', 'deicers', 'accelerator', 'chloride'],
  },
  {
    name: 'trap: a difference of temperature is not a temperature',
    section: '3.8 COLD WEATHER',
    text: `When protection ends, let the face cool by no more than 5 °F (2.8 °C) in any hour.`,
    facts: [{ kind: 'cold-weather', act: { verb: 'cool' } }],
    none: ['curing-temperature', 'curing-duration', 'concrete-temperature'],
  },
  {
    name: 'trap: burlap that soaks up bleed water does not cure',
    section: '3.5 FINISHING',
    text: `If bleed water stands on the surface before floating, drag it off with a hose or soak it up with dry burlap. Do not
use dry cement to soak it up.`,
    facts: [
      { kind: 'bleed-water', force: 'require', act: { verb: 'remove' } },
      { kind: 'dry-cement', force: 'ban' },
    ],
    none: ['curing-method', 'surface-water'],
  },
  {
    name: 'trap: magnesium floats, and a binder named without an amount',
    section: '3.5 FINISHING',
    text: `Finish concrete containing silica fume with magnesium floats.`,
    facts: [{ kind: 'finish', force: 'require', act: { steps: ['float'] } }],
    none: ['scm', { kind: 'finish', saying: 'trowel' }, { kind: 'finishing-tool', saying: 'trowel' }],
  },
  {
    name: 'trap: abrasive grains are neither dry cement nor a dry shake',
    section: '3.6 ABRASIVE FINISH',
    text: `Shake aluminum oxide grains evenly over the floated ramp of the pump room at 1.2 kg/square meter 1/4 pound per square
foot.`,
    facts: [],
    none: ['dry-cement', 'dry-shake', 'aggregate-size', 'surface-water'],
    free: ['finish'],
  },
  {
    name: 'trap: a strikeoff shod with steel is no steel trowel',
    section: '3.5 FINISHING',
    text: `Strike off with a steel-shod template riding the forms, then float from bridges that span the slab.`,
    facts: [{ kind: 'finish', force: 'require', act: { steps: ['strike off', 'float'] } }],
    none: [
      { kind: 'finish', saying: 'trowel' },
      { kind: 'finishing-tool', saying: 'trowel' },
    ],
  },
  {
    name: 'trap: a width said twice',
    section: '3.4 JOINTS',
    text: `In walks (1 to 3 m wide) 3 to 10 feet wide, place one joint down the middle, sawed to [one-quarter] [one-third] of the
depth.`,
    facts: [],
    none: ['air-content', 'aggregate-size', 'slump', 'curing-duration'],
  },
  {
    name: 'trap: steel forms, steel tampers and steel bars',
    section: '3.2 FORMS',
    text: `Provide steel forms 250 mm 10 inches high. Consolidate against them with steel tampers and keep steel bars 50 mm 2 inches
clear.`,
    facts: [],
    none: ['finish', 'finishing-tool', 'aggregate-size', 'slump'],
  },
  {
    name: 'under no circumstances',
    section: '3.5 FINISHING',
    text: `Under no circumstances shall water be sprayed on the surface to ease finishing.`,
    facts: [{ kind: 'surface-water', force: 'ban', act: { object: 'surface' } }],
    none: ['fogging', 'curing-method', { kind: 'surface-water', force: ['permit', 'require'] }],
  },
  {
    name: 'no water at the site, and a flexural strength',
    section: '2.5 CONCRETE',
    text: `Do not add water at the site. Flexural strength shall be at least 4.5 MPa 650 psi at 28 days.`,
    facts: [
      { kind: 'site-water', force: 'ban' },
      { kind: 'strength', force: 'require', value: { min: 4.5, unit: 'MPa' }, of: 'flexural', age: 28 },
    ],
    none: ['surface-water', 'curing-duration', { kind: 'site-water', force: ['permit', 'require'] }],
  },
  {
    name: 'trap: water ponded to cure',
    section: '3.7 CURING',
    text: `After final set, pond water on the slab 25 mm 1 inch deep and keep it there for 7 days.`,
    facts: [
      { kind: 'curing-duration', force: 'require', value: { target: 7, unit: 'd' } },
      { kind: 'curing-method', force: 'require', act: { manner: 'water' } },
    ],
    none: ['surface-water', 'aggregate-size', 'bleed-water', 'site-water'],
  },
];
