/** One line in the editor's language status: exposure and counts of the document in front, or that it is not checked. */
import * as vscode from 'vscode';
import { firstLook } from '../server/lsp/first-look.ts';
import { type Status, sourceName } from '../server/lsp/protocol.ts';
import { sections } from './client.ts';
import { opening } from './waking.ts';

export class StatusLine implements vscode.Disposable {
  private readonly item = vscode.languages.createLanguageStatusItem('firstWinter.status', sections);
  /** What the server said last, by document. */
  private readonly known = new Map<string, Status>();

  constructor(command: string) {
    this.item.name = sourceName;
    this.item.command = { command, title: 'Why?' };
    this.show();
  }

  take(status: Status): void {
    this.known.set(vscode.Uri.parse(status.uri).toString(), status);
    this.show();
  }

  forget(document: vscode.TextDocument): void {
    this.known.delete(document.uri.toString());
  }

  /** Shows how the document in front stands. */
  show(): void {
    const document = vscode.window.activeTextEditor?.document;
    if (!document) return;
    const status = this.known.get(document.uri.toString());
    const detail = status?.detail ?? unread(document);
    const text = status?.text ?? 'not checked';
    this.item.text = `${sourceName}: ${text}`;
    this.item.detail = status?.trouble ?? detail;
    this.item.severity = status?.trouble
      ? vscode.LanguageStatusSeverity.Warning
      : vscode.LanguageStatusSeverity.Information;
    this.item.accessibilityInformation = {
      label: [sourceName, text, status?.trouble, detail].filter(Boolean).join('. '),
    };
  }

  dispose(): void {
    this.item.dispose();
  }
}

/** Why nothing was read in a document. */
export function unread(document: vscode.TextDocument): string {
  const shown = firstLook(opening(document));
  const seen = shown.length === 0 ? 'nothing of the kind' : shown.join(', ');
  return `Not checked: the opening of a concrete specification section shows the number of a concrete section or words of concrete work, and one sign more. Seen here: ${seen}.`;
}
