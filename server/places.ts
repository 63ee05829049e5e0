/** The document's own number for a place in it. */
import type { Span } from '../rules/model/source.ts';
import type { Specification } from '../rules/model/specification.ts';

/** "2.03.B.1" for words in a paragraph, "2.03" for a heading; in a text without numbers its title; never empty. */
export function placeOf({ documents }: Specification, at: Span): string {
  const document = documents.find(({ path }) => path === at.path);
  if (!document) return '';
  const article = document.articles.findLast(
    ({ span }) => span.start <= at.start && at.start < Math.max(span.end, span.start + 1),
  );
  if (article && article.titleSpan.start <= at.start && at.start < article.titleSpan.end)
    return article.number || article.title || document.title || 'this section';
  const fact = document.facts.find(({ spans: [span] }) => span.start <= at.start && at.start < span.end);
  return fact?.place || article?.number || article?.title || document.section || document.title || 'this section';
}
