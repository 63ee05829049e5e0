/** What a passage is: words as somebody of the trade writes them, and beside them what a careful engineer reads in them. */
import type { Addressee, Force } from '../../../rules/model/clause.ts';
import type { Act, ActKind, FactKind, NamedKind, PropertyKind } from '../../../rules/model/fact.ts';
import type { Unit } from '../../../rules/model/quantity.ts';

export interface Value {
  readonly min?: number;
  readonly max?: number;
  readonly target?: number;
  readonly plus?: number;
  readonly minus?: number;
  readonly unit: Unit;
}

/** A slot that is left out is not compared: two engineers could differ on it. */
interface Stated {
  /** Several where the words bear more than one. */
  readonly force?: Force | readonly Force[];
  /** Element names; an empty list: about everything, no element named. */
  readonly subject?: readonly string[];
  readonly exterior?: 'yes' | 'no' | 'unknown';
  readonly addressee?: Addressee;
  readonly of?: string;
}

export interface ExpectedValue extends Stated {
  readonly kind: PropertyKind;
  readonly value: Value;
  readonly age?: number;
}

export interface ExpectedAct extends Stated {
  readonly kind: ActKind;
  readonly act?: Partial<Act>;
}

export interface ExpectedName extends Stated {
  readonly kind: NamedKind;
  readonly name?: string;
}

export type Expected = ExpectedValue | ExpectedAct | ExpectedName;

/** What must not be read: any fact of a kind, or only one that has this force, or whose slots hold this word. */
export type Forbidden =
  | FactKind
  | { readonly kind: FactKind; readonly force?: readonly Force[]; readonly saying?: string };

export interface Passage {
  /** What it tries, or the trap that it sets. */
  readonly name: string;
  /** Title line or article heading that stands above it. */
  readonly section?: string;
  readonly text: string;
  readonly facts: readonly Expected[];
  readonly none: readonly Forbidden[];
  /** Kinds of which more may be read than is listed, because the trade itself would not agree. */
  readonly free?: readonly FactKind[];
}

/** Kinds of which every fact in a passage is listed: whatever else is read of them was not said. */
export const closedKinds: readonly FactKind[] = [
  'air-content',
  'w-cm',
  'strength',
  'aggregate-size',
  'scm',
  'curing-duration',
  'exposure-class',
  'surface-water',
  'bleed-water',
  'finish',
  'site-water',
  'deicer-use',
  'deicer-hold-off',
];

export const asRead = ({ section, text }: Passage): string => (section ? `${section}\n\n${text}\n` : `${text}\n`);
