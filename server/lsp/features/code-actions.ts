/** What a finding suggests, as quick fixes: the writer chooses each one, nothing is changed in bulk. */
import {
  type CodeAction,
  CodeActionKind,
  type CodeActionParams,
  LSPErrorCodes,
  ResponseError,
} from 'vscode-languageserver';
import { diagnosticsFor, quickFix } from '../convert.ts';
import type { Answer } from '../manuals.ts';
import type { Abilities, Session } from '../session.ts';

export function offerCodeActions(session: Session): void {
  const { connection, documents, manuals } = session;
  connection.onCodeAction(async (params) => {
    const wanted = params.context.only?.some((kind) => CodeActionKind.QuickFix.startsWith(kind)) ?? true;
    if (!wanted || !documents.get(params.textDocument.uri)) return [];
    const answer = await manuals.answer(params.textDocument.uri);
    if (!answer) return new ResponseError(LSPErrorCodes.ContentModified, 'The text changed meanwhile.');
    return answer.checked ? fixesAt(params, answer, session.abilities) : [];
  });
}

function fixesAt(
  { range, context }: CodeActionParams,
  { page, whole, findings }: Answer,
  abilities: Abilities,
): CodeAction[] {
  const [start, end] = [page.text.offsetAt(range.start), page.text.offsetAt(range.end)];
  return findings
    .filter(({ span }) => span.start <= end && start <= span.end)
    .flatMap((finding) => {
      const mended = diagnosticsFor(finding, page, context.diagnostics);
      const fix = quickFix(finding, mended, whole.pages, abilities);
      return fix ? [fix] : [];
    });
}
