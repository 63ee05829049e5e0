/** One editor at the other end: the connection, its documents, and what it is able to show. */
import type { Connection, InitializeParams, TextDocuments } from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import type { Manuals } from './manuals.ts';
import type { InitializationOptions } from './protocol.ts';

/** What the client said of itself. */
export interface Abilities {
  /** It asks for diagnostics; others are sent them. */
  readonly pulls: boolean;
  readonly refreshes: boolean;
  readonly watches: boolean;
  readonly related: boolean;
  readonly codeLinks: boolean;
  readonly treeOfSymbols: boolean;
  readonly versionedEdits: boolean;
  /** It is our own and shows a status line. */
  readonly status: boolean;
}

export interface Session {
  readonly connection: Connection;
  readonly documents: TextDocuments<TextDocument>;
  readonly manuals: Manuals;
  /** Known once the client has introduced itself. */
  abilities: Abilities;
}

export function abilitiesOf({ capabilities, initializationOptions }: InitializeParams): Abilities {
  const { textDocument, workspace } = capabilities;
  const own: InitializationOptions = initializationOptions ?? {};
  const shown = { ...textDocument?.publishDiagnostics, ...textDocument?.diagnostic };
  return {
    pulls: textDocument?.diagnostic !== undefined,
    refreshes: workspace?.diagnostics?.refreshSupport === true,
    watches: workspace?.didChangeWatchedFiles?.dynamicRegistration === true,
    related: shown.relatedInformation === true,
    codeLinks: shown.codeDescriptionSupport === true && own.rulePages === true,
    treeOfSymbols: textDocument?.documentSymbol?.hierarchicalDocumentSymbolSupport === true,
    versionedEdits: workspace?.workspaceEdit?.documentChanges === true,
    status: own.status === true,
  };
}

/** Before the client has introduced itself. */
export const noAbilities = abilitiesOf({ processId: null, rootUri: null, capabilities: {} });
