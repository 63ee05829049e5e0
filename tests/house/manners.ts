/** How files are written: names, lengths, opening sentences, and the words that no file holds. */
import type { Node } from 'typescript/unstable/ast';
import { nodesOf, type Parsed, placeOf, SyntaxKind, wordsOf } from './parsing.ts';

const fileLimit = 250;
const functionLimit = 40;

/** Tables, word lists and sample texts are as long as their matter. */
const asLongAsItTakes = /^(?:rules\/tables\/|server\/reading\/words\/)|\.(?:md|json|jsonc)$|^\.biome/;

/** No drawer for odds and ends: what helps an idea stands in the idea's file. */
export function drawers({ path }: Parsed): readonly string[] {
  const names = path.split('/').map((name) => name.replace(/\..+$/, ''));
  return names.some((name) => /^(?:utils?|helpers?|common|misc)$/i.test(name)) ? [path] : [];
}

export function longFiles({ path, text }: Parsed): readonly string[] {
  const lines = text.trimEnd().split('\n').length;
  return !asLongAsItTakes.test(path) && fileLimit < lines ? [`${path}: ${lines} lines`] : [];
}

export function longFunctions(file: Parsed): readonly string[] {
  return nodesOf(file, ...functions).flatMap((node) => {
    const lines = wordsOf(file, node).split('\n').length;
    return functionLimit < lines && !isChapter(node) ? [`${placeOf(file, node)}: ${lines} lines`] : [];
  });
}

/** A group of tests is a chapter of its file: the tests in it are counted one by one. */
function isChapter({ parent }: Node): boolean {
  return parent.kind === SyntaxKind.CallExpression && /^describe\b/.test(parent.getText());
}

const functions = [
  SyntaxKind.FunctionDeclaration,
  SyntaxKind.FunctionExpression,
  SyntaxKind.ArrowFunction,
  SyntaxKind.MethodDeclaration,
  SyntaxKind.Constructor,
  SyntaxKind.GetAccessor,
  SyntaxKind.SetAccessor,
];

/** Each code file says in its first line what it is for. */
export function unopened({ path, text, tree }: Parsed): readonly string[] {
  return tree && !/^\/\*\* \S[^\n]*\w[^\n]*[.:;,?]? ?(?:\*\/)?\n/.test(text) ? [path] : [];
}

/** Two functions instead of one with a switch. */
export function booleanParameters(file: Parsed): readonly string[] {
  return nodesOf(file, SyntaxKind.Parameter).flatMap((node) =>
    /^\w+\??: boolean\b/.test(wordsOf(file, node)) ? [`${placeOf(file, node)}: ${wordsOf(file, node)}`] : [],
  );
}

/** The compiler and the linter are asked, never silenced; work left for later stands in an issue. */
export function silencers(file: Parsed): readonly string[] {
  const anys = nodesOf(file, SyntaxKind.AnyKeyword).map((node) => `${placeOf(file, node)}: any`);
  const words = /@ts-(?:ignore|expect-error|nocheck)|biome-ignore|\b(?:TODO|FIXME)\b/g;
  const comments = file.tree ? [...file.text.matchAll(words)].filter(({ index }) => inComment(file, index)) : [];
  return [...anys, ...comments.map(([word]) => `${file.path}: ${word}`)];
}

/** On a line of comment: strings may speak of anything. */
function inComment({ text }: Parsed, index: number): boolean {
  return /^\s*(?:\/\/|\/?\*)|\s\/\//.test(text.slice(text.lastIndexOf('\n', index) + 1, index));
}

/** A test that is left out, or that leaves the others out, proves nothing. */
export function leftOutTests(file: Parsed): readonly string[] {
  if (!file.path.startsWith('tests/')) return [];
  const named = nodesOf(file, SyntaxKind.PropertyAccessExpression, SyntaxKind.PropertyAssignment);
  return named.map((node) => `${placeOf(file, node)}: ${wordsOf(file, node)}`).filter((words) => leavesOut.test(words));
}

/** `test.only`, `describe.each(…).skip`, `context.skip`, and `skip: true` among the options of a test. */
const leavesOut = /\.(?:skip|only|todo|fails|skipIf|runIf)$|: (?:skip|only|todo|fails): true$/;

/** The same text gives the same findings, whenever it is asked. */
export function clocksAndChances(file: Parsed): readonly string[] {
  const isPure = /^(?:rules|server\/reading)\//.test(file.path);
  return isPure ? namesIn(file, /^(?:Date|random|performance|crypto)$/) : [];
}

/** What is read never leaves the machine, and no text is run as a program. */
export function networkAndEval(file: Parsed): readonly string[] {
  const isShipped = /^(?:rules|server|client)\//.test(file.path);
  return isShipped ? namesIn(file, /^(?:fetch|XMLHttpRequest|WebSocket|EventSource|eval|Function)$/) : [];
}

function namesIn(file: Parsed, names: RegExp): readonly string[] {
  const found = nodesOf(file, SyntaxKind.Identifier).filter((node) => names.test(wordsOf(file, node)));
  return found.map((node: Node) => `${placeOf(file, node)}: ${wordsOf(file, node)}`);
}

/** The project stands alone, on any machine. */
export function foreignPaths({ path, text }: Parsed): readonly string[] {
  const folders = /\.\.\/shared\b|(?<![\w.~-])\/(?:work|home|root|Users|tmp|opt)\/\w|\b[A-Z]:\\\w/g;
  return [...text.matchAll(folders)].map(([words]) => `${path}: ${words}`);
}
