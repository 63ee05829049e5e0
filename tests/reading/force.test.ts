/** What a clause comes to: bans that an exception undoes, limits put as bans, duties waived, and what orders nothing. */
import { describe, expect, test } from 'vitest';
import type { Force } from '../../rules/model/clause.ts';
import { comesTo, type Fact, type FactKind } from '../../rules/model/fact.ts';
import type { Source } from '../../rules/model/source.ts';
import { read } from '../../server/reading/read.ts';
import { findings } from '../sections/manual.ts';

const walks = 'The shelter walks, exterior, are structurally reinforced, Exposure Class F3.';

const section = (heading: string, text: string): Source => ({
  path: 'walks.md',
  text: [
    'SECTION 32 13 13 - CONCRETE PAVING',
    'PART 1 - GENERAL',
    '1.01 SUMMARY',
    `A. ${walks}`,
    'PART 3 - EXECUTION',
    `3.04 ${heading}`,
    `A. ${text}`,
    '',
  ].join('\n'),
});

const factsOf = (kind: FactKind, heading: string, text: string): readonly Fact[] =>
  read(section(heading, text)).facts.filter((fact) => fact.kind === kind);

const comings = (kind: FactKind, heading: string, text: string): readonly Force[] =>
  factsOf(kind, heading, text).map(comesTo);

/** What the rule finds in the clause, as it quotes it. */
const found = (rule: string, heading: string, text: string): readonly (string | undefined)[] =>
  findings(section(heading, text))
    .filter((finding) => finding.rule === rule)
    .map((finding) => finding.found);

describe('a ban that need, weather or somebody on the site may lift is none', () => {
  test.each([
    ['water-added-to-surface', 'Do not add water to the surface unless it has dried.'],
    ['water-added-to-surface', 'Do not add water to the surface, except on hot days.'],
    ['water-added-to-surface', "Do not add water to the surface without the inspector's approval."],
    ['water-added-to-surface', 'Do not add water to the surface unless permitted by the foreman.'],
    ['calcium-chloride-allowed', 'Do not use calcium chloride without approval.'],
    ['calcium-chloride-allowed', 'No calcium chloride shall be used unless the weather is cold.'],
    ['site-water-uncontrolled', 'Do not add water at the site unless the concrete is too stiff to place.'],
    ['hard-trowel-outdoors', 'Do not steel-trowel unless the surface is too dry to broom.'],
    ['dry-cement-on-surface', 'Do not sprinkle dry cement on the surface except on wet days.'],
  ])('%s speaks, and quotes the exception: %s', (rule, text) => {
    const exception = text.slice(text.search(/unless|except|without/)).replace('.', '');
    const [first] = findings(section('FINISHING', text)).filter((finding) => finding.rule === rule);
    expect(first?.severity).toBe('must');
    expect(`${first?.message} ${first?.detail}`).toContain(exception);
  });

  test.each([
    ['water-added-to-surface', 'Do not add water to the surface except fog above the slab.'],
    ['water-added-to-surface', 'Do not add water to the surface except for curing after final set.'],
    ['water-added-to-surface', 'Do not add water to the surface except as needed for curing.'],
    ['water-added-to-surface', 'Do not add water at the site unless the concrete is too stiff to place.'],
    ['calcium-chloride-allowed', 'Do not use calcium chloride unless the Engineer directs in writing.'],
    ['calcium-chloride-allowed', "Do not use calcium chloride without the Engineer's written approval."],
    ['site-water-uncontrolled', 'Add no water at the site except the water withheld from the approved mixture.'],
    ['site-water-uncontrolled', 'Add no water at the site unless otherwise specified.'],
    ['hard-trowel-outdoors', 'Do not steel-trowel except interior floors.'],
  ])('%s is silent where the exception is bound to something harmless: %s', (rule, text) => {
    expect(found(rule, 'FINISHING', text)).toEqual([]);
  });

  test('an exception that names an approval counts for a ban only', () => {
    expect(comings('accelerator', 'ADMIXTURES', 'Calcium chloride may be used without approval.')).toEqual(['permit']);
  });
});

