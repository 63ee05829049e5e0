/** What is done, in the words people use for it: a sentence under its heading, and the fact that it gives, or none. */
import { describe, expect, test } from 'vitest';
import { type ActFact, type ActKind, isAct } from '../../rules/model/fact.ts';
import { read } from '../../server/reading/read.ts';

const factsUnder = (heading: string, text: string) =>
  read({
    path: 'walks.md',
    text: `SECTION 32 13 13 - CONCRETE PAVING\nPART 3 - EXECUTION\n3.04 ${heading}\nA. ${text}\n`,
  }).facts;

const actsUnder = (kind: ActKind, heading: string, text: string): readonly ActFact[] =>
  factsUnder(heading, text).filter((fact): fact is ActFact => isAct(fact) && fact.kind === kind);

const forces = (kind: ActKind, heading: string, text: string): readonly string[] =>
  actsUnder(kind, heading, text).map(({ force }) => force);

const row = (first: string, second: string): string =>
  `Materials.\n\n| Item | Allowed |\n| --- | --- |\n| ${first} | ${second} |`;

describe('a refusal in other words than "shall not"', () => {
  test.each([
    'Calcium chloride: none.',
    'Calcium chloride may not be used under any circumstances.',
    "Calcium chloride isn't permitted.",
    'Calcium chloride and admixtures that contain it aren’t permitted.',
    'Accelerators which contain calcium chloride are excluded.',
    'Chloride-bearing accelerators: not acceptable.',
    'Chloride-containing accelerators: prohibited.',
    'The use of calcium chloride will result in rejection.',
    row('Calcium chloride', 'No'),
    row('Calcium chloride', 'Not allowed'),
  ])('an accelerator is banned: %s', (text) => {
    expect(forces('accelerator', 'ADMIXTURES', text)).toEqual(['ban']);
  });

  test.each([
    ['Calcium chloride: permitted.', 'permit'],
    ['Calcium chloride: 2 percent by weight of cement.', 'require'],
    [row('Calcium chloride', 'Yes'), 'permit'],
    [row('Calcium chloride', '2 percent'), 'require'],
  ])('an accelerator is not banned: %s', (text, force) => {
    expect(forces('accelerator', 'ADMIXTURES', text)).toEqual([force]);
  });

  test.each([
    ['finish', 'Any steel-trowelled panel shall be removed.'],
    ['surface-water', 'The use of water to assist finishing will be cause for removal of the panel.'],
    ['surface-water', 'Sprinkling water on the slab during finishing is grounds for rejection.'],
  ] as const)('what is torn out is banned: %s in "%s"', (kind, text) => {
    expect(forces(kind, 'FINISHING', text)).toEqual(['ban']);
  });

  test('the finish that is ordered stays ordered beside the one that is rejected', () => {
    const made = actsUnder('finish', 'FINISHING', 'Broom finish; a smooth trowelled surface will be rejected.');
    expect(made.map(({ force, act }) => [force, act.steps])).toEqual([
      ['require', ['broom']],
      ['ban', ['hard trowel']],
    ]);
  });

  test('bleed water that is removed from a slab is no ban', () => {
    expect(
      forces('bleed-water', 'FINISHING', 'Bleed water on the slab shall be removed before floating.'),
    ).not.toContain('ban');
  });
});

describe('what the heading names and the clause leaves out', () => {
  test.each([
    'Apply none in the first winter.',
    'None until the concrete has passed its first winter.',
    'None shall be spread by the Owner in the first winter.',
    'Salt: none the first winter.',
    'Keep off all new concrete for the first winter.',
    'The Owner won’t use de-icing salts during the first winter.',
    'Until one winter has passed use sand and no salt.',
  ])('under DE-ICERS a hold-off: %s', (text) => {
    const spread = actsUnder('deicer-use', 'DE-ICERS', text).filter(({ act }) => act.verb === 'spread');
    expect(spread.map(({ force, act }) => [force, act.material])).toEqual([['ban', 'de-icer']]);
  });

  test.each([
    ['DE-ICERS', 'Use no steel shovels in the first winter.'],
    ['DE-ICERS', 'Salt: only after the first winter.'],
    ['PROTECTION', 'Keep off all new concrete for the first week.'],
    ['CURING', 'None until the Engineer approves the compound.'],
  ])('no hold-off: under %s "%s"', (heading, text) => {
    const spread = actsUnder('deicer-use', heading, text).filter(({ act }) => act.verb === 'spread');
    expect(spread.filter(({ force }) => force === 'ban')).toEqual([]);
  });

  test('sand in place of salt is ordered', () => {
    const made = actsUnder('deicer-use', 'DE-ICERS', 'Until one winter has passed use sand and no salt.');
    expect(made.find(({ act }) => act.verb === 'sand')?.force).toBe('require');
  });

  test.each([
    ['The Owner will not use de-icing salts.', 'no'],
    ["The Owner won't use de-icing salts.", 'no'],
    ['The Owner will use de-icing salts.', 'yes'],
  ])('whether de-icers come: %s', (text, value) => {
    const said = factsUnder('DE-ICERS', text).filter(({ kind }) => kind === 'deicers');
    expect(said).toMatchObject([{ value }]);
  });

  test.each([
    ['COLD WEATHER', 'ACI 306.1.', 'requirement'],
    ['COLD WEATHER', 'ACI 306.1 applies.', 'requirement'],
    ['PLACING', 'ACI 306.1 in cold weather.', 'requirement'],
    ['QUALITY ASSURANCE', 'ACI 306.1.', 'listed'],
    ['COLD WEATHER', 'ACI 306.1 is not attached.', 'listed'],
  ])('a standard that stands alone: under %s "%s"', (heading, text, of) => {
    expect(factsUnder(heading, text).filter(({ kind }) => kind === 'standard')).toMatchObject([{ of }]);
  });

  test('paving that stops at a falling temperature is a rule for cold weather', () => {
    const text = 'Paving shall be discontinued when a descending air temperature in the shade reaches 40 °F.';
    expect(actsUnder('cold-weather', 'WEATHER', text)).toMatchObject([{ act: { verb: 'place', time: 'trigger' } }]);
  });
});

