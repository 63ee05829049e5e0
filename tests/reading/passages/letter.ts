/** Passages as a small owner or an architect writes them into a letter to a small contractor. */
import type { Passage } from './passage.ts';

export const letter: readonly Passage[] = [
  {
    name: 'a mix ordered in one breath',
    text: `Please price the new loading pad in 4000 psi concrete with air, six bags to the yard, five inches thick.`,
    facts: [
      { kind: 'strength', force: 'require', value: { target: 4000, unit: 'psi' } },
      { kind: 'air-entrainment', force: 'require' },
    ],
    none: ['air-content', 'aggregate-size', 'slump', 'w-cm'],
  },
  {
    name: 'you may dampen the slab',
    text: `You may dampen the slab if it gets ahead of you in the sun.`,
    facts: [{ kind: 'surface-water', force: 'permit', act: { object: 'surface' } }],
    none: ['curing-method', 'site-water', 'curing'],
  },
  {
    name: 'the drivers add nothing',
    text: `The drivers shall not add water to the load once it is on our site.`,
    facts: [{ kind: 'site-water', force: 'ban' }],
    none: ['surface-water', 'w-cm', { kind: 'site-water', force: ['permit', 'require'] }],
  },
  {
    name: 'trap: broomed rather than troweled',
    text: `We would like the front walk broomed rather than troweled.`,
    facts: [{ kind: 'finish', act: { steps: ['broom'] }, subject: ['front walk'] }],
    none: [{ kind: 'finish', saying: 'trowel', force: ['require', 'permit', 'recommend'] }, 'surface-water'],
    free: ['finish'],
  },
  {
    name: 'trap: wet ground and an old wall',
    text: `Wet the ground in the trench and the face of the old wall before you pour.`,
    facts: [],
    none: ['surface-water', 'curing-method', 'site-water', 'curing'],
  },
  {
    name: 'a week under sacking',
    text: `Keep the pad wet under sacking for a week.`,
    facts: [
      { kind: 'curing-duration', force: 'require', value: { target: 7, unit: 'd' } },
      { kind: 'curing-method', force: 'require', act: { manner: 'wet cover' } },
    ],
    none: ['surface-water', 'site-water'],
  },
  {
    name: 'no salt on it this winter',
    text: `Do not put salt on the new steps this winter; use sand.`,
    facts: [
      { kind: 'deicer-use', force: 'ban', act: { verb: 'spread' } },
      { kind: 'deicer-use', force: 'require', act: { verb: 'sand' } },
    ],
    none: ['accelerator', 'chloride', 'finish'],
  },
  {
    name: 'trap: a dose of calcium chloride goes into the mix',
    text: `If frost is likely, have the plant add calcium chloride at 1.5% by weight of cement.`,
    facts: [{ kind: 'accelerator', force: 'require', act: { material: 'calcium chloride' } }],
    none: ['deicer-use', 'deicers', 'air-content', 'scm'],
  },
  {
    name: 'trap: forms and backfill',
    text: `Strip the forms after 24 hours and backfill after three days. The hole may stand open until then.`,
    facts: [],
    none: ['curing-duration', 'cold-protection', 'curing', 'deicer-hold-off'],
  },
  {
    name: 'trap: asphalt concrete',
    text: `The drive is to be asphalt concrete, two inches after rolling, on six inches of stone compacted to 95 percent.`,
    facts: [],
    none: ['air-content', 'strength', 'aggregate-size', 'slump', 'finish', 'surface-water'],
  },
  {
    name: 'trap: water without a limit is no ratio',
    text: `Just enough water to make it workable, please, and no soup.`,
    facts: [],
    none: ['w-cm', 'surface-water', 'curing-method', 'slump'],
    free: ['site-water'],
  },
  {
    name: 'inside troweled, outside floated',
    text: `Trowel the curb inside the pump house. Float the outside apron and leave it so.`,
    facts: [
      { kind: 'finish', force: 'require', act: { steps: ['trowel'] }, exterior: 'no' },
      { kind: 'finish', force: 'require', act: { steps: ['float'] }, subject: ['apron'], exterior: 'yes' },
    ],
    none: [{ kind: 'finish', saying: 'trowel', force: ['ban', 'permit'] }],
  },
  {
    name: 'trap: trucks wait, coats dry',
    text: `No truck may wait longer than 90 minutes. Start finishing the next bay within 30 minutes. Let the joint dry two days
before it is sealed.`,
    facts: [],
    none: ['curing-duration', 'deicer-hold-off', 'cold-protection', 'bleed-water'],
    free: ['finish'],
  },
  {
    name: 'trap: the plumber pumps and the mason mists',
    text: `The pump line was tried at 4 MPa. Mist the stone pile in hot weather so it does not drink.`,
    facts: [],
    none: ['strength', 'surface-water', 'fogging', 'curing-method'],
  },
  {
    name: 'trap: salt on the old steps, fertilizer on the lawn',
    text: `The salt has eaten the old steps, so take them out. Keep lawn fertilizer for the new lawn in the shed.`,
    facts: [],
    none: [{ kind: 'deicer-use', force: ['require', 'permit'] }, 'deicer-hold-off', 'accelerator', 'curing-duration'],
    free: ['deicer-use'],
  },
  {
    name: 'trap: the painter waits and the tile setter wets',
    text: `Leave the walls 30 days before painting. Soak the tiles, and dampen the wall where the tiles go.`,
    facts: [],
    none: ['curing-duration', 'surface-water', 'deicer-hold-off', 'curing'],
  },
  {
    name: 'float right through it',
    text: `If bleed water will not leave, float right through it and carry on.`,
    facts: [{ kind: 'bleed-water', force: 'require', act: { verb: 'finish over' } }],
    none: ['surface-water', { kind: 'bleed-water', force: ['ban'] }],
    free: ['finish'],
  },
  {
    name: 'trap: steel float for the mortar bed',
    text: `Steel-float the mortar bed under the pavers, and wet the pavers before you set them.`,
    facts: [],
    none: ['surface-water', { kind: 'finish', saying: 'trowel' }, { kind: 'finishing-tool', saying: 'trowel' }],
    free: ['finish'],
  },
];
