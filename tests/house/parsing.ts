/** The files of the project with their syntax trees, as the compiler reads them: what the house is judged on. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Node, type SourceFile, SyntaxKind } from 'typescript/unstable/ast';
import { createVirtualFileSystem } from 'typescript/unstable/fs';
import { API } from 'typescript/unstable/sync';

/** A text of the project, and its tree where it is code. */
export interface Parsed {
  /** From the top of the project, with forward slashes. */
  readonly path: string;
  readonly text: string;
  readonly tree: SourceFile | undefined;
}

export const root = fileURLToPath(new URL('../..', import.meta.url));

/** Made by tools, or not ours to judge. */
const leftOut = /^(?:\.git|\.cache|node_modules|dist|package-lock\.json|.*\.(?:png|vsix))$/;
const code = /\.(?:ts|mjs)$/;

/** All texts of the project, by path. */
export function textsOf(folder = ''): ReadonlyMap<string, string> {
  const texts = new Map<string, string>();
  for (const entry of readdirSync(root + folder, { withFileTypes: true })) {
    const path = folder + entry.name;
    if (leftOut.test(entry.name)) continue;
    if (entry.isFile()) texts.set(path, readFileSync(root + path, 'utf8'));
    if (entry.isDirectory()) for (const [inner, text] of textsOf(`${path}/`)) texts.set(inner, text);
  }
  return texts;
}

/** Parses without resolving: imports are judged by their words. */
export function parse(texts: ReadonlyMap<string, string>): readonly Parsed[] {
  const files = [...texts.keys()].filter((path) => code.test(path));
  const compilerOptions = { noResolve: true, noLib: true, noEmit: true, allowJs: true, types: [] };
  const onDisk = Object.fromEntries([...texts].map(([path, text]) => [`/house/${path}`, text]));
  const project = '/house/house.json';
  const api = new API({
    cwd: '/house',
    fs: createVirtualFileSystem({ ...onDisk, [project]: JSON.stringify({ compilerOptions, files }) }),
  });
  const program = api.updateSnapshot({ openProjects: [project] }).getProjects()[0]?.program;
  const parsed = [...texts].map(([path, text]) => {
    const tree = code.test(path) ? program?.getSourceFile(`/house/${path}`) : undefined;
    if (code.test(path) && tree === undefined) throw new Error(`${path} was not parsed`);
    return { path, text, tree };
  });
  api.close();
  return parsed;
}

/** The node and all below it, in order. */
export function* nodesIn(node: Node): Generator<Node> {
  yield node;
  const children: Node[] = [];
  node.forEachChild((child) => void children.push(child));
  for (const child of children) yield* nodesIn(child);
}

export const nodesOf = ({ tree }: Parsed, ...kinds: readonly SyntaxKind[]): readonly Node[] =>
  tree ? [...nodesIn(tree)].filter(({ kind }) => kinds.includes(kind)) : [];

/** The source text of a node, without the comment before it. */
export const wordsOf = ({ text }: Parsed, node: Node): string => text.slice(startOf(node), node.end);

/** "server/checking.ts:12": where a node stands. */
export const placeOf = ({ path, text }: Parsed, node: Node): string =>
  `${path}:${text.slice(0, startOf(node)).split('\n').length}`;

const startOf = (node: Node): number => node.getStart(node.getSourceFile());

export { SyntaxKind };
