/** Who may import whom: each place of the code, the places and packages it may reach, and the imports that break this. */
import { dirname, posix } from 'node:path';
import type { Node } from 'typescript/unstable/ast';
import { families } from '../../rules/model/rule.ts';
import { nodesOf, type Parsed, placeOf, SyntaxKind, wordsOf } from './parsing.ts';

/** Places are a folder with all in it (`rules/model/`), the files of a folder alone (`server/*`), or one file. */
interface Zone {
  readonly place: string;
  readonly reaches: readonly string[];
  /** By name, or by how the name starts (`node:*`). */
  readonly packages: readonly string[];
}

const zone = (place: string, reaches: readonly string[], packages: readonly string[] = []): Zone => ({
  place,
  reaches,
  packages,
});

const tables = ['rules/tables/', 'rules/model/'];
const formulas = ['rules/formulas/', ...tables];
const kinds = ['rules/kinds/', ...formulas];
const ruleFolders = families.map((family) => `rules/${family}/`);
const reading = ['server/reading/', ...formulas];
const settings = ['server/settings/', ...tables];
/** What is asked of a whole specification, beside the rules. */
const surveys = ['rules/questions.ts'];
const checking = ['server/*', 'server/reading/', 'server/settings/', ...surveys, ...kinds];
const lsp = ['server/lsp/', 'server/render/', 'rules/index.ts', ...checking];

/** The first zone that holds a file is the file's. */
export const zones: readonly Zone[] = [
  zone('rules/model/', ['rules/model/']),
  zone('rules/tables/', tables),
  zone('rules/formulas/', formulas),
  zone('rules/kinds/', kinds),
  ...ruleFolders.map((folder) => zone(folder, kinds)),
  ...surveys.map((file) => zone(file, kinds)),
  zone('rules/index.ts', [...ruleFolders, 'rules/model/']),
  zone('server/reading/markdown.ts', reading, [
    'mdast',
    'mdast-util-frontmatter',
    'mdast-util-gfm-strikethrough',
    'mdast-util-gfm-table',
    'micromark-extension-frontmatter',
    'micromark-extension-gfm-strikethrough',
    'micromark-extension-gfm-table',
    'remark-parse',
    'unified',
  ]),
  zone('server/reading/', reading),
  zone('server/settings/', settings, ['zod', 'jsonc-parser']),
  zone('server/*', checking),
  zone('server/render/', ['server/render/', ...checking]),
  zone('server/lsp/', lsp, ['vscode-languageserver', 'vscode-languageserver-textdocument']),
  zone(
    'server/hosts/',
    ['server/hosts/', ...lsp, ...formulas],
    ['node:*', 'commander', 'picocolors', 'tinyglobby', 'vscode-languageserver/node'],
  ),
  zone(
    'client/',
    ['client/', 'server/lsp/protocol.ts', 'server/lsp/first-look.ts'],
    ['node:*', 'vscode', 'vscode-languageclient/node'],
  ),
  zone('tests/', ['tests/', 'rules/', 'server/'], ['*']),
  zone('.scripts/', ['.scripts/'], ['*']),
];

/** Programs that read documents have no business there: the network, other programs, code made of text. */
const closed = /^(?:node:)?(?:https?|http2|net|tls|dgram|dns|child_process|cluster|vm|inspector)(?:\/|$)/;

/** Each import against the arrows, with its place. */
export function wrongImports(file: Parsed): readonly string[] {
  const own = zones.find(({ place }) => holds(place, file.path));
  const imports = importsOf(file);
  if (own === undefined) return file.tree ? [`${file.path} stands in no place that has its borders`] : [];
  return imports.flatMap(({ from, at }) => {
    const target = from.startsWith('.') ? posix.join(dirname(file.path), from) : from;
    return isAllowed(own, target, from) ? [] : [`${at} imports ${target}`];
  });
}

/** Positions, diagnostics, edits and the like are made in one file; elsewhere the protocol gives kinds, errors and names. */
export function protocolMakers(file: Parsed): readonly string[] {
  if (!file.path.startsWith('server/lsp/') || file.path === 'server/lsp/convert.ts') return [];
  return nodesOf(file, SyntaxKind.ImportSpecifier)
    .filter((node) => /from 'vscode-languageserver'$/.test(importOf(node).replace(/;$/, '')))
    .filter((node) => !importOf(node).startsWith('import type') && !wordsOf(file, node).startsWith('type '))
    .filter(
      (node) => !/^(?:LSPErrorCodes|ResponseError|TextDocuments|\w+(?:Kind|Notification))$/.test(wordsOf(file, node)),
    )
    .map((node) => `${placeOf(file, node)}: ${wordsOf(file, node)}`);
}

/** The whole statement of an imported name. */
const importOf = ({ parent }: Node): string => parent.parent?.parent?.getText() ?? '';

/** The names of the packages that these files import. */
export function packagesUsed(files: readonly Parsed[]): ReadonlySet<string> {
  const names = files.flatMap(importsOf).map(({ from }) => from);
  return new Set(names.filter((from) => !/^(?:\.|node:)/.test(from)).map(packageOf));
}

const packageOf = (from: string): string => from.split('/', from.startsWith('@') ? 2 : 1).join('/');

function isAllowed({ reaches, packages }: Zone, target: string, from: string): boolean {
  if (from.startsWith('.')) return reaches.some((reached) => holds(reached, target));
  if (closed.test(from) && !packages.includes('*')) return false;
  return packages.some((name) => name === from || (name.endsWith('*') && from.startsWith(name.slice(0, -1))));
}

function holds(place: string, path: string): boolean {
  if (place.endsWith('/')) return path.startsWith(place);
  return place.endsWith('/*') ? dirname(path) === dirname(place) : path === place;
}

interface Import {
  readonly from: string;
  readonly at: string;
}

/** What follows `from`, and what is asked for by `import(…)` and `require(…)`, for values and for types. */
function importsOf(file: Parsed): readonly Import[] {
  return nodesOf(file, SyntaxKind.StringLiteral, SyntaxKind.NoSubstitutionTemplateLiteral)
    .filter(isAskedFor)
    .map((node) => ({ from: textOf(node), at: placeOf(file, node) }));
}

const textOf = (node: Node): string => (node as Node & { readonly text: string }).text;

function isAskedFor(node: Node): boolean {
  const { ImportDeclaration, ExportDeclaration, ExternalModuleReference, CallExpression } = SyntaxKind;
  const { parent } = node;
  if ([ImportDeclaration, ExportDeclaration, ExternalModuleReference].includes(parent.kind)) return true;
  if (parent.parent?.kind === SyntaxKind.ImportType) return true;
  return parent.kind === CallExpression && /^(?:import|require)\s*\(/.test(parent.getText());
}
