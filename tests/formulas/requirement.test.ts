/** The requirement of whole elements: the worked examples of the trade's rule book, and what hangs on things not given. */
import { describe, expect, test } from 'vitest';
import { computeRequirement } from '../../rules/formulas/requirement.ts';
import {
  computedCodes,
  isComputed,
  type RequirementInput,
  structuralUnder,
} from '../../rules/formulas/requirement-input.ts';
import { codeIds } from '../../rules/model/project.ts';
import { inches, psi } from '../../rules/model/quantity.ts';
import type { Limits, Requirement } from '../../rules/model/requirement.ts';

const given = { structural: 'no', reinforced: 'no', prestressed: 'no' } as const;
const structure = { structural: 'yes', reinforced: 'yes', prestressed: 'no', code: 'aci-318-19' } as const;

function required(input: RequirementInput): Requirement {
  const requirement = computeRequirement(input);
  if (!requirement) throw new Error(`${input.code} is not computed`);
  return requirement;
}

const mixture = (limits: Limits | undefined) => [
  limits?.wcm?.value.amount,
  limits?.strength?.value.inchPound.amount,
  limits?.strength?.value.metric.amount,
];
const air = (limits: Limits | undefined) =>
  limits?.air && [limits.air.target, limits.air.low, limits.air.high, limits.air.reducedTarget];
const caps = [25, 50, 10, 35, 50];

