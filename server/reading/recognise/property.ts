/** The maker for kinds of fact that are a value: the meaning that owns it, its dimension, and what is plausible. */
import type { PropertyKind, ValueFact } from '../../../rules/model/fact.ts';
import type { Measure } from '../../../rules/model/measure.ts';
import type { Dimension } from '../../../rules/model/quantity.ts';
import { localSubject } from '../local-scope.ts';
import { type Owned, type Statement, said } from '../statement.ts';
import type { MeaningId } from '../words/meanings.ts';

export interface Property {
  readonly kind: PropertyKind;
  readonly meaning: MeaningId;
  readonly dimension: Dimension;
  /** Values outside are someone else's, or misread. */
  readonly plausible?: (value: Owned) => boolean;
  /** Values without an owner are taken by where they stand. */
  readonly byPlace?: (value: Owned, statement: Statement) => boolean;
  readonly more?: (value: Owned, statement: Statement) => Partial<ValueFact>;
}

export function property(made: Property): (statement: Statement) => ValueFact[] {
  return (statement) =>
    (isForOtherMixture(statement) ? [] : statement.values)
      .filter(
        (value) => value.measure.dimension === made.dimension && !value.conditional && isOwned(made, value, statement),
      )
      .filter((value) => made.plausible?.(value) ?? true)
      .map((value) => valueFact(made.kind, value, statement, made.more?.(value, statement)));
}

/** "For f'c above 5000 psi, air may be 5 percent": the one-point reduction of the code, not the value of every mixture. */
const isForOtherMixture = ({ tokens, predication }: Statement): boolean =>
  predication.conditions.some(({ from }) => tokens[from]?.text === 'for');

function isOwned(made: Property, value: Owned, statement: Statement): boolean {
  if (value.owner) return value.owner.id === made.meaning;
  return made.byPlace?.(value, statement) ?? false;
}

/** A limit that is put as a ban ("shall not exceed") is a requirement; what is stated as a value in a list is one too. */
export function valueFact(
  kind: PropertyKind,
  value: Owned,
  statement: Statement,
  more: Partial<ValueFact> = {},
): ValueFact {
  const { force } = statement.predication;
  const limit = force === 'ban' && !value.conditional ? deniedLimit(value, statement) : undefined;
  const base = said(statement, value, limit || force === 'state' ? 'require' : force);
  const peers = statement.values.filter(({ measure }) => measure.dimension === value.measure.dimension);
  return {
    kind,
    ...base,
    subject: localSubject(statement, value, peers),
    value: limit ?? value.measure,
    ...(value.owner?.of && { of: value.owner.of }),
    ...(value.doubt && { doubt: value.doubt }),
    ...more,
  };
}

/** "w/cm above 0.45 is not permitted", "use no fly ash over 25 percent": a ban of what lies beyond a number sets that number as the limit. */
function deniedLimit({ measure, from }: Owned, { tokens }: Statement): Measure | undefined {
  if (measure.target !== undefined || (measure.min === undefined) === (measure.max === undefined)) return undefined;
  const before = tokens
    .slice(Math.max(0, from - 3), from)
    .map(({ text }) => text)
    .join(' ');
  return comparison.test(before) ? turnedOver(measure) : undefined;
}

const comparison =
  /(?:^| )(?:over|above|beyond|(?:more|greater|higher|less|lower|fewer) than|below|under|in excess of|exceeding)$/;

const turnedOver = ({ min, max, also, ...rest }: Measure): Measure =>
  ({
    ...rest,
    ...(max !== undefined && { min: max }),
    ...(min !== undefined && { max: min }),
    ...(also && { also: also.map(turnedOver) }),
  }) as Measure;

/** The largest number of a value. */
export const top = ({ measure }: Owned): number =>
  measure.max ?? (measure.target ?? measure.min ?? 0) + (measure.plus ?? 0);
/** The smallest number of a value. */
export const bottom = ({ measure }: Owned): number => measure.min ?? measure.target ?? measure.max ?? 0;
