/** Passages out of an owner's design standard, which speaks to the designer and of the owner's own habits. */
import type { Passage } from './passage.ts';

export const university: readonly Passage[] = [
  {
    name: 'the engineer of record shall specify',
    section: '03 30 00 Concrete',
    text: `The Engineer of Record shall specify an air content of 6 percent for exterior flatwork.`,
    facts: [
      {
        kind: 'air-content',
        force: 'require',
        value: { target: 6, unit: 'percent' },
        addressee: 'designer',
        subject: ['flatwork'],
        exterior: 'yes',
      },
    ],
    none: ['strength', 'w-cm'],
  },
  {
    name: 'strengths to be specified, element by element',
    section: '03 30 00 Concrete',
    text: `Specify 28-day compressive strengths as follows: walks, 4,500 psi; footings, 3,000 psi.`,
    facts: [
      { kind: 'strength', force: 'require', value: { target: 4500, unit: 'psi' }, subject: ['walk'] },
      { kind: 'strength', force: 'require', value: { target: 3000, unit: 'psi' }, subject: ['footing'] },
    ],
    none: ['curing-duration', 'air-content'],
  },
  {
    name: 'what the grounds crew spreads',
    section: '32 13 13 Walks and Stairs',
    text: `The grounds crew keeps walks open with magnesium chloride brine; treat every walk and stair as salted.`,
    facts: [{ kind: 'deicers' }],
    none: ['accelerator', 'chloride', { kind: 'deicer-use', force: ['ban'] }],
    free: ['deicer-use'],
  },
  {
    name: 'trap: a ceiling on air indoors is no air outdoors',
    section: '03 35 00 Floors',
    text: `Indoor floors that receive a hard trowel finish shall hold no more than 3 percent of air in all.`,
    facts: [
      {
        kind: 'air-content',
        force: 'require',
        value: { max: 3, unit: 'percent' },
        subject: ['floor'],
        exterior: 'no',
      },
    ],
    none: [{ kind: 'air-entrainment', force: ['require', 'permit'] }, 'strength'],
    free: ['finish'],
  },
  {
    name: 'trap: optional mesh is not optional air',
    section: '32 13 13 Walks and Stairs',
    text: `Mesh in walks is optional. Fibers may be offered in its place.`,
    facts: [],
    none: ['air-entrainment', 'finish', 'scm', 'choice'],
  },
  {
    name: 'trap: a rock salt finish is no de-icer',
    section: '32 13 13 Walks and Stairs',
    text: `A rock salt finish is not allowed on campus walks.`,
    facts: [{ kind: 'finish', force: 'ban', act: { steps: ['rock salt'] } }],
    none: ['deicer-use', 'deicers', 'deicer-hold-off'],
  },
  {
    name: 'trap: the fall of a walk in percent',
    section: '32 13 13 Walks and Stairs',
    text: `Walks shall fall 2 percent across and no more than 5 percent along.`,
    facts: [],
    none: ['air-content', 'scm', 'chloride'],
  },
  {
    name: 'trap: flatness numbers',
    section: '03 35 00 Floors',
    text: `Hall floors: FF 35 and FL 25, measured within 72 hours. Storeroom floors: 1/8 inch in 10 feet.`,
    facts: [],
    none: ['exposure-class', 'strength', 'aggregate-size', 'curing-duration', 'air-content'],
  },
  {
    name: 'exposure classes given to elements',
    section: '03 30 00 Concrete',
    text: `Assign Exposure Class F3 to walks and ramps and Exposure Class F1 to walls.`,
    facts: [
      { kind: 'exposure-class', name: 'F3', subject: ['walk', 'ramp'] },
      { kind: 'exposure-class', name: 'F1', subject: ['wall'] },
    ],
    none: ['scm', 'strength', 'air-content'],
  },
  {
    name: 'a sealer does not stand in for air',
    section: '07 19 00 Water Repellents',
    text: `A penetrating sealer shall not be specified in place of entrained air.`,
    facts: [{ kind: 'sealer-instead', force: 'ban', act: { manner: 'air' } }],
    none: ['air-content', { kind: 'air-entrainment', force: ['ban', 'waive'] }],
  },
  {
    name: 'trap: a warranty in winters',
    section: '01 78 00 Warranty',
    text: `The contractor shall replace any walk that scales within two winters of acceptance.`,
    facts: [],
    none: ['deicer-hold-off', 'curing-duration', 'cold-protection', 'deicer-use'],
  },
  {
    name: 'trap: a test load and a soil in psi and percent',
    section: '31 20 00 Earthwork',
    text: `Test the buried line at 150 psi for two hours. Topsoil shall hold 3 to 6 percent of organic matter.`,
    facts: [],
    none: ['strength', 'air-content', 'curing-duration', 'scm'],
  },
  {
    name: 'recommended, not required',
    section: '32 13 13 Walks and Stairs',
    text: `Exterior stairs should contain 5 to 8 percent air, and a w/cm of 0.45 or less is suggested.`,
    facts: [
      { kind: 'air-content', force: 'recommend', value: { min: 5, max: 8, unit: 'percent' }, exterior: 'yes' },
      { kind: 'w-cm', force: 'recommend', value: { max: 0.45, unit: '' } },
    ],
    none: [{ kind: 'air-content', force: ['require'] }],
  },
  {
    name: 'a trowel on exterior work may not be specified',
    section: '32 13 13 Walks and Stairs',
    text: `Do not specify a steel trowel finish for exterior work.`,
    facts: [{ kind: 'finish', force: 'ban', act: { steps: ['hard trowel'] }, exterior: 'yes' }],
    none: [{ kind: 'finish', force: ['require', 'permit', 'recommend'] }],
  },
  {
    name: 'trap: a roof deck dries before the roofing',
    section: '07 50 00 Roofing',
    text: `Let new roof decks dry for 28 days before roofing. Slope insulation 1/4 inch per foot.`,
    facts: [],
    none: ['curing-duration', 'deicer-hold-off', 'aggregate-size', 'curing'],
  },
];
