/** Starts the server inside the editor and speaks with it; it shows nothing on its own account. */
import type * as vscode from 'vscode';
import {
  CloseAction,
  ErrorAction,
  LanguageClient,
  type LanguageClientOptions,
  RevealOutputChannelOn,
  TransportKind,
} from 'vscode-languageclient/node';
import { type InitializationOptions, projectFileName, sectionLanguages, sourceName } from '../server/lsp/protocol.ts';

/** Documents that may be sections: files, and texts that are not saved yet. */
export const sections: vscode.DocumentSelector = sectionLanguages.flatMap((language) =>
  ['file', 'untitled'].map((scheme) => ({ scheme, language })),
);

export function makeClient(context: vscode.ExtensionContext, log: vscode.LogOutputChannel): LanguageClient {
  const module = context.asAbsolutePath('dist/server.js');
  const run = { module, transport: TransportKind.ipc };
  return new LanguageClient('firstWinter', sourceName, { run, debug: run }, options(log));
}

/** How often a server that ends by itself is started again. */
const restarts = 3;

function options(log: vscode.LogOutputChannel): LanguageClientOptions {
  const ours: InitializationOptions = { rulePages: true, status: true };
  let ended = 0;
  return {
    documentSelector: [
      ...(sections as vscode.DocumentFilter[]),
      { scheme: 'file', pattern: `**/${projectFileName}` },
    ] as LanguageClientOptions['documentSelector'],
    initializationOptions: ours,
    outputChannel: log,
    revealOutputChannelOn: RevealOutputChannelOn.Never,
    // Failures go to the log: no message may come up over somebody's work.
    initializationFailedHandler: (error) => {
      log.error(String(error));
      return false;
    },
    errorHandler: {
      error: (error) => {
        log.error(error);
        return { action: ErrorAction.Continue, handled: true };
      },
      closed: () => {
        const action = ended++ < restarts ? CloseAction.Restart : CloseAction.DoNotRestart;
        log.error(`The server ended by itself (${ended} of at most ${restarts + 1} times).`);
        return { action, handled: true };
      },
    },
  };
}