describe('worked examples', () => {
  // IBC 1904.2 and Table 19.3.2.1 footnote of ACI 318-19
  test('1: a plain salted walk on ground', () => {
    const walk = required({ ...given, code: 'ibc', classes: ['F3'], aggregate: inches(3 / 4) });
    expect(mixture(walk.lawful)).toEqual([undefined, 3500, 24]);
    expect(air(walk.lawful)).toEqual([6, 4.5, 7.5, undefined]);
    expect(mixture(walk.recommended)).toEqual([0.45, 4500, 31]);
    expect(walk.lawful.scm).toEqual([]);
    expect(walk.recommended?.scm.map(({ max }) => max)).toEqual(caps);
    expect(walk.recommended?.chloride).toBeUndefined();
  });

  // ACI 318-19, Tables 19.3.2.1, 19.3.3.1 and 26.4.2.2(b), 19.3.3.6
  test('2: a reinforced apron slab over a tunnel', () => {
    const apron = required({ ...structure, classes: ['F3', 'W1', 'C2'], aggregate: inches(3 / 4) });
    expect(mixture(apron.lawful)).toEqual([0.4, 5000, 35]);
    expect(air(apron.lawful)).toEqual([6, 4.5, 7.5, 5]);
    expect(apron.lawful.chloride).toMatchObject({ value: 0.15, of: 'cementitious materials' });
    expect(apron.lawful.scm.map(({ max }) => max)).toEqual(caps);
    expect(apron.lawful.curing).toMatchObject({ days: 7, highEarlyDays: 3 });
    expect(apron.recommended).toBeUndefined();
    expect(apron.alternatives).toEqual([]);
  });

  // ACI 318-14: the reduction needs more than 5000 psi; chloride by mass of cement
  test('3: the same under the 2014 edition', () => {
    const apron = required({
      ...structure,
      code: 'aci-318-14',
      classes: ['F3', 'C2'],
      aggregate: inches(3 / 4),
      strength: psi(5000),
    });
    expect(mixture(apron.lawful)).toEqual([0.4, 5000, 35]);
    expect(air(apron.lawful)).toEqual([6, 4.5, 7.5, undefined]);
    expect(apron.lawful.chloride).toMatchObject({ value: 0.15, of: 'cement' });
  });

  // ACI 318-19, Table 19.3.2.1: prestressed, 0.06 percent
  test('4: a post-tensioned deck of 6000 psi', () => {
    const deck = required({
      ...structure,
      prestressed: 'yes',
      classes: ['F3', 'C2'],
      aggregate: inches(3 / 4),
      strength: psi(6000),
    });
    expect(mixture(deck.lawful)).toEqual([0.4, 5000, 35]);
    expect(air(deck.lawful)).toEqual([6, 4.5, 7.5, 5]);
    expect(deck.lawful.chloride?.value).toBe(0.06);
  });

  // ACI 318-19, Tables 19.3.2.1 and 19.3.3.1; 26.4.2.2(d)
  test('5: an exterior wall above grade', () => {
    const wall = required({ ...structure, classes: ['F1', 'W1', 'C1'], aggregate: inches(1) });
    expect(mixture(wall.lawful)).toEqual([0.55, 3500, 24]);
    expect(air(wall.lawful)).toEqual([4.5, 3, 6, undefined]);
    expect(wall.lawful.chloride?.value).toBe(0.3);
    expect(wall.lawful.cementitious.map(({ origin }) => origin.clause)).toEqual(['26.4.2.2(d)']);
    expect(wall.lawful.scm).toEqual([]);
  });

  test('6: a retaining wall cap under snow', () => {
    const cap = required({ ...structure, classes: ['F2', 'W1', 'C1'], aggregate: inches(1.5) });
    expect(mixture(cap.lawful)).toEqual([0.45, 4500, 31]);
    expect(air(cap.lawful)).toEqual([5.5, 4, 7, undefined]);
    expect(cap.lawful.chloride?.value).toBe(0.3);
  });

  // ACI 302.1R-15 for the air
  test('7: a heated, hard-trowelled floor', () => {
    const floor = required({ ...structure, classes: ['F0', 'W0', 'C0'], finish: 'hard-trowelled interior floor' });
    expect(mixture(floor.lawful)).toEqual([undefined, 2500, 17]);
    expect(floor.lawful.air).toBeUndefined();
    expect(floor.lawful.chloride?.value).toBe(1);
    expect(mixture(floor.recommended)).toEqual([undefined, 2500, 17]);
    expect(floor.recommended?.airAtMost).toMatchObject({ value: 3, origin: { document: 'ACI 302.1R' } });
  });

  test('8: a wall in sulfate soil', () => {
    const wall = required({ ...structure, classes: ['F1', 'S2', 'W1', 'C1'], aggregate: inches(3 / 4) });
    expect(mixture(wall.lawful)).toEqual([0.45, 4500, 31]);
    expect(air(wall.lawful)).toEqual([5, 3.5, 6.5, undefined]);
    expect(wall.lawful.cementitious[0]?.value).toMatch(/^Class S2: .*Type V.*no calcium chloride$/);
  });

  test('9: a basement wall that must be tight', () => {
    const wall = required({ ...structure, classes: ['F1', 'W2', 'C1'], aggregate: inches(3 / 4) });
    expect(mixture(wall.lawful)).toEqual([0.5, 4000, 28]);
    expect(air(wall.lawful)).toEqual([5, 3.5, 6.5, undefined]);
    expect(wall.lawful.chloride?.value).toBe(0.3);
  });

  test('10: a plain topping with 3/8 in. stone', () => {
    const topping = required({ ...given, code: 'ibc', classes: ['F3'], aggregate: inches(3 / 8) });
    expect(mixture(topping.recommended)).toEqual([0.45, 4500, 31]);
    expect(air(topping.recommended)).toEqual([7.5, 6, 9, undefined]);
  });

  test('11: curb and gutter on private land', () => {
    const curb = required({ ...given, code: 'ibc', classes: ['F3'], aggregate: inches(3 / 4) });
    expect(mixture(curb.lawful)).toEqual([undefined, 3500, 24]);
    expect(mixture(curb.recommended)).toEqual([0.45, 4500, 31]);
    expect(air(curb.lawful)).toEqual([6, 4.5, 7.5, undefined]);
  });

  // IRC Table R402.2 and its footnotes
  test('12: a residential garage floor in severe weathering', () => {
    const floor = required({ ...given, code: 'irc', classes: ['severe'] });
    expect(mixture(floor.lawful)).toEqual([undefined, 3500, 24]);
    expect(air(floor.lawful)).toEqual([6, 5, 7, undefined]);
    const [other] = floor.alternatives;
    expect(other?.about).toBe('finish');
    expect([other?.limits.strength?.value.inchPound.amount, other?.limits.air?.low]).toEqual([4000, 3]);
    expect(other?.limits.air?.origin.known).toBe('from memory');
  });
});

