/** Diagnostics for clients that cannot ask for them: each result is sent once, and a closed document is cleared. */
import { isProjectFile } from '../places.ts';
import type { Session } from '../session.ts';
import { diagnosticsOf, settingsFaults } from './diagnostics.ts';
import { sendStatus } from './status.ts';

export class Sending {
  /** What each open document was last sent. */
  private readonly sent = new Map<string, string>();

  constructor(private readonly session: Session) {}

  /** Sends all open documents what is new for them. */
  renew(): void {
    for (const { uri } of this.session.documents.all()) {
      this.send(uri).catch((error: unknown) => this.session.connection.console.error(String(error)));
    }
  }

  clear(uri: string): void {
    this.sent.delete(uri);
    void this.session.connection.sendDiagnostics({ uri, diagnostics: [] });
  }

  private async send(uri: string): Promise<void> {
    const { connection, documents, manuals } = this.session;
    if (isProjectFile(uri)) {
      const version = documents.get(uri)?.version;
      return connection.sendDiagnostics({ uri, version, diagnostics: settingsFaults(uri, this.session) });
    }
    const answer = await manuals.answer(uri);
    if (!answer || this.sent.get(uri) === answer.whole.id) return;
    this.sent.set(uri, answer.whole.id);
    sendStatus(answer, this.session);
    const { version } = answer.page;
    await connection.sendDiagnostics({ uri, version, diagnostics: diagnosticsOf(answer, this.session) });
  }
}
