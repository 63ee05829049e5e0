/** Tells our own client how each document stands, and answers why a document is or is not checked. */
import { LSPErrorCodes, ResponseError } from 'vscode-languageserver';
import type { Answer } from '../manuals.ts';
import { isProjectFile } from '../places.ts';
import { statusNotification, type WhyParams, type WhyResult, whyRequest } from '../protocol.ts';
import type { Session } from '../session.ts';
import { statusOf, whyText } from '../status.ts';

export function sendStatus(answer: Answer, { connection, abilities }: Session): void {
  if (abilities.status) void connection.sendNotification(statusNotification, statusOf(answer));
}

export function answerWhy({ connection, documents, manuals }: Session): void {
  connection.onRequest(whyRequest, async ({ uri }: WhyParams): Promise<WhyResult | ResponseError<void>> => {
    if (!documents.get(uri)) return 'Not checked: the document is not open as Markdown or plain text.';
    if (isProjectFile(uri)) return 'This is the project file: its own faults are shown in it.';
    const answer = await manuals.answer(uri);
    return answer ? whyText(answer) : new ResponseError(LSPErrorCodes.ContentModified, 'The text changed meanwhile.');
  });
}
