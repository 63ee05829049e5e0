/** `require`, `rules`, `explain` and `facts` as text: for a specifier, in words. */
import { describe, expect, test } from 'vitest';
import { folderWith, run } from './run.ts';
import { lowAir } from './sections.ts';

const nowhere = () => folderWith({});

describe('require', () => {
  test('says limits, working and citation', () => {
    const { status, out, err } = run(nowhere(), [
      ...['require', '--exposure', 'F3', '--aggregate', '19 mm'],
      ...['--code', 'aci-318-14', '--plain'],
    ]);
    expect(out).toMatch(/^ {2}w\/cm +at most 0\.45$/m);
    expect(out).toMatch(/^ {2}Strength +at least 4500 psi \(31 MPa\)/m);
    expect(out).toMatch(/^ {2}Air +6 percent, as delivered 4\.5 to 7\.5 percent$/m);
    expect(out.replace(/\s+/g, ' ')).toContain('[ACI 318-14, Table 19.3.2.1, footnote on plain concrete');
    expect({ status, err }).toEqual({ status: 0, err: '' });
  });

  test('without an aggregate: the air of each size', () => {
    const { out } = run(nowhere(), ['require', '--exposure', 'F2']);
    expect(out).toMatch(/^Air by aggregate size$/m);
    expect(out).toMatch(/3\/8 in\. \(9\.5 mm\) aggregate +7\.5 percent, as delivered 6 to 9 percent/);
  });

  test('on ground: lawful and recommended apart', () => {
    const { out } = run(nowhere(), ['require', '--exposure', 'F3', '--code', 'ibc', '--aggregate', '3/4 in']);
    expect(out).toMatch(/Lawful minimum\n {2}w\/cm +no limit\n {2}Strength +at least 3500 psi/);
    expect(out).toMatch(/Recommended so that it lasts\n {2}w\/cm +at most 0\.45\n {2}Strength +at least 4500 psi/);
  });

  test.each([
    [['--exposure', 'F4'], '"F4" is no exposure class of ACI 318-19 classes: F0, F1, F2, F3,'],
    [['--exposure', 'W2', '--code', 'aci-318-14'], '"W2" is no exposure class of ACI 318-14'],
    [['--exposure', ','], 'names no class'],
    [[], "required option '--exposure <classes>' not specified"],
    [['--exposure', 'F3', '--aggregate', '20'], '--aggregate cannot be "20"'],
    [['--exposure', 'F3', '--aggregate', '0 mm'], '--aggregate cannot be "0 mm"'],
    [['--exposure', 'F3', '--strength', '5000'], '--strength cannot be "5000" write a strength with its unit'],
    [['--exposure', 'F3', '--plain', '--reinforced'], '--plain contradicts'],
    [['--exposure', 'XF4', '--code', 'en-206'], 'does not compute EN 206 codes it computes: aci-318-19,'],
    [['--exposure', 'F3', '--code', 'aci'], 'write one of aci-318-14, aci-318-19,'],
  ])('%j is refused', (words, answer) => {
    const { status, out, err } = run(nowhere(), ['require', ...words]);
    expect(err.replace(/\s+/g, ' ')).toContain(answer);
    expect({ status, out }).toEqual({ status: 2, out: '' });
  });
});

describe('rules and explain', () => {
  test('the list goes by family and names the level', () => {
    const { status, out } = run(nowhere(), ['rules']);
    expect(out).toMatch(/^air \(\d+\)\n(?: {2}\S.*\n)* {2}air-content-low +must +\S/m);
    expect(status).toBe(0);
  });

  test('a page says why, on whose word, and shows when the rule speaks', () => {
    const { out } = run(nowhere(), ['explain', 'air-content-low']);
    expect(out).toMatch(/^Why +\S/m);
    expect(out).toMatch(/^By +.*19\.3\.3\.1/m);
    expect(out).toMatch(/^Clause, inch-pound\n {2}\S/m);
    expect(out).toMatch(/^Speaks: /m);
    expect(out).toMatch(/^Silent: /m);
    expect(out).not.toMatch(/^\s*\^/m);
  });

  test('the page of a rule and a computed one keep to the width of a page', () => {
    const pages = [
      ...['air-content-missing', 'site-water-uncontrolled'].map((id) => ['explain', id]),
      ...['irc', 'ibc', 'aci-318-14', 'aci-318-19'].map((code) => ['require', '--exposure', 'F3', '--code', code]),
    ];
    for (const words of pages) {
      const widths = run(nowhere(), words)
        .out.split('\n')
        .map((line) => line.length);
      expect(Math.max(...widths)).toBeLessThanOrEqual(96);
    }
  });

  test('a mistyped rule is answered with the one that was meant', () => {
    const { status, out, err } = run(nowhere(), ['explain', 'air-contnet-low']);
    expect(err).toContain('did you mean air-content-low?');
    expect({ status, out }).toEqual({ status: 2, out: '' });
  });
});

test('facts gives each statement under its paragraph, as it was understood and as written', () => {
  const { status, out } = run(folderWith({ 'walks.md': lowAir }), ['facts', 'walks.md']);
  expect(out).toMatch(/^ {2}2\.03\.B\n {4}air-content +require: 2 ± 0\.5 percent, for shelter walk/m);
  expect(out.replace(/\s+/g, ' ')).toContain('2 percent, plus or minus 0.5 percent"');
  expect(status).toBe(0);
});
