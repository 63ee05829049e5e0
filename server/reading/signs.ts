/** Signs that a file is a concrete specification section: two or more and it is read unasked. */
import type { Fact } from '../../rules/model/fact.ts';
import type { Outline } from './outline.ts';

const concreteSections = /^(?:03|32 1[346]|32 06|033|027)/;
const concreteTitle = /concrete|sidewalk|flatwork|curb|kerb|walks?\b|rigid paving|footway/i;
const core = new Set([
  'air-content',
  'air-entrainment',
  'w-cm',
  'strength',
  'exposure-class',
  'curing',
  'curing-duration',
  'curing-method',
  'finish',
  'scm',
  'slump',
  'surface-water',
  'bleed-water',
]);
/** Files that every folder has and that are no contract text. */
const notSections =
  /(?:^|[\\/])(?:readme|changelog|licen[cs]e|contributing|security|developers|code_of_conduct)(?:\.[a-z]+)?$/i;
const leastKinds = 3;
const leastWords = 6;

export function signsOf(path: string, text: string, outline: Outline, facts: readonly Fact[]): string[] {
  if (notSections.test(path)) return [];
  const signs: string[] = [];
  if (outline.section && concreteSections.test(outline.section)) signs.push(`section number ${outline.section}`);
  if (outline.title && concreteTitle.test(outline.title)) signs.push(`title "${outline.title}"`);
  const kinds = new Set(facts.map(({ kind }) => kind).filter((kind) => core.has(kind)));
  if (leastKinds <= kinds.size)
    signs.push(`requirements of concrete work (${[...kinds].slice(0, leastKinds).join(', ')})`);
  if (leastWords <= (text.match(/\bconcrete\b(?! asphalt)/gi)?.length ?? 0))
    signs.push('concrete is spoken of throughout');
  return signs;
}
