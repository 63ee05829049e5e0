/** Shares of fly ash, slag cement and silica fume; chloride limits; cement content. */
import type { ValueFact } from '../../../rules/model/fact.ts';
import { type Owned, type Statement, said } from '../statement.ts';
import { property, top, valueFact } from './property.ts';

const share = property({ kind: 'scm', meaning: 'scm', dimension: 'share', plausible: (value) => top(value) <= 100 });

export function scm(statement: Statement): ValueFact[] {
  const values = statement.values.filter((value) => !isOfCement(value, statement));
  return [...share({ ...statement, values }), ...listed(statement)];
}

/** "Portland cement: not less than 80 percent of cementitious; balance fly ash.": the share is the cement's. */
const isOfCement = (value: Owned, { tokens, predication, sentence, meanings }: Statement): boolean =>
  tokens
    .slice(Math.max(sentence.from, Math.min(predication.from, value.from - mostBetween)), value.from)
    .some(({ text }, at, words) => text === 'portland' && words[at + 1]?.text === 'cement') &&
  !meanings.some(({ meaning, to }) => meaning.id === 'scm' && to <= value.from);

const mostBetween = 8;

/** "fly ash to 25, slag cement to 50, silica fume to 10 percent": the unit stands once, behind the last. */
function listed(statement: Statement): ValueFact[] {
  const last = statement.values.findLast(({ measure }) => measure.unit === 'percent');
  if (!last) return [];
  return statement.values.flatMap((value) => {
    const { min, max, target } = value.measure;
    const amount = max ?? target ?? min ?? 0;
    if (value.measure.unit !== '' || last.from <= value.from || amount <= 1 || value.conditional) return [];
    const owner = statement.meanings.findLast(
      (each) => each.to <= value.from && value.from - each.to <= 4 && each.meaning.id === 'scm',
    );
    if (!owner) return [];
    const measure = { ...value.measure, dimension: 'share', unit: 'percent' } as Owned['measure'];
    return [valueFact('scm', { ...value, measure, owner: owner.meaning }, statement)];
  });
}

export const chloride = property({
  kind: 'chloride',
  meaning: 'chloride',
  dimension: 'share',
  plausible: (value) => top(value) <= 3,
});

const content = property({ kind: 'cement-content', meaning: 'cement', dimension: 'content' });

/** Sacks and pounds a yard are cement whatever owns them. */
export function cementContent(statement: Statement): ValueFact[] {
  const owned = content(statement);
  const sacks = statement.values.filter(
    ({ measure, conditional, owner }) => measure.unit === 'sack/yd3' && !conditional && owner?.id !== 'cement',
  );
  return [
    ...owned,
    ...sacks.map((value): ValueFact => ({ kind: 'cement-content', ...said(statement, value), value: value.measure })),
  ];
}
