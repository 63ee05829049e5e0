/** Findings as diagnostics, for clients that ask for them. */
import {
  type Diagnostic,
  DocumentDiagnosticReportKind,
  type FullDocumentDiagnosticReport,
  LSPErrorCodes,
  ResponseError,
} from 'vscode-languageserver';
import { findingDiagnostic, settingsDiagnostics } from '../convert.ts';
import type { Answer } from '../manuals.ts';
import { shownFindings } from '../notes.ts';
import { isProjectFile } from '../places.ts';
import type { Session } from '../session.ts';
import { sendStatus } from './status.ts';

/** An answer that a change overtook is not given: the client is told to ask again. */
export function offerDiagnostics(session: Session): void {
  const { connection, documents, manuals } = session;
  connection.languages.diagnostics.on(async ({ textDocument: { uri }, previousResultId }) => {
    if (!documents.get(uri)) return full([]);
    if (isProjectFile(uri)) return full(settingsFaults(uri, session));
    const answer = await manuals.answer(uri);
    if (!answer) {
      return new ResponseError(LSPErrorCodes.ServerCancelled, 'The text changed meanwhile.', {
        retriggerRequest: true,
      });
    }
    sendStatus(answer, session);
    const resultId = answer.whole.id;
    if (resultId === previousResultId) return { kind: DocumentDiagnosticReportKind.Unchanged, resultId };
    return { ...full(diagnosticsOf(answer, session)), resultId };
  });
}

export function diagnosticsOf({ checked, page, whole, findings }: Answer, { abilities }: Session): Diagnostic[] {
  if (!checked) return [];
  return shownFindings(findings).map((finding) => findingDiagnostic(finding, page, whole.pages, abilities));
}

/** Faults of an open project file. */
export function settingsFaults(uri: string, { documents, manuals }: Session): Diagnostic[] {
  const text = documents.get(uri)?.getText();
  const file = manuals.projectFile(uri);
  return text === undefined || !file ? [] : settingsDiagnostics(uri, text, file);
}

const full = (items: Diagnostic[]): FullDocumentDiagnosticReport => ({
  kind: DocumentDiagnosticReportKind.Full,
  items,
});
