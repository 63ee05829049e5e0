/** Names of codes, settings and sources as a report says them. */
import type { CodeId } from '../../rules/model/project.ts';
import type { Citation } from '../../rules/model/rule.ts';
import type { Origin } from '../../rules/model/table.ts';
import type { Step } from '../../rules/model/worked.ts';
import type { ValueOrigin } from '../settings.ts';

export const codeNames: Readonly<Record<CodeId, string>> = {
  'aci-318-14': 'ACI 318-14',
  'aci-318-19': 'ACI 318-19',
  'aci-318-25': 'ACI CODE-318-25',
  ibc: 'International Building Code, nonstructural concrete',
  irc: 'International Residential Code',
  'csa-a23-1-19': 'CSA A23.1:19',
  'en-206': 'EN 206',
  'aashto-r-101': 'AASHTO R 101',
};

/** "ACI 318-19, Table 19.3.3.1 (seen second hand)"; for what no document governs, "common practice: drying time". */
export function sayCitation({ document, edition, clause, status, protects }: Citation): string {
  if (edition === '' || edition === 'none') return [status, clause].filter(Boolean).join(': ');
  const where = [sayDocument(document, edition), clause === 'whole' ? '' : clause].filter(Boolean).join(', ');
  return `${where} (${status}${protects ? '; the clause that this would undo' : ''})`;
}

/** A two-figure edition is part of the designation, any other stands beside it. */
function sayDocument(document: string, edition: string): string {
  if (edition === 'any') return document;
  if (/^\d\d[a-z]?$/.test(edition)) return `${document}-${edition}`;
  return `${document}, ${edition.includes('edition') ? edition : `edition ${edition}`}`;
}

export const sayOrigin = ({ known, ...origin }: Origin): string => sayCitation({ ...origin, status: known });

export const sayStep = ({ text, origin }: Step): string => (origin ? `${text} [${sayOrigin(origin)}]` : text);

/** Where a setting came from, in words. */
export function sayFrom({ from, path, place }: ValueOrigin): string {
  if (from === 'flag') return 'from the command line';
  if (from === 'project file') return `from ${path}`;
  return from === 'text' ? `named by the text, ${[path, place].filter(Boolean).join(' ')}` : 'not given';
}
