/** Points and bands of exposure evidence. */
import { describe, expect, test } from 'vitest';
import { exposureEvidence } from '../../rules/formulas/exposure-evidence.ts';
import type { Cue } from '../../rules/model/specification.ts';

const cue = (kind: Cue['kind'], words: string, place = '3.05.A'): Cue => ({ kind, words, place });
const plaza = cue('outdoor-noun', 'plaza');
const steps = cue('either-noun', 'steps');
const hardTrowel = cue('indoor-finish', 'hard steel-trowel finish');

describe('examples of the scale', () => {
  test('plaza steps with a hard trowel finish: a finish never argues against a noun', () => {
    const { points, band, counted } = exposureEvidence([plaza, steps, hardTrowel]);
    expect([points, band]).toEqual([6, 'strong exterior']);
    expect(counted).toEqual([{ cue: plaza, points: 6 }]);
  });

  test('a bus apron alone', () => {
    expect(exposureEvidence([cue('outdoor-noun', 'bus apron')])).toMatchObject({ points: 6, band: 'strong exterior' });
  });

  test('stair 2, metal pan, steel trowel', () => {
    const cues = [cue('either-noun', 'stair'), cue('indoor-noun', 'metal pan'), cue('indoor-finish', 'steel trowel')];
    expect(exposureEvidence(cues)).toMatchObject({ points: 0, band: 'unknown' });
  });
});

describe('counting', () => {
  test('repeats are not added', () => {
    const twice = [cue('weather-word', 'snow', '1.02'), cue('weather-word', 'de-icing', '2.02')];
    const { points, counted } = exposureEvidence(twice);
    expect([points, counted.map(({ cue: each }) => each.words)]).toEqual([4, ['snow']]);
  });

  test('the strongest noun counts, wherever it was read', () => {
    expect(exposureEvidence([steps, plaza]).counted).toEqual([{ cue: plaza, points: 6 }]);
  });

  test('a finish counts where no noun says where the element is', () => {
    expect(exposureEvidence([cue('outdoor-finish', 'broom finish')]).points).toBe(2);
    expect(exposureEvidence([hardTrowel]).points).toBe(-2);
    expect(exposureEvidence([cue('outdoor-section', '32 13 13'), cue('outdoor-finish', 'broom')]).points).toBe(5);
  });

  test('an indoor noun is a noun too', () => {
    const hall = [cue('indoor-noun', 'ticket hall'), hardTrowel];
    expect(exposureEvidence(hall)).toMatchObject({ points: -4, band: 'medium interior' });
  });

  test('a bound class outweighs a noun', () => {
    expect(exposureEvidence([cue('freeze-class', 'F3'), cue('indoor-noun', 'floor')])).toMatchObject({
      points: 6,
      band: 'strong exterior',
    });
    expect(exposureEvidence([cue('no-freeze-class', 'F0'), steps])).toMatchObject({
      points: -6,
      band: 'strong interior',
    });
  });

  test('weather words and an outdoor section strengthen a noun', () => {
    const ramp = [cue('either-noun', 'ramp'), cue('weather-word', 'salt'), cue('outdoor-section', '32 16 00')];
    expect(exposureEvidence(ramp)).toMatchObject({ points: 11, band: 'strong exterior' });
  });
});

describe('bands', () => {
  test.each([
    [[], 0, 'unknown'],
    [[steps], 4, 'medium exterior'],
    [[cue('outdoor-section', '32 13 13')], 3, 'medium exterior'],
    [[cue('outdoor-finish', 'tined')], 2, 'unknown'],
    [[hardTrowel], -2, 'unknown'],
    [[cue('indoor-noun', 'office')], -4, 'medium interior'],
    [[cue('no-freeze-class', 'XC1')], -10, 'strong interior'],
    [[cue('freeze-class', 'F2')], 10, 'strong exterior'],
  ] as const)('%j', (cues, points, band) => expect(exposureEvidence(cues)).toMatchObject({ points, band }));
});

test('the working names each cue with its place, and the sum', () => {
  const texts = exposureEvidence([plaza, hardTrowel, cue('indoor-noun', 'hall', '')]).steps.map(({ text }) => text);
  expect(texts).toEqual(['"plaza" (3.05.A): +6', '"hall": −4', '+2 points: unknown']);
});

test('no cues, no points', () => {
  expect(exposureEvidence([]).steps.map(({ text }) => text)).toEqual(['0 points: unknown']);
});
