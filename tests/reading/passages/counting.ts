/** Reads every passage and counts by kind of fact: how much was found, how much of what was read is right, what stayed silent. */
import type { FactKind } from '../../../rules/model/fact.ts';
import { read } from '../../../server/reading/read.ts';
import { type Judged, judge, type Miss } from './comparing.ts';
import { asRead, type Passage } from './passage.ts';

/** Good out of all: claims found of those expected, claims right of those read, silences kept of those asked. */
export interface Share {
  readonly good: number;
  readonly all: number;
}

export interface Counted {
  readonly kind: FactKind;
  readonly recall: Share;
  readonly precision: Share;
  readonly silence: Share;
}

export interface MissAt extends Miss {
  readonly register: string;
  readonly passage: Passage;
}

export interface Accuracy {
  readonly passages: number;
  readonly kinds: readonly Counted[];
  readonly misses: readonly MissAt[];
}

export function accuracyOf(registers: Readonly<Record<string, readonly Passage[]>>): Accuracy {
  const readings = Object.entries(registers).flatMap(([register, passages]) =>
    passages.map((passage) => ({ register, passage, result: judgedAs(passage) })),
  );
  const results = readings.map(({ result }) => result);
  return {
    passages: readings.length,
    kinds: kindsIn(results).map((kind) => countOf(kind, results)),
    misses: readings.flatMap(({ register, passage, result }) =>
      result.misses.map((miss) => ({ ...miss, register, passage })),
    ),
  };
}

const judgedAs = (passage: Passage): Judged => {
  const path = `${passage.name.replaceAll(/\W+/g, '-')}.md`;
  return judge(passage, read({ path, text: asRead(passage) }).facts);
};

const kindsIn = (results: readonly Judged[]): readonly FactKind[] =>
  [...new Set(results.flatMap(({ expected, silences }) => [...expected, ...silences].map(({ kind }) => kind)))].sort();

function countOf(kind: FactKind, results: readonly Judged[]): Counted {
  const share = (of: 'expected' | 'read' | 'silences'): Share => {
    const entries = results.flatMap((result) => result[of].filter((entry) => entry.kind === kind));
    return { good: entries.filter(({ good }) => good).length, all: entries.length };
  };
  return { kind, recall: share('expected'), precision: share('read'), silence: share('silences') };
}

/** Whole percent, rounded down; 100 where there is nothing to count. */
export const percentOf = ({ good, all }: Share): number => (all === 0 ? 100 : Math.floor((100 * good) / all));