describe('a comparison that is denied is a limit and no ban', () => {
  test.each([
    ['w-cm', 'w/cm in no case over 0.50.', { max: 0.5 }],
    ['w-cm', 'In no case shall the w/cm be over 0.50.', { max: 0.5 }],
    ['w-cm', 'w/cm above 0.45 is not permitted.', { max: 0.45 }],
    ['scm', 'Fly ash shall in no case be more than 35% of the cementitious material.', { max: 35 }],
    ['scm', 'Do not use fly ash in excess of 35 percent.', { max: 35 }],
    ['strength', "f'c shall never be less than 3000 psi (21 MPa).", { min: 3000, also: [{ min: 21 }] }],
    ['strength', "f'c 4000 psi, w/cm never over 0.50.", { target: 4000 }],
    ['air-content', 'Air shall never fall below 2 percent.', { min: 2 }],
    ['air-content', 'Air shall at no time be allowed to fall below 2 percent.', { min: 2 }],
    ['air-content', 'Concrete with air below 4.5 percent is not acceptable.', { min: 4.5 }],
    ['air-content', 'Air not less than 4.5 percent nor more than 7.5 percent.', { min: 4.5, max: 7.5 }],
    ['concrete-temperature', 'Do not place concrete at less than 40 °F.', { min: 40 }],
  ] as const)('%s: %s', (kind, text, value) => {
    const [fact, ...more] = factsOf(kind, 'MIXTURES', text);
    expect(more).toEqual([]);
    expect(fact).toMatchObject({ force: 'require', value });
  });

  test('a number that is banned as such stays banned', () => {
    expect(factsOf('scm', 'MIXTURES', 'Do not use 35 percent fly ash.')).toMatchObject([{ force: 'ban' }]);
  });

  test.each([
    ['w-cm-high', 'w/cm in no case over 0.50.'],
    ['scm-over-cap', 'Fly ash shall in no case be more than 35% of the cementitious material.'],
    ['strength-low', "f'c shall never be less than 3000 psi."],
    ['air-content-low', 'Air shall never fall below 2 percent.'],
  ])('%s holds the limit against what is asked: %s', (rule, text) => {
    expect(found(rule, 'MIXTURES', text)).toHaveLength(1);
  });

  test('concrete that is refused for too little air is not concrete without air', () => {
    const text = 'Concrete with air below 4.5 percent is not acceptable.';
    expect(factsOf('air-entrainment', 'MIXTURES', text)).toEqual([]);
  });
});

describe('a duty that is waived is none, and a ban that is waived lets the thing be done', () => {
  test.each([
    ['bleed-water', 'Finishing need not wait for bleed water to leave.', ['waive']],
    ['surface-water', 'The surface need not be kept free of added water.', ['permit']],
    ['surface-water', 'It is not prohibited to moisten the surface for the last pass.', ['permit']],
    ['accelerator', 'Accelerators need not be free of chlorides.', ['permit']],
    ['cold-weather', 'No cold-weather protection is required.', ['waive']],
    ['cold-weather', 'No concrete shall be placed when protection from freezing is not required.', ['ban']],
    ['curing', 'No walks shall be placed without curing.', ['require']],
  ] as const)('%s: %s', (kind, text, forces) => {
    expect(comings(kind, 'EXECUTION', text)).toEqual(forces);
  });

  test.each([
    ['finishing-over-bleed-water', 'Finishing need not wait for bleed water to leave.'],
    ['finishing-over-bleed-water', 'The finisher need not wait for bleed water to evaporate and may float it back in.'],
    ['water-added-to-surface', 'The surface need not be kept free of added water.'],
    ['water-added-to-surface', 'It is not prohibited to moisten the surface for the last pass.'],
    ['calcium-chloride-allowed', 'Accelerators need not be free of chlorides.'],
    ['cold-weather-clause-missing', 'Broom finish. ACI 306.1 need not be followed.'],
    ['cold-weather-clause-missing', 'Broom finish. No cold-weather protection is required.'],
  ])('%s speaks: %s', (rule, text) => {
    expect(found(rule, 'FINISHING', text)).toHaveLength(1);
  });

  test.each([
    ['finishing-over-bleed-water', 'Bleed water need not be worked in.'],
    ['finishing-over-bleed-water', 'Finishing shall wait for bleed water to leave.'],
    ['cold-weather-clause-missing', 'Broom finish. In cold weather follow ACI 306.1.'],
  ])('%s is silent: %s', (rule, text) => {
    expect(found(rule, 'FINISHING', text)).toEqual([]);
  });
});

describe('a definition, a report and a story order nothing', () => {
  test.each([
    ['surface-water', 'DEFINITIONS', 'Blessing: sprinkling water on the fresh surface to aid trowelling.'],
    ['dry-cement', 'DEFINITIONS', 'Dusting: spreading dry cement on the surface.'],
    [
      'dry-cement',
      'FINISHING',
      'Submit a repair plan for surfaces where water or dry cement was sprinkled during finishing.',
    ],
  ] as const)('%s under %s: %s', (kind, heading, text) => {
    expect(comings(kind, heading, text).filter((force) => force !== 'state')).toEqual([]);
  });

  test.each([
    'The walks of the north lot, with 3 percent air and cured for 2 days, scaled; this Section is to prevent that.',
    'Water was sprinkled on the walks of the north lot and they peeled in the first winter.',
  ])('a story gives no fact: %s', (text) => {
    const { facts } = read(section('BACKGROUND', text));
    expect(facts.filter(({ place }) => place === '3.04.A').map(({ kind }) => kind)).toEqual([]);
  });

  test.each([
    ['air-content', 'Replace spalled walks with concrete of 6 percent air.', 'require'],
    ['curing-method', 'Cover the slab with wet burlap as soon as it was broomed.', 'require'],
    ['bleed-water', 'Float when bleed water has left the surface.', 'require'],
  ] as const)('an order that only speaks of the past is one: %s: %s', (kind, text, force) => {
    expect(comings(kind, 'EXECUTION', text)).toEqual([force]);
  });
});

