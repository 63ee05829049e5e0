/** Changes of text, files and project file: what has to be worked out anew, and who has to hear of it. */
import { DidChangeWatchedFilesNotification } from 'vscode-languageserver';
import { isProjectFile } from '../places.ts';
import { projectFileName } from '../protocol.ts';
import type { Session } from '../session.ts';
import { Sending } from './sending.ts';

/** Files that bear on an answer without being open. */
const watched = [`**/${projectFileName}`, '**/*.{md,markdown,txt}'];

export function followChanges(session: Session): void {
  const { connection, documents, manuals } = session;
  const sending = new Sending(session);

  documents.onDidChangeContent(({ document: { uri } }) => {
    manuals.changed(uri);
    if (!session.abilities.pulls) sending.renew();
    else if (isProjectFile(uri)) renew(session, sending);
  });
  documents.onDidClose(({ document: { uri } }) => {
    manuals.closed(uri);
    if (!session.abilities.pulls) sending.clear(uri);
    // What was typed and not saved is gone, also for the sections beside it.
    if (0 < documents.all().length) renew(session, sending);
  });
  documents.onDidSave(({ document: { uri } }) => {
    if (!session.abilities.watches && manuals.fileChanged(uri)) renew(session, sending);
  });
  connection.onDidChangeWatchedFiles(({ changes }) => {
    const concerned = changes.map(({ uri }) => manuals.fileChanged(uri));
    if (concerned.includes(true)) renew(session, sending);
  });
}

/** Asks the client to tell of changed files; it can only be asked once it is initialized. */
export function watchFiles({ connection, abilities }: Session): void {
  if (!abilities.watches) return;
  const watchers = watched.map((globPattern) => ({ globPattern }));
  void connection.client.register(DidChangeWatchedFilesNotification.type, { watchers });
}

function renew({ abilities, connection }: Session, sending: Sending): void {
  if (!abilities.pulls) sending.renew();
  else if (abilities.refreshes) void connection.languages.diagnostics.refresh();
}
