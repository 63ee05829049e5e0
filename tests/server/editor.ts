/** An editor as the server meets it: a child process spoken to over standard input and output. */
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import {
  type ClientCapabilities,
  type CodeAction,
  createProtocolConnection,
  type Diagnostic,
  type DocumentDiagnosticReport,
  type DocumentSymbol,
  type Hover,
  type InitializeResult,
  type Position,
  type ProtocolConnection,
  type PublishDiagnosticsParams,
  type Range,
  StreamMessageReader,
  StreamMessageWriter,
  type TextEdit,
  type WorkspaceEdit,
} from 'vscode-languageserver-protocol/node';
import { TextDocument } from 'vscode-languageserver-textdocument';
import type { Status } from '../../server/lsp/protocol.ts';

const program = fileURLToPath(new URL('../../dist/server.js', import.meta.url));

/** What the editor we are written for can do. */
export const pulling: ClientCapabilities = {
  textDocument: {
    diagnostic: { relatedDocumentSupport: true },
    publishDiagnostics: { relatedInformation: true, codeDescriptionSupport: true },
    documentSymbol: { hierarchicalDocumentSymbolSupport: true },
  },
  workspace: {
    diagnostics: { refreshSupport: true },
    didChangeWatchedFiles: { dynamicRegistration: true },
    workspaceEdit: { documentChanges: true },
  },
};

/** An editor that can only be sent diagnostics. */
export const listening: ClientCapabilities = { textDocument: { publishDiagnostics: {} } };

export class Editor {
  readonly published: PublishDiagnosticsParams[] = [];
  readonly statuses: Status[] = [];
  readonly watched: string[] = [];
  refreshes = 0;
  private readonly texts = new Map<string, TextDocument>();

  private constructor(
    readonly child: ChildProcess,
    readonly rpc: ProtocolConnection,
    readonly server: InitializeResult,
  ) {
    rpc.onNotification('textDocument/publishDiagnostics', (params: PublishDiagnosticsParams) => {
      this.published.push(params);
    });
    rpc.onNotification('firstwinter/status', (status: Status) => {
      this.statuses.push(status);
    });
    rpc.onRequest('workspace/diagnostic/refresh', () => {
      this.refreshes++;
      return null;
    });
    rpc.onRequest('client/registerCapability', ({ registrations }) => {
      this.watched.push(...registrations.map(({ method }: { method: string }) => method));
      return null;
    });
  }

  static async start(capabilities: ClientCapabilities): Promise<Editor> {
    const child = spawn(process.execPath, [program, '--stdio'], { stdio: ['pipe', 'pipe', 'inherit'] });
    const rpc = createProtocolConnection(new StreamMessageReader(child.stdout), new StreamMessageWriter(child.stdin));
    rpc.listen();
    const initializationOptions = { rulePages: true, status: true };
    const params = { processId: process.pid, rootUri: null, capabilities, initializationOptions };
    const editor = new Editor(child, rpc, await rpc.sendRequest<InitializeResult>('initialize', params));
    await rpc.sendNotification('initialized', {});
    return editor;
  }

  /** Ends the session as an editor does; the status the server ends with. */
  async stop(): Promise<number> {
    const ended = once(this.child, 'exit');
    await this.rpc.sendRequest('shutdown');
    await this.rpc.sendNotification('exit');
    const [code] = await ended;
    this.rpc.dispose();
    return code;
  }

  async open(uri: string, text: string, languageId = 'markdown'): Promise<void> {
    this.texts.set(uri, TextDocument.create(uri, languageId, 1, text));
    await this.rpc.sendNotification('textDocument/didOpen', { textDocument: { uri, languageId, version: 1, text } });
  }

  async close(uri: string): Promise<void> {
    this.texts.delete(uri);
    await this.rpc.sendNotification('textDocument/didClose', { textDocument: { uri } });
  }

  /** Types over `find`, which stands once in the document; only the difference is sent. */
  async replace(uri: string, find: string, newText: string): Promise<void> {
    await this.edit(uri, [{ range: this.rangeOf(uri, find), newText }]);
  }

  /** Edits from the last to the first, so that each range still holds when its turn comes. */
  async edit(uri: string, edits: readonly TextEdit[]): Promise<void> {
    const document = this.text(uri);
    const ordered = [...edits].sort((a, b) => document.offsetAt(b.range.start) - document.offsetAt(a.range.start));
    const contentChanges = ordered.map(({ range, newText }) => ({ range, text: newText }));
    TextDocument.update(document, contentChanges, document.version + 1);
    const textDocument = { uri, version: document.version };
    await this.rpc.sendNotification('textDocument/didChange', { textDocument, contentChanges });
  }

  /** Takes a quick fix as the writer would by choosing it. */
  async apply({ documentChanges, changes }: WorkspaceEdit): Promise<void> {
    for (const change of documentChanges ?? []) {
      if ('edits' in change) await this.edit(change.textDocument.uri, change.edits as TextEdit[]);
    }
    for (const [uri, edits] of Object.entries(changes ?? {})) await this.edit(uri, edits);
  }

  async pull(uri: string, previousResultId?: string): Promise<DocumentDiagnosticReport> {
    return this.rpc.sendRequest('textDocument/diagnostic', { textDocument: { uri }, previousResultId });
  }

  async diagnostics(uri: string): Promise<readonly Diagnostic[]> {
    const report = await this.pull(uri);
    if (report.kind !== 'full') throw new Error(`asked for all diagnostics, got ${report.kind}`);
    return report.items;
  }

  async codes(uri: string): Promise<readonly unknown[]> {
    return (await this.diagnostics(uri)).map(({ code }) => code);
  }

  /** The hover as text; empty where there is none. */
  async hover(uri: string, position: Position): Promise<string> {
    const hover = await this.rpc.sendRequest<Hover | null>('textDocument/hover', { textDocument: { uri }, position });
    return hover === null ? '' : (hover.contents as { value: string }).value;
  }

  async fixes(uri: string, diagnostic: Diagnostic): Promise<readonly CodeAction[]> {
    const context = { diagnostics: [diagnostic] };
    const params = { textDocument: { uri }, range: diagnostic.range, context };
    return this.rpc.sendRequest('textDocument/codeAction', params);
  }

  async symbols(uri: string): Promise<readonly DocumentSymbol[]> {
    return this.rpc.sendRequest('textDocument/documentSymbol', { textDocument: { uri } });
  }

  text(uri: string): TextDocument {
    const document = this.texts.get(uri);
    if (!document) throw new Error(`${uri} is not open`);
    return document;
  }

  rangeOf(uri: string, find: string): Range {
    const document = this.text(uri);
    const [start, last] = [document.getText().indexOf(find), document.getText().lastIndexOf(find)];
    if (start < 0 || start !== last) throw new Error(`"${find}" does not stand once in ${uri}`);
    return { start: document.positionAt(start), end: document.positionAt(start + find.length) };
  }

  wordsAt(uri: string, range: Range): string {
    return this.text(uri).getText(range);
  }
}

/** Waits until `done` holds; the error says what was waited for. */
export async function until(what: string, done: () => boolean): Promise<void> {
  const end = Date.now() + 10_000;
  while (!done()) {
    if (end < Date.now()) throw new Error(`waited in vain: ${what}`);
    await new Promise((resume) => setTimeout(resume, 10));
  }
}