describe('a ban of the excess, or of one way of doing it, allows the rest', () => {
  test.each([
    ['water-added-to-surface', 'Do not add water to the surface in excess.', 'in excess'],
    ['water-added-to-surface', 'Do not add more water to the surface than needed to ease finishing.', 'than needed'],
    ['water-added-to-surface', 'Do not add water to the surface by hose; a bucket and brush may be used.', 'a bucket'],
    [
      'water-added-to-surface',
      'Do not add water to the surface except that, on hot days, a light dash from a wet brush is acceptable.',
      'a light dash',
    ],
    ['calcium-chloride-allowed', 'Do not use calcium chloride in excess of 2 percent.', 'in excess of 2'],
    ['calcium-chloride-allowed', 'Calcium chloride is not to be used above 2 percent.', 'above 2 percent'],
    ['calcium-chloride-allowed', 'Do not use more than 2 percent calcium chloride.', '2 percent'],
    ['site-water-uncontrolled', 'Do not add more water at the site than necessary.', 'than necessary'],
    ['deicer-hold-off-missing', 'Broom finish. Use no more de-icers than needed in the first winter.', undefined],
    [
      'deicer-hold-off-missing',
      'Broom finish. Use no de-icers in the first winter except calcium chloride.',
      undefined,
    ],
  ])('%s speaks: %s', (rule, text, words) => {
    const quotes = found(rule, 'FINISHING', text);
    expect(quotes).toHaveLength(1);
    if (words !== undefined) expect(quotes[0]).toContain(words);
  });

  test.each([
    ['water-added-to-surface', 'Do not add water to the surface; a broom may be used.'],
    ['water-added-to-surface', 'Do not add water to the surface; fog may be used above the slab.'],
    ['site-water-uncontrolled', 'Do not add water at the site in excess of the maximum w/cm.'],
    ['site-water-uncontrolled', 'Do not add water at the site in excess of the amount withheld.'],
    ['deicer-hold-off-missing', 'Broom finish. Use no de-icers unless the concrete has dried for 30 days.'],
  ])('%s is silent: %s', (rule, text) => {
    expect(found(rule, 'FINISHING', text)).toEqual([]);
  });
});

describe('a trowel in a condition, or on faces that nothing reaches', () => {
  test.each([
    'Do not steel-trowel unless the Engineer asks for a trowelled margin 2 in. wide beside joints.',
    'Faces hidden in the work may be steel-trowelled.',
    'Broom finish; steel-trowel finish on faces hidden in the work.',
    'Any steel-trowelled panel shall be removed.',
  ])('is no finish of the walk: %s', (text) => {
    expect(found('hard-trowel-outdoors', 'FINISHING', text)).toEqual([]);
  });

  test.each([
    'No finish other than a steel-trowel finish.',
    'Do not broom except where trowelled smooth.',
    'Steel-trowel the faces that people walk on.',
  ])('is one: %s', (text) => {
    expect(found('hard-trowel-outdoors', 'FINISHING', text)).toHaveLength(1);
  });
});

describe('what only looks like an exception, a waiver or an excess', () => {
  test.each([
    ['surface-water', 'Do not apply water to the surface of the slab.', 'ban'],
    ['site-water', 'No water shall be added at the site except as permitted by ASTM C94.', 'ban'],
    ['accelerator', 'Do not use accelerators containing more than 0.05 percent chloride ion by mass.', 'none'],
    ['accelerator', 'Calcium chloride and admixtures with more than 0.1 percent chloride are not permitted.', 'ban'],
    ['accelerator', 'Calcium chloride above 2 percent is not permitted.', 'permit'],
  ] as const)('%s: %s', (kind, text, force) => {
    expect(comings(kind, 'FINISHING', text)).toEqual(force === 'none' ? [] : [force]);
  });

  test('water at the site as ASTM C94 has it, with the w/cm held, is controlled', () => {
    const text = 'Batch water may be added at the site as provided in ASTM C94, the maximum w/cm not being exceeded.';
    expect(found('site-water-uncontrolled', 'PLACING', text)).toEqual([]);
  });
});
