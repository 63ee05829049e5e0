/** Every number of the tables says where it stands and how it is known. */
import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Origin } from '../../rules/model/table.ts';

/** Files of the folder that hold no numbers of a document. */
const withoutNumbers = new Set(['documents.ts', 'figure.ts', 'strength-pair.ts', 'clauses.ts', 'messages.ts']);
const folder = new URL('../../rules/tables/', import.meta.url);
const files = readdirSync(folder).filter((file) => file.endsWith('.ts') && !withoutNumbers.has(file));

describe.each(files)('%s', (file) => {
  test('each export carries its origins', async () => {
    const exported: Record<string, unknown> = await import(/* @vite-ignore */ new URL(file, folder).href);
    for (const [name, value] of Object.entries(exported)) {
      const carriers = carriersIn(value);
      expect(carriers.length, name).toBeGreaterThan(0);
      for (const origin of carriers) expectComplete(origin, name);
    }
  });
});

function expectComplete({ document, edition, clause, known }: Origin, name: string): void {
  for (const words of [document, edition, clause]) expect(words, name).toMatch(/\S/);
  expect(['seen', 'seen second hand', 'from memory', 'derived', 'common practice'], name).toContain(known);
}

/** A row or figure carries an origin itself; a list or a record by edition holds nothing but carriers. */
function carriersIn(value: unknown): readonly Origin[] {
  if (typeof value !== 'object' || value === null) throw new TypeError('a bare number has no origin');
  if ('origin' in value) return [value.origin as Origin];
  return Object.values(value).flatMap(carriersIn);
}
