/** What is not given, editions and codes, the working, and that more classes never ask for less. */
import { describe, expect, test } from 'vitest';
import { computeRequirement } from '../../rules/formulas/requirement.ts';
import { computedCodes, isComputed, structuralUnder } from '../../rules/formulas/requirement-input.ts';
import { codeIds } from '../../rules/model/project.ts';
import { inches } from '../../rules/model/quantity.ts';
import type { Requirement } from '../../rules/model/requirement.ts';
import { air, caps, given, mixture, required, structure } from './asking.ts';

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
