/** Exposure classes against names and order typed here. */
import { describe, expect, test } from 'vitest';
import { exposureClasses, freezeClasses, saltedClasses } from '../../rules/tables/exposure.ts';

const names = (edition: keyof typeof exposureClasses) => exposureClasses[edition].map(({ name }) => name);

describe('classes of ACI 318', () => {
  // ACI 318-19, Table 19.3.1.1
  test('2019: four freezing, four sulfate, three water, three corrosion classes', () => {
    expect(names('aci-318-19').join(' ')).toBe('F0 F1 F2 F3 S0 S1 S2 S3 W0 W1 W2 C0 C1 C2');
  });

  // ACI 318-14, Table 19.3.1.1: no W2
  test('2014: two water classes', () => {
    expect(names('aci-318-14').join(' ')).toBe('F0 F1 F2 F3 S0 S1 S2 S3 W0 W1 C0 C1 C2');
  });

  test('W1 must be tight in 2014 and need not be in 2019', () => {
    const meaning = (edition: keyof typeof exposureClasses) =>
      exposureClasses[edition].find(({ name }) => name === 'W1')?.meaning;
    expect(meaning('aci-318-14')).toBe('wet, must be tight');
    expect(meaning('aci-318-19')).toBe('wet, need not be tight');
  });

  test.each(Object.entries(exposureClasses))(
    '%s: the level is the number in the name and rises in its category',
    (_, rows) => {
      for (const { name, category, level } of rows) expect(name).toBe(`${category}${level}`);
    },
  );

  // ACI 318-19, Table 19.3.1.1: in soil 0.10, 0.20, 2.00 percent; in water 150, 1500, 10 000 ppm
  test('sulfate bounds', () => {
    const words = exposureClasses['aci-318-19']
      .filter(({ category }) => category === 'S')
      .map(({ meaning }) => meaning);
    expect(words.map((meaning) => meaning.match(/\d[\d. ]*\d/g))).toEqual([
      ['0.10', '150'],
      ['0.10', '0.20', '150', '1500'],
      ['0.20', '2.00', '1500', '10 000'],
      ['2.00', '10 000'],
    ]);
  });
});

describe('classes of every code', () => {
  // ACI 318-19 Table 19.3.1.1, ACI 332-20, EN 206 Table 1, CSA A23.1 Table 1
  test('which of them reckon with salts', () => {
    const salted = freezeClasses.filter(({ salts }) => salts === 'yes').map(({ name }) => name);
    const unsalted = freezeClasses.filter(({ salts }) => salts === 'no').map(({ name }) => name);
    expect(salted).toEqual(['F3', 'RF3', 'RF4', 'XF2', 'XF4', 'C-XL', 'C-1', 'C-2']);
    expect(unsalted).toEqual(['F1', 'F2', 'RF1', 'RF2', 'XF1', 'XF3', 'F-1', 'F-2']);
  });

  test('the class for a salted element is one that reckons with salts, in its own system', () => {
    for (const { system, flat, reinforced, upright } of saltedClasses) {
      for (const name of [flat, reinforced, upright]) {
        expect(freezeClasses.find((row) => row.name === name)).toMatchObject({ system, salts: 'yes' });
      }
    }
  });
});