describe('structural or not comes first', () => {
  const walk = { ...given, code: 'aci-318-19', classes: ['F3'], aggregate: inches(3 / 4) } as const;

  test('a ground slab under ACI 318 has the law of the IBC, and the plain pair as advice', () => {
    const { lawful, recommended, declared, steps } = required(walk);
    expect([mixture(lawful), mixture(recommended), declared]).toEqual([
      [undefined, 3500, 24],
      [0.45, 4500, 31],
      undefined,
    ]);
    expect(steps[0]?.origin).toMatchObject({ document: 'ACI 318', edition: '19', clause: '1.4.8' });
  });

  test('a declared class binds a ground slab, except under the IBC alone', () => {
    const declared = required({ ...walk, declared: 'yes' });
    expect(mixture(declared.declared)).toEqual([0.45, 4500, 31]);
    expect(declared.declared?.scm.map(({ max }) => max)).toEqual(caps);
    expect(mixture(required({ ...walk, declared: 'yes', reinforced: 'yes' }).declared)).toEqual([0.4, 5000, 35]);
    expect(required({ ...walk, declared: 'yes', code: 'ibc' }).declared).toBeUndefined();
  });

  test('unknown is judged as a ground slab, with the structural pair as a question', () => {
    const slab = required({ ...walk, structural: 'unknown', reinforced: 'unknown', classes: ['F3', 'C2'] });
    expect(mixture(slab.lawful)).toEqual([undefined, 3500, 24]);
    expect(slab.recommended?.chloride).toBeUndefined();
    expect(slab.alternatives.map(({ about, limits }) => [about, ...mixture(limits)])).toEqual([
      ['structural', 0.4, 5000, 35],
      ['reinforced', 0.4, 5000, 35],
    ]);
    expect(slab.alternatives[0]?.limits.chloride?.value).toBe(0.15);
  });

  test('structural members under the IBC are held to ACI 318', () => {
    const deck = required({ ...structure, code: 'ibc', classes: ['F3'], aggregate: inches(3 / 4) });
    expect(mixture(deck.lawful)).toEqual([0.4, 5000, 35]);
  });

  test('a ground slab that does not freeze gets no advice', () => {
    const floor = required({ ...walk, classes: ['F0'] });
    expect(mixture(floor.lawful)).toEqual([undefined, 2500, 17]);
    expect([floor.lawful.air, floor.recommended]).toEqual([undefined, undefined]);
  });

  test('F1 on ground is advised by its own row', () => {
    const slab = required({ ...walk, classes: ['F1'] });
    expect([mixture(slab.lawful), mixture(slab.recommended)]).toEqual([
      [undefined, 3000, 21],
      [0.55, 3500, 24],
    ]);
  });

  test('a C class is not put on a plain ground slab', () => {
    expect(mixture(required({ ...walk, classes: ['F3', 'C2'] }).recommended)).toEqual([0.45, 4500, 31]);
  });
});

