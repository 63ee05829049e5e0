/** One reading for each version of a document: open documents as the editor has them, the others as they stand on disk. */
import type { TextDocuments } from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { decode } from '../reading/decode.ts';
import { read } from '../reading/read.ts';
import type { Reading } from '../reading/reading.ts';
import type { Host, Listed } from './host.ts';
import { pathOf } from './places.ts';

export type OpenDocuments = Pick<TextDocuments<TextDocument>, 'get' | 'all'>;

/** One version of a document with what was read in it. */
export interface Page {
  readonly uri: string;
  readonly path: string;
  /** Undefined for a file that is not open. */
  readonly version?: number;
  /** A copy of the text as it was read, for lines and columns: the editor's own document changes under our hands. */
  readonly text: TextDocument;
  readonly reading: Reading;
}

export class Readings {
  /** By path; `stamp` names the version that was read. */
  private readonly pages = new Map<string, { readonly stamp: string; readonly page: Page }>();

  constructor(
    private readonly host: Host,
    private readonly documents: OpenDocuments,
  ) {}

  /** The open document with this path. */
  opened(path: string): TextDocument | undefined {
    return this.documents.all().find(({ uri }) => pathOf(uri) === path);
  }

  ofOpen(document: TextDocument): Page {
    const { uri, languageId, version } = document;
    return this.remembered(uri, `version ${version}`, () => {
      const text = TextDocument.create(uri, languageId, version, document.getText());
      return { uri, path: pathOf(uri), version, text, reading: read({ path: pathOf(uri), text: text.getText() }) };
    });
  }

  /** Undefined where the file cannot be read. */
  async ofDisk({ uri, stamp }: Listed): Promise<Page | undefined> {
    const known = this.pages.get(pathOf(uri));
    if (known?.stamp === stamp) return known.page;
    const bytes = await this.host.read(uri);
    if (!bytes) return undefined;
    const text = TextDocument.create(uri, 'markdown', 0, decode(bytes).text);
    return this.remembered(uri, stamp, () => {
      return { uri, path: pathOf(uri), text, reading: read({ path: pathOf(uri), text: text.getText() }) };
    });
  }

  /** Forgets what no manual in use asks for any longer. */
  forgetAllBut(needed: (path: string) => boolean): void {
    for (const path of this.pages.keys()) if (!needed(path)) this.pages.delete(path);
  }

  private remembered(uri: string, stamp: string, make: () => Page): Page {
    const known = this.pages.get(pathOf(uri));
    if (known?.stamp === stamp && known.page.uri === uri) return known.page;
    const page = make();
    this.pages.set(page.path, { stamp, page });
    return page;
  }
}
