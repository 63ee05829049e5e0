/** Other ways to write the clean paving section; each says the same, so each must stay clean. */
import { edited } from './edited.ts';

export interface Rewording {
  readonly name: string;
  readonly rewrite: (section: string) => string;
}

/** The rewording that puts `replace` where `find` stands, once. */
const saying = (find: string, replace: string) => (section: string) => edited(section, [{ find, replace }]);

/** The rewording that changes every occurrence; it must occur. */
const throughout = (find: string, replace: string) => (section: string) => {
  if (!section.includes(find)) throw new Error(`not in the section: ${find}`);
  return section.replaceAll(find, replace);
};

/** Curing and cold weather change places, with their numbers. */
function exchangedArticles(section: string): string {
  const curing = section.slice(section.indexOf('### 3.04'), section.indexOf('### 3.05'));
  const cold = section.slice(section.indexOf('### 3.05'), section.indexOf('### 3.06'));
  return section.replace(curing + cold, cold.replace('3.05', '3.04') + curing.replace('3.04', '3.05'));
}

const mixtureTable = `| Mixture | Elements | Maximum w/cm | f'c at 28 days | Total air, percent | Nominal maximum aggregate |
| --- | --- | --- | --- | --- | --- |
| P | Shelter walks, curb ramps, plaza steps, curbs, bus bay | 0.45 | 4500 psi (31 MPa) | 6.0 ± 1.5 | 3/4 in. (19 mm) |
| R | Bus apron | 0.40 | 5000 psi (35 MPa) | 6.0 ± 1.5 | 3/4 in. (19 mm) |
`;
const mixtureList = `   1. Mixture P, for shelter walks, curb ramps, plaza steps, curbs, and bus bay: maximum w/cm 0.45; f'c 4500 psi (31 MPa) at 28 days; total air 6.0 percent, plus or minus 1.5 percentage points; nominal maximum aggregate 3/4 in. (19 mm).
   2. Mixture R, for the bus apron: maximum w/cm 0.40; f'c 5000 psi (35 MPa) at 28 days; total air 6.0 percent, plus or minus 1.5 percentage points; nominal maximum aggregate 3/4 in. (19 mm).
`;

export const rewordings: readonly Rewording[] = [
  {
    name: 'the ban on water in the passive',
    rewrite: saying('Do not add water to the surface', 'Water shall not be added to the surface'),
  },
  {
    name: 'curing in the passive',
    rewrite: saying('B. Cure for 7 days at', 'B. Concrete shall be cured for 7 days at'),
  },
  {
    name: 'w/cm in words',
    rewrite: saying('| Maximum w/cm |', '| Maximum water-cementitious materials ratio |'),
  },
  { name: 'strength with SI first', rewrite: throughout('4500 psi (31 MPa)', '31 MPa (4500 psi)') },
  { name: 'temperature with SI first', rewrite: throughout('50 °F (10 °C)', '10 °C (50 °F)') },
  { name: 'cold weather before curing', rewrite: exchangedArticles },
  { name: 'days in words with the digits beside', rewrite: saying('B. Cure for 7 days', 'B. Cure for seven (7) days') },
  { name: 'days as hours', rewrite: saying('B. Cure for 7 days', 'B. Cure for 168 hours') },
  { name: 'bullets for letters', rewrite: (section) => section.replace(/^[A-H]\. /gm, '- ') },
  { name: 'curly apostrophes and quotes', rewrite: throughout("'", '’') },
  { name: 'line ends of two characters', rewrite: throughout('\n', '\r\n') },
  {
    name: 'a mark of byte order and no-break spaces',
    rewrite: (section) => `\uFEFF${section.replace(/(\d) (psi|°F|in\.|percent|days)/g, '$1\u00A0$2')}`,
  },
  { name: 'air as a range', rewrite: throughout('6.0 ± 1.5', '4.5 to 7.5') },
  { name: 'air with plus or minus in words', rewrite: throughout('6.0 ± 1.5', '6 plus or minus 1.5') },
  { name: 'air with a typewriter sign', rewrite: throughout('6.0 ± 1.5', '6.0 +/- 1.5') },
  { name: 'no zero before the point', rewrite: throughout('| 0.4', '| .4') },
  { name: 'a sign for percent', rewrite: throughout(' percent', '%') },
  { name: 'degrees in words', rewrite: (section) => section.replace(/ °([FC])/g, ' degrees $1') },
  { name: 'a fraction of one character', rewrite: throughout('3/4 in.', '¾ in.') },
  { name: 'the older spelling of a standard', rewrite: throughout('ASTM C231', 'ASTM C 231/C 231M') },
  {
    name: 'the ban on trowels in other words',
    rewrite: saying(
      'The Contractor shall not steel-trowel any surface of this Section.',
      'No steel trowel shall be used on any surface of this Section.',
    ),
  },
  {
    name: 'waiting for bleed water as a ban with an end',
    rewrite: saying(
      'Then keep off the slab until bleeding has ended.',
      'Do not float, edge, or broom the slab before its bleed water has left.',
    ),
  },
  {
    name: 'the hold-off as a ban',
    rewrite: saying(
      'Keep de-icing chemicals off the concrete of this Section until it has',
      'No de-icing chemicals shall be applied to the concrete of this Section before it has',
    ),
  },
  {
    name: 'water at the site forbidden',
    rewrite: saying(
      'B. Add water at the site once only, before discharge begins, up to the amount withheld from the approved mixture and within the maximum w/cm. Mix 30 more revolutions, write the amount on the ticket, and take test samples after that.',
      'B. Drivers shall add no water at the site.',
    ),
  },
  { name: 'mixtures as a list', rewrite: saying(mixtureTable, mixtureList) },
  { name: 'headings without marks', rewrite: (section) => section.replace(/^#+ /gm, '') },
  { name: 'paragraphs without blank lines', rewrite: (section) => section.replace(/(?<!\|)\n\n(?=[A-H]\. )/g, '\n') },
  { name: 'values in bold', rewrite: throughout('6.0 ± 1.5', '**6.0 ± 1.5**') },
  {
    name: 'a note to the specifier that speaks of floors',
    rewrite: saying(
      '### 3.04 CURING\n',
      '> Note to specifier: indoor floors may be steel-troweled and need no entrained air; do not copy this article there.\n\n### 3.04 CURING\n',
    ),
  },
];
