/** From a rule's remedy to text edits: the clause in the section's own numbering, in the project's units. */
import type { Project } from '../rules/model/project.ts';
import type { Remedy, SuggestedClause } from '../rules/model/rule.ts';
import type { Region, SectionDocument, Specification } from '../rules/model/specification.ts';

/** Text edits that would mend a finding, in order of their place; mechanical, or for the engineer to decide. */
export interface Suggestion {
  readonly title: string;
  readonly mechanical: boolean;
  readonly edits: readonly {
    readonly span: { readonly path: string; readonly start: number; readonly end: number };
    readonly text: string;
  }[];
}

/** A clause changes what the contract asks, so none of these is mechanical. */
export function suggestionFor(
  remedy: Remedy,
  { documents }: Specification,
  { units }: Project,
): Suggestion | undefined {
  const clause = inUnits(remedy.clause, units);
  if (remedy.kind === 'replace')
    return { title: 'Replace the words', mechanical: false, edits: [{ span: remedy.span, text: withoutStop(clause) }] };
  const document = documents.find(({ path }) => path === remedy.path);
  return document && inserted(document, remedy.region, clause);
}

function inserted(document: SectionDocument, region: Region, clause: string): Suggestion | undefined {
  const { path } = document;
  const article = document.articles.find((each) => each.region === region);
  if (article) {
    const { at, before } = article.next;
    const place = article.number ? `${article.number} ${article.title}` : article.title || 'the text';
    return {
      title: `Add the clause to ${place}`,
      mechanical: false,
      edits: [{ span: { path, start: at, end: at }, text: `${before}${clause}` }],
    };
  }
  const spot = document.newArticles[partOf(region)];
  if (!spot) return inLastArticle(document, clause);
  const title = spot.capitals ? titles[region]?.toUpperCase() : titles[region];
  const text = `${spot.before}${title}${spot.between}${clause}`;
  return {
    title: `Add an article on ${titles[region]?.toLowerCase()}`,
    mechanical: false,
    edits: [{ span: { path, start: spot.at, end: spot.at }, text }],
  };
}

/** A letter or an ordinance without numbered articles takes the clause at its end. */
function inLastArticle({ articles, path }: SectionDocument, clause: string): Suggestion | undefined {
  const last = articles.at(-1);
  if (!last) return undefined;
  const { at, before } = last.next;
  return {
    title: 'Add the clause at the end',
    mechanical: false,
    edits: [{ span: { path, start: at, end: at }, text: `${before}${clause}` }],
  };
}

const inPartTwo: ReadonlySet<Region> = new Set(['materials', 'mixtures']);
const inPartOne: ReadonlySet<Region> = new Set([
  'summary',
  'references',
  'definitions',
  'submittals',
  'quality',
  'delivery',
]);
const partOf = (region: Region): number => (inPartOne.has(region) ? 1 : inPartTwo.has(region) ? 2 : 3);

const titles: Readonly<Partial<Record<Region, string>>> = {
  summary: 'Exposure',
  materials: 'Materials',
  mixtures: 'Concrete mixtures',
  placing: 'Placing',
  finishing: 'Finishing',
  curing: 'Curing',
  weather: 'Cold weather',
  'field-quality': 'Field quality control',
  closeout: 'Winter care',
};

/** A replacement stands inside a sentence that keeps its own stop. */
const withoutStop = (clause: string): string => clause.replace(/\.$/, '');

export function inUnits(clause: SuggestedClause, units: Project['units']): string {
  if (units === 'ip') return clause.inchPound;
  return units === 'si' ? clause.metric : merged(clause.inchPound.split(' '), clause.metric.split(' '));
}

/** Both systems in one sentence: where the two differ, the metric words follow in parentheses. */
function merged(inchPound: readonly string[], metric: readonly string[]): string {
  const out: string[] = [];
  let [a, b] = [0, 0];
  while (a < inchPound.length || b < metric.length) {
    if (inchPound[a] === metric[b]) {
      out.push(inchPound[a] as string);
      [a, b] = [a + 1, b + 1];
      continue;
    }
    const [nextA, nextB] = meeting(inchPound, metric, a, b);
    out.push(paired(inchPound.slice(a, nextA).join(' '), metric.slice(b, nextB).join(' ')));
    [a, b] = [nextA, nextB];
  }
  return out.join(' ');
}

/** "50 °F" and "10 °C." are "50 °F (10 °C).": only a stop that both carry moves behind the bracket. */
function paired(own: string, twin: string): string {
  if (twin === '' || own === '') return own || twin;
  // A standard and its metric twin are written as one: "C172/C172M".
  if (bare(twin) === `${bare(own)}M`) return `${bare(own)}/${twin}`;
  const stop = /[.,;:\]]+$/.exec(twin)?.[0] ?? '';
  // One bracket around both: "[3/4 in. (19 mm)]".
  if (isBracketed(own) && isBracketed(twin)) return `[${paired(own.slice(1), twin.slice(1))}`;
  if (stop === '' || !own.endsWith(stop)) return `${own} (${twin})`;
  return `${own.slice(0, -stop.length)} (${twin.slice(0, -stop.length)})${stop}`;
}

/** A bracket opens at the start and closes at the end only. */
const isBracketed = (words: string): boolean => /^\[[^[\]]*\][.,;:]*$/.test(words);

const bare = (word: string): string => word.replace(/[.,;:\]]+$/, '');

/** The nearest pair of equal words behind two places that differ. */
function meeting(left: readonly string[], right: readonly string[], a: number, b: number): readonly [number, number] {
  for (let sum = 1; sum <= left.length - a + (right.length - b); sum++) {
    for (let step = 0; step <= sum; step++) {
      const [x, y] = [a + step, b + sum - step];
      if (x < left.length && y < right.length && left[x] === right[y]) return [x, y];
    }
  }
  return [left.length, right.length];
}