describe('what a ground slab leaves open', () => {
  const slab = { ...given, code: 'aci-318-19', aggregate: inches(3 / 4) } as const;
  const questions = (input: RequirementInput) =>
    required(input).alternatives.map(({ about, given: words, limits }) => [about, words, limits.wcm?.value.amount]);

  test('plain concrete may still be structural: the plain pair', () => {
    expect(questions({ ...slab, structural: 'unknown', classes: ['F3'] })).toEqual([
      ['structural', 'part of the structure', 0.45],
    ]);
  });

  test('the question names steel where nothing is said of it', () => {
    expect(questions({ ...slab, structural: 'unknown', reinforced: 'unknown', classes: ['F2'] })).toEqual([
      ['structural', 'part of the structure and reinforced', 0.45],
    ]);
  });

  test('steel that is there but not structural is a question until the project declares the class', () => {
    const reinforced = { ...slab, reinforced: 'yes', classes: ['F3', 'C2'] } as const;
    expect(questions(reinforced)).toEqual([['reinforced', 'reinforced with at least the minimum steel', 0.4]]);
    expect(required(reinforced).alternatives[0]?.limits.chloride?.value).toBe(0.15);
    expect(questions({ ...reinforced, declared: 'yes' })).toEqual([]);
    const unknown = required({ ...reinforced, reinforced: 'unknown' }).alternatives[0]?.limits;
    expect([unknown?.wcm?.value.amount, unknown?.chloride?.value]).toEqual([0.4, 0.15]);
  });

  test('nothing is asked where nothing hangs on it', () => {
    expect(questions({ ...slab, reinforced: 'unknown', prestressed: 'yes', classes: ['F3'] })).toEqual([]);
    expect(questions({ ...slab, structural: 'unknown', classes: [] })).toEqual([]);
    expect(questions({ ...slab, code: 'irc', reinforced: 'unknown', classes: ['F3'] }).map(([about]) => about)).toEqual(
      ['finish'],
    );
  });

  test('a specified strength of 5000 psi permits less air on ground too', () => {
    expect(air(required({ ...slab, classes: ['F3'], strength: psi(5000) }).lawful)).toEqual([6, 4.5, 7.5, 5]);
    const unsized = required({ ...given, code: 'aci-318-19', classes: ['F3'], strength: psi(5000) });
    expect(unsized.alternatives.map(({ limits }) => limits.air?.reducedTarget)).toEqual([6.5, 6, 5, 5, 4.5]);
  });

  test('the working says whether the text or we took it for a ground slab', () => {
    const opening = (structural: 'no' | 'unknown') => required({ ...slab, structural, classes: ['F3'] }).steps[0]?.text;
    expect(opening('no')).toMatch(/^on ground and no part of the structure;/);
    expect(opening('unknown')).toMatch(/^not said to be structural, so judged as on ground;/);
  });

  test('a class of level 0 beside F3 does not take the advice away', () => {
    expect(mixture(required({ ...slab, classes: ['F3', 'W0'] }).recommended)).toEqual([0.45, 4500, 31]);
  });
});

describe('several classes of one category', () => {
  test('the most severe of them speaks', () => {
    const { lawful } = required({ ...structure, classes: ['F1', 'F3', 'S1', 'S3', 'C1', 'C2'], aggregate: inches(1) });
    expect(air(lawful)?.[0]).toBe(6);
    expect(lawful.chloride?.value).toBe(0.15);
    expect(lawful.cementitious.map(({ value }) => value.slice(0, 9))).toEqual(['Class S3:']);
  });

  test('dry classes ask for no evidence, and no C class for no chloride limit', () => {
    const { lawful, steps } = required({ ...structure, classes: ['W0'] });
    expect([lawful.cementitious, lawful.chloride]).toEqual([[], undefined]);
    expect(steps.map(({ text }) => text).join()).not.toContain('strictest');
  });
});

describe('plain or reinforced, in the structure', () => {
  const stair = { ...structure, classes: ['F3'], aggregate: inches(3 / 4) } as const;

  test.each([
    ['yes', 0.4, 5000],
    ['no', 0.45, 4500],
    ['unknown', 0.45, 4500],
  ] as const)('reinforced %s', (reinforced, wcm, strength) => {
    expect(mixture(required({ ...stair, reinforced }).lawful).slice(0, 2)).toEqual([wcm, strength]);
  });

  test('unknown puts the reinforced pair as a question', () => {
    const { alternatives } = required({ ...stair, reinforced: 'unknown' });
    expect(alternatives.map(({ about, limits }) => [about, limits.wcm?.value.amount])).toEqual([['reinforced', 0.4]]);
    expect(required({ ...stair, reinforced: 'no' }).alternatives).toEqual([]);
  });

  test('C2 beside F3 asks for 0.40 and 5000 psi by itself, and nothing hangs on the steel', () => {
    const slab = required({ ...stair, reinforced: 'unknown', classes: ['F3', 'C2'] });
    expect(mixture(slab.lawful)).toEqual([0.4, 5000, 35]);
    expect(slab.alternatives).toEqual([]);
  });

  test('prestressed concrete is never plain', () => {
    const slab = required({ ...stair, reinforced: 'unknown', prestressed: 'yes' });
    expect(mixture(slab.lawful)).toEqual([0.4, 5000, 35]);
    expect(slab.lawful.chloride?.value).toBe(0.06);
  });

  test('plain concrete has no chloride limit', () => {
    expect(required({ ...stair, reinforced: 'no', classes: ['F3', 'C1'] }).lawful.chloride).toBeUndefined();
  });
});

