/** Small changes of Part 3 of the clean paving section, and of what goes with it. */
import { type Mutation, must, should } from './planted.ts';

const frostParagraph =
  'F. Stop wetting when freezing is forecast. Cover the slab at once with vapor-tight sheet under insulation, and let the curing days run on.\n\n';
const curingMethods = `D. Apply curing compound at 200 ft2/gal (5 m2/L) in two passes at right angles, or keep the slab under wet burlap and sheet.

E. Within 45 days of the first expected salting, cure under sheet or insulated covers instead, and take them off when curing ends.

${frostParagraph}`;
const longerCuring =
  "C. Where fly ash is over 20 percent or slag cement over 35 percent, cure for 14 days, or until field-cured cylinders reach 70 percent of f'c.\n\n";
const curingPeriod = 'B. Cure for 7 days at a concrete temperature of 50 °F (10 °C) or above.\n\n';
const curingArticle = `### 3.04 CURING

A. Start curing as soon as the texture holds and no free water shows, within 2 hours of texturing.

${curingPeriod}${longerCuring}${curingMethods}`;
const coldArticle = `### 3.05 COLD WEATHER

A. When air is below 40 °F (5 °C), or is forecast to be within 24 hours, carry out the cold-weather plan. Read and record concrete and air temperatures twice a day, at corners too.

B. Place concrete at 55 °F (13 °C) or above and not over 75 °F (24 °C), and hold it at 55 °F (13 °C) or above for 7 days.

C. Keep concrete from freezing until it has 3500 psi (24 MPa), shown by field-cured cylinders.

D. When covers come off, let the concrete cool by not more than 50 °F (28 °C) in 24 hours.

E. Use indirect-fired heaters vented outside the enclosure.

`;
const holdOff =
  'A. Keep de-icing chemicals off the concrete of this Section until it has 4500 psi (31 MPa), has been cured, and has then dried for 30 days above freezing. Concrete placed after 1 September receives none in its first winter.\n\n';

/** Each brings up what it names and nothing else. */
export const changedExecution: readonly Mutation[] = [
  {
    name: 'the ban on surface water deleted',
    find: 'B. Do not add water to the surface during finishing.\n\n',
    replace: '',
    expect: should('surface-water-ban-missing'),
  },
  {
    name: 'sprinkling on hot days',
    find: 'G. Rinse brooms away from the work and shake them free of water.',
    replace: 'G. On hot days the finishers may sprinkle the surface lightly so that the float glides.',
    expect: must('water-added-to-surface'),
  },
  {
    name: 'floating over bleed water',
    find: 'Then keep off the slab until bleeding has ended. On windy days do not judge by the sheen: lay a piece of film on the slab for some minutes, and wait if water gathers under it.',
    replace: 'Where bleed water lies on the slab, float it in and go on.',
    expect: must('finishing-over-bleed-water'),
  },
  {
    name: 'dusting with cement',
    find: 'D. Use no dry cement on the surface.',
    replace: 'D. Dust dry cement over wet spots to take up the water.',
    expect: must('dry-cement-on-surface'),
  },
  {
    name: 'evaporation retarder to ease finishing',
    find: 'C. Between operations the air above the slab may be fogged, or a film of evaporation retarder applied. Use neither as a finishing aid.',
    replace: 'C. Spray evaporation retarder ahead of the float to ease finishing.',
    expect: must('evaporation-retarder-as-finishing-aid'),
  },
  {
    name: 'a hard trowel for the walks',
    find: '| Shelter walks | medium broom, across the path of travel |',
    replace: '| Shelter walks | hard steel-trowel finish |',
    expect: must('hard-trowel-outdoors'),
  },
  {
    name: 'trowel, then broom',
    find: '| Plaza steps | fine broom, along the tread |',
    replace: '| Plaza steps | steel trowel, then fine broom |',
    expect: must('trowel-before-broom'),
  },
  { name: 'no curing article', find: curingArticle, replace: '', expect: must('curing-missing') },
  {
    name: 'curing for 3 days',
    find: 'B. Cure for 7 days',
    replace: 'B. Cure for 3 days',
    expect: must('curing-too-short'),
  },
  {
    name: 'curing for 72 hours',
    find: 'B. Cure for 7 days',
    replace: 'B. Cure for 72 hours',
    expect: must('curing-too-short'),
  },
  {
    name: 'curing as long as needed',
    find: curingPeriod + longerCuring,
    replace: 'B. Cure at a concrete temperature of 50 °F (10 °C) or above for as long as needed.\n\n',
    expect: must('curing-duration-missing'),
  },
  {
    name: 'a week of curing by no method',
    find: curingMethods,
    replace: '',
    expect: should('curing-method-missing'),
  },
  {
    name: 'wetting into frost',
    find: frostParagraph,
    replace: 'F. Keep burlap saturated on frosty nights too, until the slab freezes.\n\n',
    expect: must('wet-cure-into-freezing'),
  },
  {
    name: 'a sealer instead of curing',
    find: 'under wet burlap and sheet.',
    replace: 'under wet burlap and sheet. In place of curing, a penetrating silane sealer may be applied.',
    expect: must('sealer-in-place-of-air'),
  },
  {
    name: 'nothing on cold weather but a plan to submit',
    find: coldArticle,
    replace: '',
    also: [{ find: frostParagraph, replace: '' }],
    expect: should('cold-weather-clause-missing'),
  },
  {
    name: 'calcium chloride in the reinforced apron',
    find: 'Use no calcium chloride.',
    replace: 'In the bus apron, calcium chloride up to 2 percent by mass of cement is permitted in cold weather.',
    expect: must('calcium-chloride-allowed'),
  },
  { name: 'no hold-off', find: holdOff, replace: '', expect: should('deicer-hold-off-missing') },
  {
    name: 'garden fertilizer as de-icer',
    find: 'Never use ammonium compounds or fertilizer.',
    replace: 'Garden fertilizer may be spread when salt runs out.',
    expect: must('harmful-deicer-specified'),
  },
];
