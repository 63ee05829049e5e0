/** Passages as a town writes them in its code of ordinances: shall, doubled figures, lettered paragraphs. */
import type { Passage } from './passage.ts';

export const municipal: readonly Passage[] = [
  {
    name: 'air and strength in words with the figures doubled',
    section: '§ 18.204 CONCRETE FOR WALKS',
    text: `(a) Concrete placed in walks shall hold seven percent (7%) to nine percent (9%) of entrained air and shall have a
compressive strength of thirty-five hundred (3,500) pounds per square inch when twenty-eight (28) days old.`,
    facts: [
      { kind: 'air-content', force: 'require', value: { min: 7, max: 9, unit: 'percent' }, subject: ['walk'] },
      { kind: 'strength', force: 'require', value: { target: 3500, unit: 'psi' }, age: 28, subject: ['walk'] },
    ],
    none: ['scm', 'curing-duration'],
  },
  {
    name: 'water held down by the gallon and the bag',
    section: '§ 18.205 PROPORTIONS',
    text: `(b) Each batch shall carry no more than 5 1/2 gallons of water to the bag of cement, the moisture in the sand being
counted with it.`,
    facts: [{ kind: 'w-cm', force: 'require', value: { max: 0.488, unit: '' } }],
    none: ['site-water', 'surface-water', 'air-content'],
  },
  {
    name: 'trap: the subgrade is sprinkled, not the concrete',
    section: '§ 18.206 PLACING',
    text: `(c) Just ahead of the concrete the subgrade shall be sprinkled until it is damp throughout, but no puddles shall be
left on it.`,
    facts: [],
    none: ['surface-water', 'bleed-water', 'curing-method', 'site-water'],
  },
  {
    name: 'a finish in the order of its operations',
    section: '§ 18.207 FINISHING',
    text: `(d) The walk shall be struck off, floated with a wood float and given a light broom texture square to the line of
travel.`,
    facts: [{ kind: 'finish', force: 'require', act: { steps: ['strike off', 'float', 'broom'] }, subject: ['walk'] }],
    none: ['surface-water', { kind: 'finish', saying: 'trowel' }],
  },
  {
    name: 'trap: the radius of an edge is no aggregate, plastering is no finish',
    section: '§ 18.207 FINISHING',
    text: `(e) Plastering of the surface is barred. Outside edges shall be rounded to a radius of 1/4 inch with a proper tool.`,
    facts: [],
    none: ['aggregate-size', 'slump', 'surface-water', { kind: 'finish', force: ['permit'] }],
    free: ['finish'],
  },
  {
    name: 'trap: closed to feet and wheels is not cured',
    section: '§ 18.210 PROTECTION',
    text: `(f) The permittee shall keep foot traffic off new walks for 48 hours and vehicles off new aprons for 7 days.`,
    facts: [],
    none: ['curing-duration', 'curing', 'deicer-hold-off', 'cold-protection'],
  },
  {
    name: 'air by the type of the cement',
    section: '§ 18.203 MATERIALS',
    text: `(g) Cement shall be air-entraining portland cement, Type IIA, of ASTM C 150.`,
    facts: [{ kind: 'air-entrainment', force: 'require' }],
    none: ['air-content', 'exposure-class'],
  },
  {
    name: 'hours under burlap, or a compound',
    section: '§ 18.209 CURING',
    text: `(h) Fresh concrete shall be kept covered with wet burlap for not less than 72 hours, or it shall be sprayed with a
white membrane compound as soon as the texture has been given.`,
    facts: [
      { kind: 'curing-duration', force: 'require', value: { min: 72, unit: 'h' } },
      { kind: 'curing-method', force: 'require', act: { manner: 'wet cover' } },
      { kind: 'curing-method', force: 'require', act: { manner: 'compound' } },
    ],
    none: ['surface-water', 'fogging'],
  },
  {
    name: 'no dry cement, shared over neither and nor',
    section: '§ 18.207 FINISHING',
    text: `(i) Neither dry cement nor a mixture of cement and sand shall be strewn over the walk to stiffen it.`,
    facts: [{ kind: 'dry-cement', force: 'ban' }],
    none: ['surface-water', 'cement-content', { kind: 'dry-cement', force: ['require', 'permit'] }],
  },
  {
    name: 'a notice to owners: no salt in the first winter, sand may be used',
    section: 'NOTICE TO OWNERS OF NEW WALKS',
    text: `No salt or other ice-melting chemical may be spread on a new walk during its first winter. Sand may be strewn for
footing.`,
    facts: [
      { kind: 'deicer-use', force: 'ban', act: { verb: 'spread' } },
      { kind: 'deicer-use', force: 'permit', act: { verb: 'sand' } },
    ],
    none: ['accelerator', 'surface-water', 'chloride'],
  },
  {
    name: 'trap: barrels of cement are no ratio',
    section: '§ 18.205 PROPORTIONS',
    text: `(k) At least one and one-half barrels of cement shall go into each cubic yard of concrete in place.`,
    facts: [],
    none: ['w-cm', 'air-content', 'strength', 'scm', 'aggregate-size'],
  },
  {
    name: 'trap: slag as a stone is not slag cement',
    section: '§ 18.203 MATERIALS',
    text: `(l) Coarse aggregate shall be crushed limestone or washed gravel. Slag will not be accepted for it.`,
    facts: [],
    none: ['scm', 'aggregate-size', 'exposure-class'],
  },
  {
    name: 'a ban with an exception in writing',
    section: '§ 18.207 FINISHING',
    text: `(m) No water shall be put on the surface during finishing except with the written leave of the Town Engineer.`,
    facts: [{ kind: 'surface-water', force: 'ban', act: { object: 'surface' } }],
    none: ['site-water', 'w-cm', { kind: 'surface-water', force: ['permit', 'require'] }],
  },
  {
    name: 'not less than, nor more than',
    section: '§ 18.205 PROPORTIONS',
    text: `(n) When deposited, the concrete shall hold not less than 4.5% nor more than 7.5% of entrained air, and its slump
shall not exceed four inches.`,
    facts: [
      { kind: 'air-content', force: 'require', value: { min: 4.5, max: 7.5, unit: 'percent' } },
      { kind: 'slump', force: 'require', value: { max: 4, unit: 'in' } },
    ],
    none: ['aggregate-size', 'w-cm'],
  },
  {
    name: 'a tolerance on one side',
    section: '§ 18.205 PROPORTIONS',
    text: `(o) Air content of curbs shall be five percent (5%) plus three percent (3%).`,
    facts: [
      { kind: 'air-content', force: 'require', value: { target: 5, plus: 3, unit: 'percent' }, subject: ['curb'] },
    ],
    none: ['scm', 'strength'],
  },
  {
    name: 'trap: months in which no permit is given',
    section: '§ 18.201 PERMITS',
    text: `(p) No permit for a walk shall be good from December through March. A permit ends 60 days after it is issued.`,
    facts: [],
    none: ['curing-duration', 'deicer-hold-off', 'cold-protection', 'air-content'],
  },
  {
    name: 'a sealer in place of a curing compound',
    section: '§ 18.209 CURING',
    text: `(q) In cool weather a penetrating sealer may be applied in place of curing compound.`,
    facts: [{ kind: 'sealer-instead', force: 'permit', act: { manner: 'curing' } }],
    none: ['curing-duration', 'surface-water', { kind: 'curing-method', force: ['require', 'ban'] }],
  },
  {
    name: 'the broom may be dipped',
    section: '§ 18.207 FINISHING',
    text: `(r) The broom may be dipped in water between strokes.`,
    facts: [{ kind: 'surface-water', force: 'permit', act: { object: 'broom' } }],
    none: ['site-water', { kind: 'finish', force: ['ban', 'permit'] }],
    free: ['finish'],
  },
  {
    name: 'trap: fines, fees and bonds',
    section: '§ 18.299 PENALTY',
    text: `(s) A permit bond of 10 percent is kept for 28 days. Each day that a walk stays broken is a further offense.`,
    facts: [],
    none: ['air-content', 'curing-duration', 'deicer-hold-off', 'strength', 'scm'],
  },
];
