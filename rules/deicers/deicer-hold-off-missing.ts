/** Nothing keeps de-icers off an exterior slab while it is young. */

import { bothUnits } from '../formulas/unit-twins.ts';
import { absence } from '../kinds/absence.ts';
import { protecting } from '../kinds/define.ts';
import type { View } from '../kinds/view.ts';
import type { DeicerUseVerb, SeasonWindow } from '../model/acts.ts';
import { type ActFact, comesTo } from '../model/fact.ts';
import { highest } from '../model/measure.ts';
import { slowMixture } from '../tables/cementitious.ts';
import { clauses, grounds } from '../tables/clauses.ts';
import { dryingBeforeSalts, harmfulDeicers, strengthBeforeSalts } from '../tables/deicers.ts';

const strength = bothUnits(strengthBeforeSalts.value.inchPound);
const drying = `${dryingBeforeSalts.value.amount} drying days`;

export default absence({
  title: 'Nothing keeps de-icers off young concrete',
  severity: 'should',
  reason:
    'Young concrete is not yet strong, dry or mature; salts in its first winter scale surfaces that would otherwise last for decades.',
  citations: protecting(clauses.exposure, grounds.drying, grounds.strengthBeforeSalts, grounds.commonPractice),
  clause: {
    inchPound:
      'Keep de-icers off until the concrete has 4500 psi, has been cured, and has then dried 30 days above freezing. Concrete placed after [1 September] gets none in its first winter. Keep walks safe by clearing and clean sand. Never use ammonium sulfate, ammonium nitrate or fertilizer. Hand these dates to the Owner in writing.',
    metric:
      'Keep de-icers off until the concrete has 31 MPa, has been cured, and has then dried 30 days above freezing. Concrete placed after [1 September] gets none in its first winter. Keep walks safe by clearing and clean sand. Never use ammonium sulfate, ammonium nitrate or fertilizer. Hand these dates to the Owner in writing.',
  },
  outranks: [
    'drying-period-missing',
    'repeated-freeze-strength-missing',
    'season-cutoff-missing',
    'harmful-deicers-not-banned',
    'owner-winter-sheet-missing',
    'traction-alternative-missing',
    'first-winter-inspection-missing',
    'slow-mixture-late-in-season',
    'deicer-use-undecided',
    'vague-amount',
  ],

  when: (view) =>
    view.isExposed &&
    view.isFlatwork &&
    view.salted !== 'no' &&
    !view.has('snow-melt') &&
    view.hasArticle('placing', 'finishing', 'curing', 'closeout', 'mixtures', 'materials', 'summary', 'weather'),
  met: (view) => view.says('deicer-hold-off') || view.every('deicer-use').some(isHoldOff) || isSummerWork(view),
  duty: 'hold-off',
  asks: 'clause',
  belongs: ['closeout', 'finishing', 'curing', 'weather', 'placing'],
  message: ({ elements, where }) =>
    `Nothing in ${where} keeps de-icers off ${elements} while young: ${strength}, then ${drying}`,
  detail: ([view]) =>
    view.salted === 'unknown' ? 'Say too whether de-icers will be used on it at all, and by whom.' : undefined,
  lines: [
    { text: 'drying after curing', silent: (view) => !view.says('drying') },
    { text: 'strength before repeated freezing', silent: lacksStrength },
    { text: 'the last placing date', silent: (view) => !view.says('season') },
    { text: 'de-icers that are forbidden at all times', silent: lacksBan },
    { text: 'an instruction to the owner', silent: lacksVerb('instruct') },
    {
      text: 'sand or another means against slipping',
      silent: (view) => lacksVerb('sand')(view) && lacksVerb('clear')(view),
    },
    { text: 'an inspection in spring', silent: lacksVerb('inspect') },
    { text: 'a quicker mixture late in the year', silent: isSlowMixture },
  ],

  examples: {
    flagged: {
      'opened after three days in autumn': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
     ^^^^^^^^^ keeps de-icers off shelter walks while young
A. Shelter walks, Exposure Class F3: broom finish.
B. Open shelter walks to pedestrians after 3 days.
`,
      'protection from damage by others': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Shelter walks, Exposure Class F3: broom finish.
3.09 PROTECTION AND CLOSEOUT
     ^^^^^^^^^^^^^^^^^^^^^^^ keeps de-icers off shelter walks
A. Protect completed walks from damage by others until final acceptance.
`,
      'winter maintenance may begin': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
     ^^^^^^^^^ keeps de-icers off plaza steps
A. Plaza steps, Exposure Class F3: broom finish. The Owner may begin winter maintenance at substantial completion.
`,
    },
    clean: {
      'none in the first winter': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Shelter walks, Exposure Class F3: broom finish.
3.09 PROTECTION
A. Apply no de-icing chemicals to shelter walks during the first winter after placing; use clean sand.
`,
      'drying after curing, and strength': `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Shelter walks, Exposure Class F3: broom finish.
3.09 PROTECTION
A. Keep de-icers off shelter walks until 30 days of air drying follow curing and the concrete has 4500 psi (31 MPa).
`,
      'an interior floor': `
SECTION 03 35 00 - FLOOR FINISHING
PART 3 - EXECUTION
3.03 FINISHING
A. Ticket-hall floor, interior: hard-trowel finish. Protect from construction traffic for 7 days.
`,
      'no de-icers at all': {
        deicers: 'no',
        text: `
SECTION 32 13 13 - CONCRETE PAVING
PART 3 - EXECUTION
3.04 FINISHING
A. Garden walks, exterior: broom finish.
`,
      },
    },
  },
});

/** "None in the first winter", "prohibited until May", "never": a ban on salt with or without an end. */
const isHoldOff = (fact: ActFact): boolean => fact.force === 'ban' && isKept(fact) && isOfSalt(fact);

/** "Unless it has dried for 30 days" ends a hold-off; "except calcium chloride" and "more than needed" undo it. */
const isKept = (fact: ActFact): boolean => comesTo(fact) === 'ban' || /\d/.test(fact.except?.words ?? '');

const isOfSalt = ({ act }: ActFact): boolean =>
  act.verb === 'spread' && (act.time !== undefined || act.material === undefined || act.material === 'de-icer');

const isSummerWork = (view: View): boolean =>
  view.every('season').some(({ value }) => value === ('mild months' satisfies SeasonWindow));

function lacksStrength(view: View): boolean {
  const ends = [...view.every('deicer-hold-off'), ...view.every('cold-protection')];
  return ends.every(({ value }) => value.dimension !== 'stress');
}

function lacksVerb(verb: DeicerUseVerb): (view: View) => boolean {
  return (view) => view.every('deicer-use').every(({ act }) => act.verb !== verb);
}

function lacksBan(view: View): boolean {
  const isHarmful = (material: string | undefined) => harmfulDeicers.some(({ name }) => name === material);
  return !view.every('deicer-use').some(({ force, act }) => force === 'ban' && isHarmful(act.material));
}

/** Much fly ash or slag is allowed and nothing ends the season. */
function isSlowMixture(view: View): boolean {
  const { flyAsh, slag } = slowMixture.value;
  const isMuch = view
    .every('scm')
    .some(({ of, value }) => (of === 'slag cement' ? slag : flyAsh) < (highest(value) ?? 0));
  return isMuch && view.every('season').some(({ value }) => value === ('late' satisfies SeasonWindow));
}
