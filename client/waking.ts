/** Whether there is anything for the server to do: a document that looks like a section, or a project file. */
import * as vscode from 'vscode';
import { firstLookLength, seemsSection } from '../server/lsp/first-look.ts';
import { projectFileName } from '../server/lsp/protocol.ts';
import { sections } from './client.ts';

/** Calls `wake` once, as soon as there is a reason to; a readme is none. */
export function watchForSections(wake: () => void): vscode.Disposable {
  const watches: vscode.Disposable[] = [];
  const watching = new vscode.Disposable(() => vscode.Disposable.from(...watches.splice(0)).dispose());
  const wakeOnce = (): void => {
    if (watches.length === 0) return;
    watching.dispose();
    wake();
  };
  const look = (document: vscode.TextDocument): void => {
    if (isReason(document)) wakeOnce();
  };
  watches.push(
    vscode.workspace.onDidOpenTextDocument(look),
    vscode.workspace.onDidChangeTextDocument(({ document }) => look(document)),
  );
  for (const document of vscode.workspace.textDocuments) look(document);
  void findProjectFile().then((found) => found && wakeOnce());
  return watching;
}

async function findProjectFile(): Promise<boolean> {
  return 0 < (await vscode.workspace.findFiles(`**/${projectFileName}`, '**/node_modules/**', 1)).length;
}

/** The part of a document that is looked at before any reading. */
export function opening(document: vscode.TextDocument): string {
  return document.getText(new vscode.Range(document.positionAt(0), document.positionAt(firstLookLength)));
}

function isReason(document: vscode.TextDocument): boolean {
  if (document.uri.scheme === 'file' && document.uri.path.endsWith(`/${projectFileName}`)) return true;
  return 0 < vscode.languages.match(sections, document) && seemsSection(document.uri.path, opening(document));
}