test('the order behind an opening condition keeps its length of time', () => {
  const made = factsUnder('CURING', 'After washing cover with wet burlap for 7 days.');
  expect(made.filter(({ kind }) => kind === 'curing-duration')).toMatchObject([{ value: { target: 7, unit: 'd' } }]);
});

describe('an act in other words', () => {
  test.each([
    ['Water shall be added to the surface only as needed.', 'require'],
    ['Adding water to the surface to assist in finishing will be permitted in the form of a fine spray.', 'permit'],
    ["A fine mist from a pump-up sprayer ahead of the bull float is the finisher's choice.", 'permit'],
    ['Wet the broom and flick it over the slab before the last float pass.', 'require'],
    ['Fog-spray until the surface glistens and trowel this moisture in.', 'require'],
    ['Under no circumstances shall water, cement or a mixture of the two be spread upon the surface.', 'ban'],
    ['Water as a finishing aid is grounds for rejection.', 'ban'],
  ])('water on the surface: %s', (text, force) => {
    expect(actsUnder('surface-water', 'FINISHING', text)).toMatchObject([{ force, act: { object: 'surface' } }]);
  });

  test.each([
    'Fog above the slab before the float pass.',
    'Spray the curing compound in a fine mist after brooming.',
    'Shake the broom clean before it is pulled over the slab again.',
    'Water on the slab shall be removed.',
  ])('no water on the surface: %s', (text) => {
    expect(actsUnder('surface-water', 'FINISHING', text)).toEqual([]);
  });

  test('moisture that is trowelled in is bleed water worked in', () => {
    const text = 'Fog-spray until the surface glistens and trowel this moisture in.';
    expect(actsUnder('bleed-water', 'FINISHING', text)).toMatchObject([{ force: 'require', act: { verb: 'work in' } }]);
  });

  test.each([
    ['Under no circumstances shall water, cement or a mixture of the two be spread upon the surface.', ['ban']],
    ['Do not dust the surface with cement.', ['ban']],
    ['Cement paste that clings to the surface of the broom shall be rinsed off.', []],
    ['Apply Portland cement grout to the face of the wall.', []],
  ])('dry cement: %s', (text, expected) => {
    expect(forces('dry-cement', 'FINISHING', text)).toEqual(expected);
  });

  test('water as a finishing aid is no evaporation retarder', () => {
    const text = 'Water as a finishing aid is grounds for rejection.';
    expect(actsUnder('evaporation-retarder', 'FINISHING', text)).toEqual([]);
    expect(forces('evaporation-retarder', 'FINISHING', 'Use a finishing aid on tight areas.')).toEqual(['require']);
  });

  test.each([
    ['Add water at will to help pumping.', ['require']],
    ['Lubricate the pump line with water and cement before pumping.', []],
  ])('water at the site: %s', (text, expected) => {
    expect(forces('site-water', 'PLACING', text)).toEqual(expected);
  });

  test.each([
    ['For pumped concrete the air may be omitted.', 'permit', 'omit', 'as needed'],
    ['Concrete need not be air-entrained.', 'permit', 'entrain', 'as needed'],
    ['Air entrainment may be omitted in interior footings.', 'permit', 'entrain', 'as needed'],
    ['Do not use air-entraining admixtures.', 'ban', 'entrain', 'plain'],
  ])('air: %s', (text, force, verb, manner) => {
    expect(actsUnder('air-entrainment', 'MIXTURES', text)).toMatchObject([{ force, act: { verb, manner } }]);
  });

  test('a sealer for which air is left out stands in its place', () => {
    const text = 'Apply penetrating sealer; where it is applied, air entrainment may be left out.';
    expect(actsUnder('sealer-instead', 'MIXTURES', text)).toMatchObject([{ act: { manner: 'air' } }]);
  });

  test.each([
    ['Light steel trowel, then broom.', ['trowel', 'broom']],
    ['Trowel lightly only to close tears.', ['light trowel']],
  ])('a trowel before the broom: %s', (text, steps) => {
    expect(actsUnder('finish', 'FINISHING', text)).toMatchObject([{ act: { steps } }]);
  });
});

test('a legend explains the word; the row that has it rules', () => {
  const table = 'Mixtures.\n\n| Use | Air |\n| --- | --- |\n| Exterior walks | NAE |\n\nB. NAE = non-air-entrained.';
  const made = actsUnder('air-entrainment', 'MIXTURES', table);
  expect(made.map(({ force, subject }) => [force, subject.elements.map(({ name }) => name)])).toEqual([
    ['ban', ['walk']],
  ]);
});

test('what the writer of a letter does not want is a statement of its own', () => {
  const text = 'We want it cured seven days under wet burlap, and we do not want calcium chloride in it.';
  expect(forces('curing-method', 'CURING', text)).toEqual(['require']);
  expect(actsUnder('accelerator', 'CURING', text)).toMatchObject([
    { force: 'ban', words: 'and we do not want calcium chloride in it' },
  ]);
});

test('a verdict may give its reason', () => {
  const text = 'Chloride-containing accelerators: prohibited, as they mottle colour.';
  expect(forces('accelerator', 'ADMIXTURES', text)).toEqual(['ban']);
});
