/** Passages as a scanner gives them back: letters for digits, lost signs, blanks inside words, margins inside sentences. */
import type { Passage } from './passage.ts';

export const scanned: readonly Passage[] = [
  {
    name: 'a lost dash between two figures',
    section: 'CONCRETE FOR CURBS',
    text: `Air content shall be 5 \uFFFD 8%.`,
    facts: [{ kind: 'air-content', force: 'require', value: { min: 5, max: 8, unit: 'percent' } }],
    none: ['strength', 'scm'],
  },
  {
    name: 'a soft hyphen between two figures',
    section: 'CONCRETE FOR CURBS',
    text: `Entrained air: 5\u00AD7 percent of the volume.`,
    facts: [{ kind: 'air-content', force: 'require', value: { min: 5, max: 7, unit: 'percent' } }],
    none: ['strength', 'scm'],
  },
  {
    name: 'trap: a share of the trucks with letters for digits',
    section: 'TESTING',
    text: `The inspector shall test lO% of the trucks for s1ump.`,
    facts: [],
    none: ['air-content', 'scm', 'w-cm', 'slump'],
  },
  {
    name: 'blanks lost and blanks added',
    section: 'CONCRETE FOR WALKS',
    text: `Entrained air is7% and the strength of the concrete 4 , 200 p.s.i. at 28 days .`,
    facts: [
      { kind: 'air-content', value: { target: 7, unit: 'percent' } },
      { kind: 'strength', value: { target: 4200, unit: 'psi' }, age: 28 },
    ],
    none: ['scm', 'slump'],
  },
  {
    name: 'a plus that was a plus or minus',
    section: 'CONCRETE FOR WALKS',
    text: `Air content 5 + 1 %.`,
    facts: [{ kind: 'air-content', force: 'require', value: { target: 5, plus: 1, minus: 1, unit: 'percent' } }],
    none: ['strength', 'scm'],
  },
  {
    name: 'words torn apart',
    section: 'CURING',
    text: `Cure the slab for seven (7) consecutive da ys under wet bur lap.`,
    facts: [
      { kind: 'curing-duration', force: 'require', value: { target: 7, unit: 'd' } },
      { kind: 'curing-method', force: 'require', act: { manner: 'wet cover' } },
    ],
    none: ['surface-water'],
  },
  {
    name: 'a page number inside the sentence',
    section: 'FINISHING',
    text: `All walks shall be given a

- 12 -

broom finish square to traffic.`,
    facts: [{ kind: 'finish', force: 'require', act: { steps: ['broom'] } }],
    none: ['air-content', 'aggregate-size', { kind: 'finish', saying: 'trowel' }],
  },
  {
    name: 'trap: inch marks read as ones',
    section: 'CONSISTENCY',
    text: `Slump shall be 311 to 511.`,
    facts: [],
    none: ['strength', 'air-content', 'aggregate-size', 'w-cm'],
  },
  {
    name: 'a ban torn apart is still a ban',
    section: 'FINISHING',
    text: `A steel trow el finish on exterior slabs is not per mitted.`,
    facts: [{ kind: 'finish', force: 'ban', act: { steps: ['hard trowel'] }, exterior: 'yes' }],
    none: [{ kind: 'finish', force: ['require', 'permit'] }],
  },
  {
    name: 'a flexural strength with a letter in it',
    section: 'CONCRETE FOR STREETS',
    text: `The pavement shall show a modulus of rupture of at least 6O0 psi at 28 days.`,
    facts: [{ kind: 'strength', force: 'require', value: { min: 600, unit: 'psi' }, of: 'flexural' }],
    none: ['air-content', 'curing-duration'],
  },
  {
    name: 'a ratio with a letter for its nought',
    section: 'CONCRETE FOR STREETS',
    text: `The water-cement ratio shall be O.45 maximum.`,
    facts: [{ kind: 'w-cm', force: 'require', value: { max: 0.45, unit: '' } }],
    none: ['strength', 'air-content'],
  },
  {
    name: 'misspelt operations',
    section: 'FINISHING',
    text: `After flaoting, draw a stiff broom across the surfcae.`,
    facts: [{ kind: 'finish', force: 'require', act: { steps: ['float', 'broom'] } }],
    none: ['surface-water', 'bleed-water', { kind: 'finish', saying: 'trowel' }],
  },
  {
    name: 'trap: a fraction that cannot be read',
    section: 'AGGREGATE',
    text: `Coarse aggregate shall be not more than \uFFFD inch in its largest size.`,
    facts: [],
    none: ['aggregate-size', 'slump', 'air-content'],
  },
  {
    name: 'trap: numbers of lines in the margin',
    section: 'BASE',
    text: `12 The base shall be wetted and
13 rolled to 95 per cent of its density
14 before concrete is laid on it.`,
    facts: [],
    none: ['surface-water', 'air-content', 'strength', 'curing-method'],
  },
  {
    name: 'trap: coring is not curing',
    section: 'TESTING',
    text: `Coring of the slab shall be done by the laboratory at 28 days.`,
    facts: [],
    none: ['curing-duration', 'curing', 'curing-method', 'strength'],
  },
  {
    name: 'line breaks as tags',
    section: 'CONCRETE FOR WALKS',
    text: `Strength: 4,000 psi <br />Air: 6% <br />Slump: 4 inches maximum <br />`,
    facts: [
      { kind: 'strength', force: 'require', value: { target: 4000, unit: 'psi' } },
      { kind: 'air-content', force: 'require', value: { target: 6, unit: 'percent' } },
      { kind: 'slump', force: 'require', value: { max: 4, unit: 'in' } },
    ],
    none: ['aggregate-size', 'scm'],
  },
  {
    name: 'words joined where a hyphen fell out',
    section: 'CURING',
    text: `Lay a moistureretaining cover over the slab and leave it for 7 days. Saw joints to onequarter of the depth.`,
    facts: [
      { kind: 'curing-duration', force: 'require', value: { target: 7, unit: 'd' } },
      { kind: 'curing-method', force: 'require' },
    ],
    none: ['aggregate-size', 'surface-water'],
  },
  {
    name: 'trap: a bid form with sums and shares',
    section: 'PROPOSAL',
    text: `5% of the bid in cash . 4000 sq. ft. of walk at 6 in . Retainage lO% for 30 days .`,
    facts: [],
    none: ['air-content', 'strength', 'aggregate-size', 'curing-duration', 'slump'],
  },
  {
    name: 'trap: an air compressor on a list of plant',
    section: 'PLANT',
    text: `Air compressor , 185 c.f.m. , 7 days @ 6% of list . Water truck , 3 , 000 gal .`,
    facts: [],
    none: ['air-content', 'curing-duration', 'surface-water', 'site-water', 'strength'],
  },
];
