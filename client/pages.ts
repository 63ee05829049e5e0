/** The page of a rule as a read-only document, and the command that opens the page of the finding at the cursor. */
import * as vscode from 'vscode';
import type { LanguageClient } from 'vscode-languageclient/node';
import {
  pageScheme,
  type RulePageParams,
  type RulePageResult,
  ruleOfPage,
  rulePageRequest,
  rulePageUri,
  sourceName,
} from '../server/lsp/protocol.ts';

export function providePages(running: () => Promise<LanguageClient>): vscode.Disposable {
  return vscode.workspace.registerTextDocumentContentProvider(pageScheme, {
    provideTextDocumentContent: async ({ path }) => {
      const rule = ruleOfPage(path) ?? path;
      const params: RulePageParams = { rule };
      const page = await (await running()).sendRequest<RulePageResult>(rulePageRequest, params);
      return page ?? `There is no rule "${rule}".\n`;
    },
  });
}

/** Opens the page of `rule`; without it, that of the finding at the cursor, or of one chosen from the document's. */
export async function openRulePage(rule?: string): Promise<void> {
  const wanted = rule ?? (await chooseRule());
  if (wanted === undefined) return;
  const uri = vscode.Uri.parse(rulePageUri(wanted));
  const preview = vscode.commands.executeCommand('markdown.showPreview', uri);
  // Where the editor has no preview, the page is readable as it is.
  await preview.then(undefined, () => vscode.window.showTextDocument(uri));
}

async function chooseRule(): Promise<string | undefined> {
  const editor = vscode.window.activeTextEditor;
  if (!editor) return undefined;
  const findings = vscode.languages.getDiagnostics(editor.document.uri).filter(({ source }) => source === sourceName);
  const here = findings.filter(({ range }) => range.contains(editor.selection.active)).flatMap(ruleOf);
  if (here[0] !== undefined) return here[0];
  const rules = [...new Set(findings.flatMap(ruleOf))].sort();
  const placeHolder = rules.length === 0 ? 'No findings in this document' : 'Rules with findings in this document';
  return vscode.window.showQuickPick(rules, { placeHolder });
}

function ruleOf({ code }: vscode.Diagnostic): readonly string[] {
  const value = typeof code === 'object' ? code.value : code;
  return value === undefined ? [] : [String(value)];
}
