/** The working of a finding, or of a value, under the pointer. */
import { type Hover, LSPErrorCodes, ResponseError } from 'vscode-languageserver';
import { isValue } from '../../../rules/model/fact.ts';
import type { Span } from '../../../rules/model/source.ts';
import { markdownHover, rangeIn } from '../convert.ts';
import { findingMarkdown } from '../finding-markdown.ts';
import type { Answer } from '../manuals.ts';
import type { Session } from '../session.ts';
import { valueMarkdown } from '../value-markdown.ts';

export function offerHover({ connection, documents, manuals }: Session): void {
  connection.onHover(async ({ textDocument, position }) => {
    if (!documents.get(textDocument.uri)) return null;
    const answer = await manuals.answer(textDocument.uri);
    if (!answer) return new ResponseError(LSPErrorCodes.ContentModified, 'The text changed meanwhile.');
    return answer.checked ? hoverAt(answer, answer.page.text.offsetAt(position)) : null;
  });
}

/** Findings first; a value says more only where no finding speaks of it. */
function hoverAt({ page, whole, findings }: Answer, offset: number): Hover | null {
  const found = findings.filter(({ span }) => touches(span, offset));
  if (0 < found.length) {
    const [first] = found as [(typeof found)[number]];
    return markdownHover(found.map(findingMarkdown).join('\n\n---\n\n'), rangeIn(page.text, first.span));
  }
  const values = page.reading.facts.filter(isValue).filter(({ spans }) => spans.some((span) => touches(span, offset)));
  const span = values[0]?.spans.find((span) => touches(span, offset));
  if (!span) return null;
  const context = { specification: whole.specification, project: whole.settings.project };
  return markdownHover(
    values.map((fact) => valueMarkdown(fact, context)).join('\n\n---\n\n'),
    rangeIn(page.text, span),
  );
}

const touches = ({ start, end }: Span, offset: number): boolean => start <= offset && offset <= end;
