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

/** Findings first; a value that a finding stands on has been said by it. */
function hoverAt({ page, whole, findings }: Answer, offset: number): Hover | null {
  const found = findings.filter(({ span }) => touches(span, offset));
  const values = page.reading.facts.filter(isValue).flatMap((fact) => {
    const span = fact.spans.find((span) => touches(span, offset));
    return span && !found.some((finding) => isSame(finding.span, span)) ? [{ fact, span }] : [];
  });
  const span = found[0]?.span ?? values[0]?.span;
  if (!span) return null;
  const texts = [...found.map(findingMarkdown), ...values.map(({ fact }) => valueMarkdown(fact, whole.context))];
  return markdownHover([...new Set(texts)].join('\n\n---\n\n'), rangeIn(page.text, span));
}

const touches = ({ start, end }: Span, offset: number): boolean => start <= offset && offset <= end;
const isSame = (a: Span, b: Span): boolean => a.start === b.start && a.end === b.end;