describe('what is not given', () => {
  test('without a size the air of each usual size is an alternative', () => {
    const { lawful, alternatives } = required({ ...structure, classes: ['F3'] });
    expect(air(lawful)).toEqual([5.5, 4, 9, 4.5]);
    expect(alternatives.map(({ given: words, limits }) => [words, limits.air?.target])).toEqual([
      ['made with 3/8 in. (9.5 mm) aggregate', 7.5],
      ['made with 1/2 in. (12.5 mm) aggregate', 7],
      ['made with 3/4 in. (19 mm) aggregate', 6],
      ['made with 1 in. (25 mm) aggregate', 6],
      ['made with 1-1/2 in. (37.5 mm) aggregate', 5.5],
    ]);
  });

  test('S3 may be met without pozzolan under 2019 only', () => {
    const wall = { ...structure, classes: ['S3'] } as const;
    const [option] = required(wall).alternatives;
    expect(option?.about).toBe('binder');
    expect(mixture(option?.limits)).toEqual([0.4, 5000, 35]);
    expect(option?.limits.cementitious.map(({ value }) => value.includes('pozzolan'))).toEqual([false]);
    expect(required({ ...wall, code: 'aci-318-14' }).alternatives).toEqual([]);
  });

  test('no class at all asks nothing but curing', () => {
    const { lawful, recommended } = required({ ...structure, classes: [] });
    expect([lawful.wcm, lawful.strength, lawful.air, recommended]).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
  });
});

describe('the 2014 edition', () => {
  test('W1 must be tight there', () => {
    const tank = { ...structure, classes: ['W1'] } as const;
    expect(mixture(required({ ...tank, code: 'aci-318-14' }).lawful)).toEqual([0.5, 4000, 28]);
    expect(mixture(required(tank).lawful)).toEqual([undefined, 2500, 17]);
    expect(required({ ...tank, code: 'aci-318-14' }).lawful.cementitious).toEqual([]);
  });

  test('a class it does not have is named and gives nothing', () => {
    const { lawful, steps } = required({ ...structure, code: 'aci-318-14', classes: ['W2', 'F4'] });
    expect(lawful.wcm).toBeUndefined();
    expect(steps.map(({ text }) => text)).toEqual(
      expect.arrayContaining([
        '"W2" is no class of ACI 318-14: nothing is taken from it',
        '"F4" is no class of ACI 318-14: nothing is taken from it',
      ]),
    );
  });
});

describe('the residential code', () => {
  const steps = { ...given, code: 'irc', classes: ['F3'], aggregate: inches(3 / 4) } as const;

  test('a freezing class stands for its weathering; the durable pair is advice', () => {
    const { lawful, recommended } = required(steps);
    expect(mixture(lawful)).toEqual([undefined, 3500, 24]);
    expect(lawful.scm.map(({ max, origin }) => [max, origin.document])[0]).toEqual([25, 'IRC']);
    expect(mixture(recommended)).toEqual([0.45, 4500, 31]);
  });

  test('upright work in severe weathering', () => {
    const wall = required({ ...steps, lie: 'upright' });
    expect([mixture(wall.lawful), wall.lawful.scm, wall.alternatives]).toEqual([[undefined, 3000, 21], [], []]);
  });

  test('negligible weathering needs no air', () => {
    const floor = required({ ...steps, classes: ['negligible'] });
    expect([floor.lawful.air, floor.recommended, floor.alternatives]).toEqual([undefined, undefined, []]);
  });

  test('of two words the worse holds, and severe weathering is advised as salted', () => {
    const floor = required({ ...steps, classes: ['moderate', 'severe'] });
    expect(mixture(floor.lawful)).toEqual([undefined, 3500, 24]);
    expect(floor.recommended?.scm.map(({ max }) => max)).toEqual(caps);
    expect(mixture(required({ ...steps, classes: ['moderate'] }).lawful)).toEqual([undefined, 3000, 21]);
  });

  test('what is neither class nor weathering is named', () => {
    expect(required({ ...steps, classes: ['F3', 'C-2'] }).steps[0]?.text).toBe(
      '"C-2" is no class of ACI 318-19: nothing is taken from it',
    );
  });

  test('a word for the weathering is no stranger', () => {
    expect(
      required({ ...steps, classes: ['severe'] })
        .steps.map(({ text }) => text)
        .join(),
    ).not.toContain('no class');
  });
});

