/** What only the engineer can answer: one question where a cited agency document answers instead of the section. */

import { named, whereSaid } from './kinds/define.ts';
import { viewsOf } from './kinds/view.ts';
import type { Context } from './model/rule.ts';
import type { Span } from './model/source.ts';

export interface Question {
  readonly at: Span;
  /** The document's own number of the statement that raises it. */
  readonly place: string;
  readonly text: string;
}

/** A public agency's standard specifications silence what the section leaves out, so that has to be looked up there. */
export function openQuestions(context: Context): readonly Question[] {
  return context.specification.documents.flatMap((document) => {
    const cited = document.facts.find(
      (fact) => fact.kind === 'standard' && fact.value === agency && fact.of === 'requirement',
    );
    const elements = viewsOf(context)
      .filter((view) => view.isConcreteWork && view.isExposed && view.documents.includes(document))
      .map(({ element }) => element);
    if (!cited || elements.length === 0) return [];
    const text = `do the standard specifications cited in ${whereSaid(cited, context.specification)} give air, w/cm, strength, curing, cold weather and the hold-off of de-icers for ${named(elements)}?`;
    return [{ at: cited.spans[0], place: cited.place, text }];
  });
}

const agency = 'agency standard specifications';
