/** The list of rules, as text and as data. */
import { families, type Rule } from '../../rules/model/rule.ts';
import { asJson } from './json.ts';
import { count, indented, labelled, type Page, paged } from './layout.ts';

export function rulesText(rules: readonly Rule[], page: Page): string {
  const column = 2 + Math.max(0, ...rules.map(({ id }) => id.length));
  const own = families.map((family) => [family, rules.filter((rule) => rule.family === family)] as const);
  const blocks = own
    .filter(([, list]) => 0 < list.length)
    .map(([family, list]) => [
      page.style.strong(`${family} (${list.length})`),
      ...list.flatMap(({ id, severity, title }) =>
        indented(labelled(`${id.padEnd(column)}${severity}`, title, page.width - 2, column + 8), 2),
      ),
    ]);
  const end = [`${count(rules.length, 'rule')}. "firstwinter explain RULE" gives the ground of each.`];
  return paged([...blocks, end]);
}

export const rulesJson = (rules: readonly Rule[]): string =>
  asJson(
    rules.map((rule) => ({
      id: rule.id,
      family: rule.family,
      severity: rule.severity,
      title: rule.title,
      citations: citationsJson(rule),
    })),
  );

/** Every citation with the code it belongs to. */
export const citationsJson = ({ citations }: Rule): readonly object[] =>
  Object.entries(citations).flatMap(([code, own]) => (own ?? []).map((citation) => ({ code, ...citation })));
