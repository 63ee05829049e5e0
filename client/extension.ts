/** The extension: it waits for a section or a project file, starts the server then, and answers two commands. */
import * as vscode from 'vscode';
import type { LanguageClient } from 'vscode-languageclient/node';
import {
  type Status,
  sourceName,
  statusNotification,
  type WhyParams,
  type WhyResult,
  whyRequest,
} from '../server/lsp/protocol.ts';
import { makeClient } from './client.ts';
import { openRulePage, providePages } from './pages.ts';
import { StatusLine, unread } from './status.ts';
import { watchForSections } from './waking.ts';

const whyCommand = 'firstWinter.why';
const rulePageCommand = 'firstWinter.openRulePage';

let started: Promise<LanguageClient> | undefined;

export function activate(context: vscode.ExtensionContext): void {
  const log = vscode.window.createOutputChannel(sourceName, { log: true });
  const line = new StatusLine(whyCommand);
  const running = (): Promise<LanguageClient> => {
    started ??= start(context, log, line);
    return started;
  };
  context.subscriptions.push(
    log,
    line,
    providePages(running),
    vscode.commands.registerCommand(whyCommand, () => tellWhy(log)),
    vscode.commands.registerCommand(rulePageCommand, openRulePage),
    vscode.window.onDidChangeActiveTextEditor(() => line.show()),
    vscode.workspace.onDidCloseTextDocument((document) => line.forget(document)),
  );
  const wake = (): void => void running().catch((error: unknown) => log.error(String(error)));
  context.subscriptions.push(watchForSections(wake));
}

export async function deactivate(): Promise<void> {
  const client = await started?.catch(() => undefined);
  await client?.stop();
}

async function start(context: vscode.ExtensionContext, log: vscode.LogOutputChannel, line: StatusLine) {
  const client = makeClient(context, log);
  client.onNotification(statusNotification, (status: Status) => line.take(status));
  await client.start();
  return client;
}

/** The answer goes to the log, where it can be read at leisure, searched and copied. */
async function tellWhy(log: vscode.LogOutputChannel): Promise<void> {
  const document = vscode.window.activeTextEditor?.document;
  const answer = document ? await whyOf(document) : 'No document is open.';
  log.info(answer);
  log.show(true);
}

async function whyOf(document: vscode.TextDocument): Promise<string> {
  if (!started) return `${document.uri.fsPath}\n${unread(document)}`;
  const params: WhyParams = { uri: document.uri.toString() };
  try {
    return await (await started).sendRequest<WhyResult>(whyRequest, params);
  } catch (error) {
    return `The server gave no answer: ${error}`;
  }
}
