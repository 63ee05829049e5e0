/** What a careful reviewer says, and does not say, about the three sections of the demo manual; written from the trade. */
import type { Severity } from '../../rules/model/project.ts';

/** A finding that must be there, once. */
export interface Expected {
  readonly rule: string;
  readonly severity: Severity;
  /** The section's own numbering; a row of a table is counted below its heading; an omission stands on the article. */
  readonly place: string;
  readonly why: string;
}

/** A rule that must say nothing about the section, and the words that might tempt it. */
export interface Silent {
  readonly rule: string;
  readonly trap: string;
  readonly why: string;
}

export interface Edit {
  /** Exact text that stands once in the section. */
  readonly find: string;
  readonly replace: string;
}

/** A small change of the paving section, and all that it may bring up. */
export interface Mutation extends Edit {
  readonly name: string;
  readonly also?: readonly Edit[];
  readonly expect: readonly Pick<Expected, 'rule' | 'severity'>[];
}

/** Section 03 30 00: ten faults planted that the first set of rules can see. */
export const castInPlace: { readonly expect: readonly Expected[]; readonly silent: readonly Silent[] } = {
  expect: [
    {
      rule: 'air-content-missing',
      severity: 'must',
      place: '2.04',
      why: 'The air cell of the station walks, declared F3, is empty, and "air-entrain" above the table gives no number.',
    },
    {
      rule: 'w-cm-high',
      severity: 'must',
      place: '2.04.A row 1',
      why: 'Station walks are declared F3 and plain: 0.50 is above 0.45.',
    },
    {
      rule: 'strength-low',
      severity: 'must',
      place: '2.04.A row 1',
      why: 'Station walks are declared F3 and plain: 4000 psi is below 4500 psi.',
    },
    {
      rule: 'strength-low',
      severity: 'must',
      place: '2.04.A row 3',
      why: 'The tunnel-roof apron slab is structural, F3 and C2: 3000 psi is below 5000 psi.',
    },
    {
      rule: 'site-water-uncontrolled',
      severity: 'must',
      place: '2.05.B',
      why: 'Water for slump with no held w/cm and no single addition; citing ASTM C94 does not excuse a milder sentence.',
    },
    {
      rule: 'hard-trowel-outdoors',
      severity: 'must',
      place: '3.03.C',
      why: 'The ticket plaza has no finish of its own, so the clause for all slabs hard-trowels it.',
    },
    {
      rule: 'water-added-to-surface',
      severity: 'must',
      place: '3.03.D',
      why: 'Sprinkling station walks to aid finishing; the ban in 3.03.B does not undo the instruction.',
    },
    {
      rule: 'curing-duration-missing',
      severity: 'must',
      place: '3.05.A',
      why: '"Adequately" is no length of time, and none stands elsewhere.',
    },
    {
      rule: 'cold-weather-clause-missing',
      severity: 'should',
      place: '3.02',
      why: 'It freezes here and nothing in Part 3 speaks of cold; placing is where a bidder would look.',
    },
    {
      rule: 'deicer-hold-off-missing',
      severity: 'should',
      place: '3.03',
      why: 'Salted flatwork and no word on its first winter; without a closeout article it belongs to finishing.',
    },
  ],
  silent: [
    {
      rule: 'air-entrainment-forbidden-outdoors',
      trap: 'no air-entraining admixture, 3% maximum',
      why: 'The row is that of the ticket-hall floor, which is heated and hard-troweled.',
    },
    {
      rule: 'air-content-low',
      trap: '[4] [6] percent, ± 1.5',
      why: 'An open choice is not a value yet; and 3 percent is right for the indoor floor.',
    },
    {
      rule: 'air-tolerance-missing',
      trap: '[4] [6] percent',
      why: 'Every air value has its tolerance, and ASTM C94, a requirement here, carries one.',
    },
    {
      rule: 'air-test-method-missing',
      trap: 'ASTM C457, listed and not used',
      why: 'Air is measured per ASTM C231 in 3.06.A.',
    },
    {
      rule: 'surface-water-ban-missing',
      trap: 'sprinkle water lightly',
      why: '3.03.B bans water on the surface; the permission speaks for itself.',
    },
    {
      rule: 'finishing-over-bleed-water',
      trap: 'Bleed Water and the Timing of Floor Finishing',
      why: 'A title in the reference list requires nothing.',
    },
    { rule: 'curing-missing', trap: 'Submit curing method', why: 'There is a curing article, poor as it is.' },
    {
      rule: 'curing-method-missing',
      trap: 'the materials of 2.03',
      why: 'The materials named there are bound by 3.05.A.',
    },
    { rule: 'calcium-chloride-allowed', trap: 'no calcium chloride', why: 'It is banned.' },
    {
      rule: 'exposure-class-missing',
      trap: 'W0, C0',
      why: 'Every element has a freezing class or, indoors, F0.',
    },
    {
      rule: 'exposure-too-mild-for-use',
      trap: 'Screen walls: F1',
      why: 'The walls are vertical and clear of salted snow.',
    },
    { rule: 'scm-over-cap', trap: 'fly ash 20 percent', why: 'The cap is 25 percent.' },
    {
      rule: 'trowel-before-broom',
      trap: 'Slabs: hard steel-trowel finish, then the broomed walks',
      why: 'Two finishes of two elements are not one sequence.',
    },
  ],
};

/** Section 32 13 13 says nothing wrong and leaves nothing out; section 03 35 00 is an indoor floor. */
export const silentSections: readonly { readonly path: string; readonly why: string }[] = [
  { path: '32-13-13-concrete-paving.md', why: 'It is complete, and its values are those of its classes.' },
  { path: '03-35-00-interior-floor-finishing.md', why: 'A heated floor is not exposed, whatever words stray into it.' },
];

/** What a mutation brings up. */
export const must = (rule: string) => [{ rule, severity: 'must' as const }];
export const should = (rule: string) => [{ rule, severity: 'should' as const }];
