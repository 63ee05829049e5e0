/** One clause changed or added in a section that has nothing to change: what comes is what the clause does. */
import { describe, expect, test } from 'vitest';
import { rules } from '../../rules/index.ts';
import { check } from '../../server/checking.ts';
import { assemble } from '../../server/reading/assemble.ts';
import { read } from '../../server/reading/read.ts';
import { exchange } from './manual.ts';

const parts = {
  summary: 'A. Shelter walks of plain concrete on ground, salted in winter.',
  mixture:
    "A. Shelter walks, plain, Exposure Class F3: f'c 4500 psi at 28 days; w/cm 0.45 maximum; 3/4 in. aggregate; total air 6 percent ± 1.5 percent; ASTM C231. No calcium chloride.",
  finishing: 'A. Do not add water to the surface. Start no finishing while bleed water is on the surface. Broom.',
  curing: 'A. Cure for 7 days with wet burlap.',
  cold: 'A. Comply with ACI 306.1.',
  deicers: 'A. Use no de-icers in the first winter.',
};

type Parts = Partial<typeof parts>;

function said(changed: Parts): readonly string[] {
  const { summary, mixture, finishing, curing, cold, deicers } = { ...parts, ...changed };
  const text = `SECTION 32 13 13 - CONCRETE PAVING

PART 1 - GENERAL

1.01 SUMMARY

${summary}

PART 2 - PRODUCTS

2.01 MIXTURE

${mixture}

PART 3 - EXECUTION

3.01 FINISHING

${finishing}

3.02 CURING

${curing}

3.03 COLD WEATHER

${cold}

3.04 DE-ICERS

${deicers}
`;
  const { findings } = check(assemble([read({ path: 'walks.md', text })]), exchange, rules);
  return findings.filter(({ severity }) => severity !== 'note').map(({ severity, rule }) => `${severity} ${rule}`);
}

const added = (part: keyof typeof parts, words: string): Parts => ({ [part]: `${parts[part]}\nB. ${words}` });
const behind = (part: keyof typeof parts, words: string): Parts => ({ [part]: `${parts[part]} ${words}` });
const instead = (part: keyof typeof parts, from: string, to: string): Parts => {
  if (!parts[part].includes(from)) throw new Error(`"${from}" is not in the text`);
  return { [part]: parts[part].replace(from, to) };
};

describe('nothing to change', () => {
  test.each<[string, Parts]>([
    ['the section itself', {}],
    ['neighbours that are protected', added('finishing', 'Protect adjacent curbs and existing steps from splashes.')],
    ['what stands there already', added('finishing', 'Match the joints to the existing plaza.')],
    ['where trucks wash', added('finishing', 'Wash out trucks in the north parking lot only.')],
    ['where sand is kept', added('deicers', 'Store sand bins on the loading dock.')],
    ['isolation from others', added('finishing', 'Isolate walks from curbs and columns with 1/2 in. filler.')],
    ['a share of portland cement', behind('mixture', 'Portland cement: not less than 80 percent of cementitious.')],
    ['a deviation in words', instead('mixture', '6 percent ± 1.5 percent', '6 percent within 1.5 percent')],
    ['an apposition', instead('mixture', 'total air', 'the air content, sampled ahead of the paver, shall be')],
    ['a strength to open at', behind('mixture', 'Open to traffic at 3000 psi.')],
    ['a mortar bed', behind('mixture', 'Mortar bed: 3000 psi.')],
    ['air after hardening', behind('mixture', 'Air in hardened concrete not under 4 percent.')],
    ['keeping off', behind('curing', 'Do not walk on the slab for 3 days.')],
    ['a note to the specifier', added('mixture', '[Note to specifier: 3 percent air indoors.]')],
    ['brooms kept clean', added('finishing', 'Rinse brooms away from the work and shake them free of water.')],
    ['what harms, told', behind('finishing', 'Adding water to the surface of walks will weaken it.')],
    [
      'what bleed water does',
      behind('finishing', 'Finishing of walks while bleed water is present results in loss of strength.'),
    ],
    ['what steel trowels do', behind('finishing', 'Steel trowels may damage the air void system of walks.')],
    ['sea water', behind('mixture', 'All concrete exposed to seawater or spray shall have a maximum w/cm of 0.40.')],
    ['water that is counted', behind('mixture', 'The w/cm counts any water added at the site to meet slump.')],
    ['a manner', instead('curing', 'Cure for 7 days', 'Cure for 7 days without interruption')],
    ['gaps', instead('curing', 'wet burlap', 'wet burlap free of gaps')],
    ['a season', behind('curing', 'Liquid curing compounds shall not be applied between November 1 and April 15.')],
    ['sacks of cement', behind('mixture', 'At least five sacks of cement shall be used per cubic yard.')],
    [
      'no placing in frost',
      instead(
        'cold',
        'Comply with ACI 306.1.',
        'Do not place walks in freezing weather, on frozen ground, or when frost is expected.',
      ),
    ],
    [
      'curing in stages',
      {
        curing:
          'A. Cover the walks with wet burlap, kept moist for at least 24 hours. Then cover the walks with paper. This paper shall be left in place for six (6) days.',
      },
    ],
    ['a decimal comma', instead('mixture', '0.45', '0,45')],
  ])('%s', (_, changed) => {
    expect(said(changed)).toEqual([]);
  });
});

describe('exactly this', () => {
  test.each<[string, Parts, string]>([
    ['a ratio with a comma', instead('mixture', '0.45', '0,50'), 'must w-cm-high'],
    [
      'air in no-one’s words',
      instead('mixture', '6 percent ± 1.5 percent', '3 percent within 1 percent'),
      'must air-content-low',
    ],
    ['an element of the curing clause', behind('curing', 'Curbs need 2 days of curing only.'), 'must curing-too-short'],
    [
      'strength that concrete develops',
      instead('mixture', "f'c 4500 psi", 'concrete shall develop 3000 psi'),
      'must strength-low',
    ],
    [
      'sweeping water over it',
      behind('finishing', 'Sprinkle the walks with water to finish them.'),
      'must water-added-to-surface',
    ],
  ])('%s', (_, changed, expected) => {
    expect(said(changed)).toEqual([expected]);
  });
});

test('columns pasted with tabs are read cell by cell', () => {
  const mixture = `A. Mixture schedule:

Use\tClass\tf'c psi\tw/cm\tAir %\tStone
Shelter walks (plain)\tF3\t3500\t0.50\t3 ± 1\t3/4 in.
Footings\tF0\t3000\t0.60\t-\t1-1/2 in.

B. ASTM C231. No calcium chloride.`;
  expect([...said({ mixture })].sort()).toEqual(['must air-content-low', 'must strength-low', 'must w-cm-high']);
});

test('what another section governs is not missing here', () => {
  const pointing = 'A. Section 03 30 00 governs mixtures, air tests, cold-weather work, curing and de-icers.';
  const changed = {
    summary: pointing,
    mixture: 'A. As in Section 03 30 00.',
    curing: 'A. As above.',
    cold: 'A. As above.',
  };
  expect(said({ ...changed, deicers: 'A. As above.' })).toEqual([]);
});
