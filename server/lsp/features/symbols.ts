/** The outline of a section by the specification's own numbers; breadcrumbs and sticky headings come from it too. */
import { LSPErrorCodes, ResponseError } from 'vscode-languageserver';
import { documentSymbols, symbolList } from '../convert.ts';
import type { Session } from '../session.ts';

export function offerSymbols(session: Session): void {
  const { connection, documents, manuals } = session;
  connection.onDocumentSymbol(async ({ textDocument }) => {
    if (!documents.get(textDocument.uri)) return [];
    const answer = await manuals.answer(textDocument.uri);
    if (!answer) return new ResponseError(LSPErrorCodes.ContentModified, 'The text changed meanwhile.');
    if (!answer.checked) return [];
    const { reading, text } = answer.page;
    if (session.abilities.treeOfSymbols) return documentSymbols(reading.outline, text);
    return symbolList(reading.outline, answer.page);
  });
}
