/** Who else answers for a duty: a specification cited as a requirement, the drawings, or another section. */
import { citedSpecifications, type Duty } from '../tables/cited-specifications.ts';
import type { View } from './view.ts';

export function suppliedFor(view: View, duty: Duty): boolean {
  return isCited(view, duty) || isSaidElsewhere(view, duty);
}

function isCited(view: View, duty: Duty): boolean {
  const required = view.every('standard').filter(({ of, force }) => of === 'requirement' && force !== 'waive');
  const names = new Set(required.map(({ value }) => value));
  return citedSpecifications.some(({ designation, supplies }) => names.has(designation) && supplies.includes(duty));
}

/** "Strength as indicated on Drawings" answers for strength; "concrete: Section 03 30 00" for everything. */
function isSaidElsewhere(view: View, duty: Duty): boolean {
  return view
    .every('elsewhere')
    .some(({ value, of }) => (value === 'everything' || value === duty) && !isLoaded(view, of));
}

/** A section that was read too is judged by what it says, not by the promise that it says it. */
function isLoaded(view: View, place: string | undefined): boolean {
  const number = digits(place);
  return number !== '' && view.context.specification.documents.some(({ section }) => digits(section) === number);
}

const digits = (text: string | undefined): string => (text ?? '').replace(/\D/g, '');