describe('codes', () => {
  test('what is not computed says so by its type', () => {
    expect(codeIds.filter((code) => !isComputed(code))).toEqual([
      'aci-318-25',
      'csa-a23-1-19',
      'en-206',
      'aashto-r-101',
    ]);
    for (const code of codeIds) {
      expect(computeRequirement({ ...given, code, classes: ['F3'] }) === undefined).toBe(!isComputed(code));
    }
  });

  test('where only a code is given, ACI 318 is for structures and the others for ground slabs', () => {
    expect(structuralUnder).toEqual({ 'aci-318-19': 'yes', 'aci-318-14': 'yes', ibc: 'no', irc: 'no' });
  });

  test('every step of a limit has its origin among the citations, and no citation twice', () => {
    for (const code of computedCodes) {
      for (const structural of ['yes', 'no', 'unknown'] as const) {
        const { steps, citations } = required({ ...given, code, structural, classes: ['F3', 'C2'] });
        for (const { origin } of steps) if (origin) expect(citations).toContainEqual(origin);
        expect(new Set(citations.map((origin) => JSON.stringify(origin))).size).toBe(citations.length);
        expect(new Set(steps.map(({ text }) => text)).size).toBe(steps.length);
        expect(0 < citations.length).toBe(true);
      }
    }
  });
});

test('more classes never loosen a requirement', () => {
  const strict = ({ lawful }: Requirement) => [
    -(lawful.wcm?.value.amount ?? 1),
    lawful.strength?.value.inchPound.amount ?? 0,
  ];
  const names = ['F1', 'F2', 'F3', 'S1', 'S2', 'S3', 'W1', 'W2', 'C1', 'C2'];
  for (const first of names) {
    for (const second of names) {
      const alone = strict(required({ ...structure, classes: [first] }));
      const both = strict(required({ ...structure, classes: [first, second] }));
      for (const [index, number] of both.entries()) expect(alone[index]).toBeLessThanOrEqual(number);
    }
  }
});

test('what the project declares and what lasts is told once where it is the same', () => {
  const walk = { ...given, code: 'aci-318-19', declared: 'yes', classes: ['F3'], aggregate: inches(3 / 4) } as const;
  const texts = required(walk).steps.map(({ text }) => text);
  expect(texts.slice(1, 6)).toEqual([
    "Class F3, nonstructural: f'c 3500 psi (24 MPa), no limit on w/cm",
    'Class F3, 3/4 in. (19 mm) aggregate: 6 percent total air',
    'tolerance ± 1.5 points as delivered: 4.5 to 7.5 percent',
    'declared by the project, so binding:',
    "Class F3, plain concrete: w/cm 0.45, f'c 4500 psi (31 MPa)",
  ]);
  expect(texts.at(-1)).toBe('recommended so that it lasts: the same');
});

test('the working of an apron reads as a person would tell it', () => {
  const { steps } = required({ ...structure, classes: ['F3', 'W1', 'C2'], aggregate: inches(3 / 4) });
  expect(steps.map(({ text }) => text)).toEqual([
    'part of the structure: ACI 318-19 holds in full',
    "Class F3, reinforced: w/cm 0.40, f'c 5000 psi (35 MPa)",
    "Class W1: no limit on w/cm, f'c 2500 psi (17 MPa)",
    "Class C2: w/cm 0.40, f'c 5000 psi (35 MPa)",
    "strictest of the classes: w/cm at most 0.40, f'c at least 5000 psi (35 MPa)",
    'Class F3, 3/4 in. (19 mm) aggregate: 6 percent total air',
    'tolerance ± 1.5 points as delivered: 4.5 to 7.5 percent',
    "f'c of 5000 psi (35 MPa) is at or above 5000 psi (35 MPa): the target may be 1 point lower",
    'Class F3, percent of cementitious mass at most: fly ash 25, slag cement 50, silica fume 10, fly ash + silica fume 35, all three 50',
    'water-soluble chloride at most 0.15 percent of cementitious materials',
    'evidence that alkalis and the aggregates do not react harmfully',
    'curing at least 7 days at 50 °F (10 °C) or above, 3 days for high-early-strength concrete',
  ]);
});
