/** The code that a text itself asks for, read from the standards it cites as requirements. */
import type { NamedFact } from '../../rules/model/fact.ts';
import { isNamed } from '../../rules/model/fact.ts';
import type { CodeId } from '../../rules/model/project.ts';
import type { Specification } from '../../rules/model/specification.ts';

export interface CitedCode {
  readonly code: CodeId;
  readonly fact: NamedFact;
}

/** The code cited most often as a requirement; of two cited as often, the one cited first. */
export function citedCode(specification: Specification): CitedCode | undefined {
  const found = new Map<CodeId, { count: number; fact: NamedFact }>();
  for (const fact of specification.documents.flatMap((document) => document.facts)) {
    if (!isNamed(fact) || fact.kind !== 'standard' || fact.of !== 'requirement' || fact.force !== 'require') continue;
    const code = codeOf(fact);
    if (code === undefined) continue;
    const entry = found.get(code);
    if (entry) entry.count++;
    else found.set(code, { count: 1, fact });
  }
  const [best] = [...found].sort(([, a], [, b]) => b.count - a.count);
  return best && { code: best[0], fact: best[1].fact };
}

/** The code that a designation stands for; the edition is not part of it and stands in the clause. */
function codeOf({ value, words }: NamedFact): CodeId | undefined {
  const [, aci] = /^ACI (318|301)$/.exec(value) ?? [];
  if (aci === undefined) return others[value];
  const [, year] = new RegExp(`\\b${aci}M?-(?:19|20)?(\\d\\d)\\b`).exec(words) ?? [];
  return year === undefined ? 'aci-318-19' : editionOf(Number(year));
}

/** The 318 edition in force beside a document of that year; 301-16 goes with 318-14, 301-20 with 318-19. */
function editionOf(year: number): CodeId {
  if (year < 19 || 90 <= year) return 'aci-318-14';
  return year < 25 ? 'aci-318-19' : 'aci-318-25';
}

const others: Readonly<Partial<Record<string, CodeId>>> = {
  'CSA A23.1': 'csa-a23-1-19',
  'EN 206': 'en-206',
  'AASHTO R 101': 'aashto-r-101',
  IBC: 'ibc',
  IRC: 'irc',
};
