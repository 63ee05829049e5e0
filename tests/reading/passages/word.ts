/** Passages as a word processor exports them: typographic signs, tabs, bullets, dot leaders, escapes, struck text. */
import type { Passage } from './passage.ts';

export const word: readonly Passage[] = [
  {
    name: 'a bullet, a tab, an en dash and hard blanks',
    section: '**2.04\tMIXTURES**',
    text: `•\tAir content:\u00A05.5%\u20137.5%`,
    facts: [{ kind: 'air-content', force: 'require', value: { min: 5.5, max: 7.5, unit: 'percent' } }],
    none: ['strength', 'scm'],
  },
  {
    name: 'curing times by cement, with dot leaders',
    section: '3.08\tCURING',
    text: `Keep concrete moist for the following times:

[Type III cement .......... 3 days]
[Type I or II cement ...... 7 days]`,
    facts: [
      { kind: 'curing-duration', value: { target: 3, unit: 'd' } },
      { kind: 'curing-duration', value: { target: 7, unit: 'd' } },
    ],
    none: ['exposure-class', 'air-content', 'surface-water'],
  },
  {
    name: 'trap: an agent in a list of materials is no air content',
    section: '2.02\tADMIXTURES',
    text: `Air agent ........ ASTM C-260
Water reducer .... ASTM C-494, Type A`,
    facts: [],
    none: ['air-content', 'exposure-class', 'w-cm', 'site-water', 'strength'],
  },
  {
    name: 'trap: struck text no longer stands',
    section: '3.06\tFINISHING',
    text: `~~Add water to the surface as needed.~~ Do not add water to the surface.`,
    facts: [{ kind: 'surface-water', force: 'ban', act: { object: 'surface' } }],
    none: [{ kind: 'surface-water', force: ['permit', 'require'] }, 'site-water'],
  },
  {
    name: 'trap: a comment in the file',
    section: '2.04\tMIXTURES',
    text: `<!-- use 8 percent air and 5,000 psi north of the ridge -->
Provide concrete as scheduled on the Drawings.`,
    facts: [],
    none: ['air-content', 'strength'],
  },
  {
    name: 'columns set with blanks',
    section: '2.04\tMIXTURES',
    text: `Element      Strength (psi)      W/CM, max.      Air (%)
Walks        4,500               0.45            6
Footings     3,000               0.60            -`,
    facts: [
      { kind: 'strength', force: 'require', value: { target: 4500, unit: 'psi' }, subject: ['walk'] },
      { kind: 'w-cm', force: 'require', value: { max: 0.45, unit: '' }, subject: ['walk'] },
      { kind: 'air-content', force: 'require', value: { target: 6, unit: 'percent' }, subject: ['walk'] },
      { kind: 'strength', force: 'require', value: { target: 3000, unit: 'psi' }, subject: ['footing'] },
      { kind: 'w-cm', force: 'require', value: { max: 0.6, unit: '' }, subject: ['footing'] },
    ],
    none: ['slump', 'scm'],
  },
  {
    name: 'trap: numbers of sections and paragraphs',
    section: '1.02\tRELATED SECTIONS',
    text: `See Section 03 30 00 for concrete, and Section 32 13 13, paragraph 3.05.A, for curing of walks.`,
    facts: [],
    none: ['curing-duration', 'strength', 'air-content', 'curing-method', 'w-cm'],
  },
  {
    name: 'signs of comparison and vulgar fractions',
    section: '2.04\tMIXTURES',
    text: `Platforms: w/cm ≤ 0.45; compressive strength ≥ 4,500 psi; maximum aggregate size ¾ in.; air 6 % ± 1½ %.`,
    facts: [
      { kind: 'w-cm', force: 'require', value: { max: 0.45, unit: '' } },
      { kind: 'strength', force: 'require', value: { min: 4500, unit: 'psi' } },
      { kind: 'aggregate-size', force: 'require', value: { target: 0.75, unit: 'in' } },
      { kind: 'air-content', force: 'require', value: { target: 6, plus: 1.5, minus: 1.5, unit: 'percent' } },
    ],
    none: ['slump', 'scm', 'curing-duration'],
  },
  {
    name: 'escapes and entities',
    section: '2.04\tMIXTURES',
    text: `Air content: **6\\%** &plusmn; 1.5\\%.`,
    facts: [{ kind: 'air-content', force: 'require', value: { target: 6, plus: 1.5, minus: 1.5, unit: 'percent' } }],
    none: ['strength', 'scm'],
  },
  {
    name: 'trap: a definition orders nothing',
    section: '1.03\tDEFINITIONS',
    text: `“Dry shake” means a factory blend of hardener and hard aggregate. “Bleed water” means water that rises as the solids
settle.`,
    facts: [],
    none: [
      'dry-cement',
      'surface-water',
      { kind: 'dry-shake', force: ['require', 'permit'] },
      { kind: 'bleed-water', force: ['require', 'permit', 'ban'] },
    ],
    free: ['bleed-water'],
  },
  {
    name: 'trap: a quoted note to the specifier',
    section: '2.04\tMIXTURES',
    text: `> Specifier: keep 7 percent air only where 1/2 inch stone is used; steel trowel is allowed on interior work.

Provide normal-weight concrete.`,
    facts: [],
    none: ['air-content', 'aggregate-size', 'finish'],
  },
  {
    name: 'trap: joints sawed within hours',
    section: '3.07\tJOINTS',
    text: `Saw joints 1½ inches deep within 12 hours. Let them dry for 3 days, then seal them when above 40 °F.`,
    facts: [],
    none: ['curing-duration', 'aggregate-size', 'slump', 'curing-temperature', 'cold-protection'],
  },
  {
    name: 'trap: the air in which the thermometer hangs',
    section: '3.09\tCOLD WEATHER',
    text: `Read the air temperature twice a day for 72 hours, and keep the readings at 100% of the stations.`,
    facts: [],
    none: ['air-content', 'curing-duration', { kind: 'test', saying: 'air frequency' }, 'air-entrainment'],
  },
  {
    name: 'trap: how air is tested is not how much',
    section: '3.10\tFIELD QUALITY CONTROL',
    text: `Test air content by ASTM C231 from the first truck of each day and from every 50 cubic yards after it.`,
    facts: [{ kind: 'test', name: 'air', of: 'ASTM C231' }],
    none: ['air-content', 'strength', 'cement-content', 'site-water'],
  },
  {
    name: 'curly quotes for inches',
    section: '2.04\tMIXTURES',
    text: `Stone for curbs: 1” maximum size. Slump: 4” maximum.`,
    facts: [
      { kind: 'aggregate-size', force: 'require', value: { target: 1, unit: 'in' }, subject: ['curb'] },
      { kind: 'slump', force: 'require', value: { max: 4, unit: 'in' } },
    ],
    none: ['air-content', 'w-cm'],
  },
  {
    name: 'trap: a schedule of paint and sealant',
    section: '3.11\tSEALANTS',
    text: `• Joint movement: ±50%.\n• Cure of sealant: 7 days before wetting.\n• Air out the vault for 24 hours.`,
    facts: [],
    none: ['air-content', 'curing-duration', 'surface-water', 'curing', 'air-entrainment'],
  },
  {
    name: 'trap: products by number',
    section: '2.03\tCURING MATERIALS',
    text: `•\tWet burlap: AASHTO M 182, Class 4.\n•\tSheet: ASTM C171, white, 4 mils.\n•\tCompound: ASTM C309, Type 2, Class B.`,
    facts: [],
    none: ['exposure-class', 'curing-duration', 'aggregate-size', 'surface-water', 'air-content'],
  },
  {
    name: 'trap: air that people breathe',
    section: '1.08\tSTORAGE OF MATERIALS',
    text: `Keep the cement store at 50% to 60% relative humidity, with 0.45 air changes an hour.`,
    facts: [],
    none: ['air-content', 'w-cm', 'curing-duration', 'scm', 'air-entrainment'],
  },
];
