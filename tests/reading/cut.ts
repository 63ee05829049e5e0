/** Sections cut and garbled by a seed: the same texts on every run, as no author would leave them. */
import { readdirSync, readFileSync } from 'node:fs';
import spec from 'commonmark-spec';

export const lineEnds = ['\n', '\r\n', '\r'] as const;

/** Every Markdown section of the demo and of the other registers. */
export const sections: readonly string[] = ['../../client/demo/', '../sections/registers/'].flatMap((folder) => {
  const place = new URL(folder, import.meta.url);
  const names = readdirSync(place).filter((name) => name.endsWith('.md'));
  return names.map((name) => readFileSync(new URL(name, place), 'utf8'));
});

/** The examples of the CommonMark specification. */
export const examples: readonly string[] = spec.tests.map(({ markdown }) => markdown);

/** Every sign of the dialect within 400 characters: sound and unsound, half typed at every prefix. */
export const dense = [
  '---\ntitle: x\n---\n> SECTION 03 30 00 - CONCRETE\n\n# PART 2 *PRODUCTS* #\n\n**2.01** MIXTURES<br>\n\n- **A.** Air: 6 ± 1.5&nbsp;%, <del>5 %</del>\n  1\\. `w/cm`: ~~0.50~~ [0.45] &amp; less &#65;&NotEqualTilde;\n\n| Walk | Air |\n|:--|--:|\n| a\\|b | 6% |\n\n<!-- note\n-->\n```\n6 percent\n```\n> note 7 days',
  '3.04 CURING: Cure “exposed” slabs for 7\u00a0days; A. ½ in. B. 5\u00ad8 % <Insert days>\n(a) 50 °F (10 °C) at most, not [___] [4] [6] psi\n\t.1 Tab\n\u{1f9ca} ice\r\n\n\n***\n![Walks](x "y")\n[F3]: /z\n    indented **code** _x_\n<div align="left">\n6 percent</div>\n* * *\n+ a\n  + b\n      1) c\n',
  '*a **b _c `d [e <f ~~g\\\\ &x; &#0; &#xFFFFFF; \0\ufeff\ud83d\n|a|b|\n|-|-|\n|c\n> > 1. - # x\n~~~\n```\n<!--',
];

/** A text as it is typed, one character after another. */
export const prefixesOf = (text: string): readonly string[] =>
  Array.from({ length: text.length + 1 }, (_, length) => text.slice(0, length));

/** Whole numbers from 0 to below `limit`, always the same for one seed. */
export type Draw = (limit: number) => number;

export function drawing(seed: number): Draw {
  let state = seed;
  return (limit) => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) % limit;
  };
}

/** What stands before or behind a place anywhere in a section, in each line end: it opens or stops in the middle of things. */
export function cuts(count: number, seed: number): readonly string[] {
  const draw = drawing(seed);
  return Array.from({ length: count }, () => {
    const section = oneOf(draw, sections).replaceAll('\n', oneOf(draw, lineEnds));
    const at = draw(section.length + 1);
    return draw(2) === 0 ? section.slice(Math.max(0, at - longestCut), at) : section.slice(at, at + longestCut);
  });
}

const longestCut = 1000;

/** Pieces of sections, each with one or two kinds of damage. */
export function garbled(count: number, seed: number): readonly (readonly [string, string])[] {
  const draw = drawing(seed);
  return cuts(count, seed).map((cut, index) => {
    const [name, damage] = damages[index % damages.length] as (typeof damages)[number];
    const [other, again] = oneOf(draw, damages);
    return draw(2) === 0 ? [name, damage(draw, cut)] : [`${name}, ${other}`, again(draw, damage(draw, cut))];
  });
}

const oneOf = <T>(draw: Draw, choices: readonly T[]): T => choices[draw(choices.length)] as T;

const signs = [...'*_[]<>`~|#&\\-+:;.,()!"\'{}'];
const controls = ['\0', '\u0001', '\b', '\v', '\f', '\u001a', '\u001b', '\u007f', '\u0085', '\u2028', '\u2029'];
const strays = ['\ufeff', '\u00ad', '\u200b', '\ufffd', '\u00a0', '\u202e', '\u0338', '\t', '\r', '\n'];
const halves = ['\ud800', '\udbff', '\udc00', '\udfff'];
const times = 40;

const damages: readonly (readonly [string, (draw: Draw, text: string) => string])[] = [
  ['lines swapped', swapped],
  ['characters deleted', (draw, text) => changed(draw, text, () => '')],
  [
    'labels doubled',
    (draw, text) => text.replace(/^\s*\S{1,3}[.)] /gm, (label) => (draw(3) === 0 ? label + label : label)),
  ],
  ['lines doubled', (draw, text) => text.replace(/^.+$/gm, (line) => (draw(4) === 0 ? `${line}\n${line}` : line))],
  ['blank lines lost', (_, text) => text.replace(/(?:\r\n|\r|\n){2,}/g, ' ')],
  ['figures changed', (draw, text) => text.replace(/\d/g, () => String(draw(10)))],
  ['signs put in', (draw, text) => changed(draw, text, (old) => old + oneOf(draw, signs))],
  ['any character', (draw, text) => changed(draw, text, () => String.fromCharCode(draw(0x10000)))],
  ['control characters', (draw, text) => changed(draw, text, (old) => old + oneOf(draw, controls))],
  ['strays of office programs', (draw, text) => changed(draw, text, (old) => old + oneOf(draw, strays))],
  ['halves of pairs', (draw, text) => changed(draw, text, () => oneOf(draw, halves))],
];

function swapped(draw: Draw, text: string): string {
  const lines = text.split('\n');
  for (let time = 0; time < times; time++) {
    const [a, b] = [draw(lines.length), draw(lines.length)];
    [lines[a], lines[b]] = [lines[b] as string, lines[a] as string];
  }
  return lines.join('\n');
}

function changed(draw: Draw, text: string, put: (old: string) => string): string {
  const units = text.split('');
  for (let time = 0; time < times && 0 < units.length; time++) {
    const at = draw(units.length);
    units[at] = put(units[at] as string);
  }
  return units.join('');
}
