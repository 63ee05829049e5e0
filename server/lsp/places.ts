/** Addresses of documents: the editor's URIs, and the paths that the reader and the rules know them by. */
import { projectFileName } from './protocol.ts';

/**
 * The path of a document: its URI without percent signs and without "file://", so that two spellings of one address
 * meet. Drive letters are in lower case. Addresses of other schemes keep their scheme.
 */
export function pathOf(uri: string): string {
  const plain = decoded(uri.replace(/^file:\/\//, ''));
  return plain.replace(/^\/([A-Za-z]):/, (_, drive: string) => `/${drive.toLowerCase()}:`);
}

/** The folder of an address, with its last slash; an unsaved document has none. */
export function folderOf(uri: string): string | undefined {
  const end = uri.lastIndexOf('/');
  return uri.startsWith('untitled:') || end < 0 ? undefined : uri.slice(0, end + 1);
}

/** The addresses at which a project file for this document may stand, the nearest first. */
export function projectFilePlaces(uri: string): readonly string[] {
  const places: string[] = [];
  const root = /^[a-z][a-z0-9+.-]*:\/\/[^/]*\//i.exec(uri)?.[0];
  for (
    let folder = folderOf(uri);
    root !== undefined && folder?.startsWith(root);
    folder = folderOf(folder.slice(0, -1))
  )
    places.push(folder + projectFileName);
  return places;
}

export const isProjectFile = (uri: string): boolean => uri.endsWith(`/${projectFileName}`);

function decoded(uri: string): string {
  try {
    return decodeURIComponent(uri);
  } catch {
    return uri;
  }
}
