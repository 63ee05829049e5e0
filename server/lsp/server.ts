/** The language server: one connection, one host, and a list of features; the platform is handed in. */
import { type Connection, type InitializeResult, TextDocumentSyncKind, TextDocuments } from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { followChanges, watchFiles } from './features/changes.ts';
import { offerCodeActions } from './features/code-actions.ts';
import { offerDiagnostics } from './features/diagnostics.ts';
import { offerHover } from './features/hover.ts';
import { offerRulePages } from './features/rule-page.ts';
import { answerWhy } from './features/status.ts';
import { offerSymbols } from './features/symbols.ts';
import type { Host } from './host.ts';
import { Manuals } from './manuals.ts';
import { sourceName } from './protocol.ts';
import { type Abilities, abilitiesOf, noAbilities, type Session } from './session.ts';

export function startServer(connection: Connection, host: Host): void {
  const documents = new TextDocuments(TextDocument);
  const session: Session = {
    connection,
    documents,
    manuals: new Manuals(host, documents),
    abilities: noAbilities,
  };
  connection.onInitialize((params) => {
    session.abilities = abilitiesOf(params);
    return introduction(session.abilities, host);
  });
  connection.onInitialized(() => watchFiles(session));
  followChanges(session);
  for (const offer of [offerDiagnostics, offerHover, offerCodeActions, offerSymbols, offerRulePages, answerWhy]) {
    offer(session);
  }
  documents.listen(connection);
  connection.listen();
}

function introduction({ pulls }: Abilities, { version }: Host): InitializeResult {
  return {
    serverInfo: { name: sourceName, version },
    capabilities: {
      textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental, save: true },
      hoverProvider: true,
      codeActionProvider: { codeActionKinds: ['quickfix'] },
      documentSymbolProvider: { label: sourceName },
      // A section is read with its neighbours, so that a change in one can change the findings of another.
      ...(pulls && { diagnosticProvider: { interFileDependencies: true, workspaceDiagnostics: false } }),
    },
  };
}
