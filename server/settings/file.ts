/** Reads one project file: what is good in it, and each fault with its place and cure. */
import { createScanner, findNodeAtLocation, getNodeValue, type Node, type ParseError, parseTree } from 'jsonc-parser';
import type { Source } from '../../rules/model/source.ts';
import { type Fault, phrase, phraseSyntax, phraseUnused } from './faults.ts';
import { type ProjectFile, projectFileJsonSchema, projectFileSchema } from './schema.ts';

/** A fault of a settings file; `notice` is a key that is right but has no effect in this version. */
export interface SettingsProblem extends Fault {
  readonly weight: 'fault' | 'notice';
  readonly path: string;
  readonly start: number;
  readonly end: number;
  /** From 1. */
  readonly line: number;
  readonly column: number;
}

/** A project file as read: `values` holds only what is right. */
export interface SettingsFile {
  readonly path: string;
  readonly values: ProjectFile;
  readonly problems: readonly SettingsProblem[];
}

type Path = readonly (string | number)[];

/** Reads the text of a project file; `ruleIds` are the rules that `levels` may name. Never throws. */
export function readSettings(source: Source, ruleIds: readonly string[]): SettingsFile {
  if (nestingAllowed < nesting(source.text))
    return { path: source.path, values: {}, problems: [at(source, 0, 0, tooDeep, 'fault')] };
  const errors: ParseError[] = [];
  const root = parseTree(source.text.replace(/^\uFEFF/, ' '), errors, { allowTrailingComma: true });
  const problems = errors.map((error) => at(source, error.offset, error.length, phraseSyntax(error.error), 'fault'));
  if (source.text.trim() === '')
    return { path: source.path, values: {}, problems: [at(source, 0, 0, emptyFile, 'fault')] };
  if (root === undefined) return { path: source.path, values: {}, problems };
  problems.push(...repeated(root).map((key) => onNode(source, key, repeatedKey(key), 'fault')));
  const { values, faults } = sift(getNodeValue(root), ruleIds);
  problems.push(...faults.map(({ path, key, fault }) => onNode(source, nodeAt(root, path, key), fault, 'fault')));
  problems.push(...unused(values).map(([path, fault]) => onNode(source, nodeAt(root, path), fault, 'notice')));
  return { path: source.path, values, problems: problems.sort((a, b) => a.start - b.start) };
}

interface FaultAt {
  readonly path: Path;
  /** A key that should not be there: the place is the key itself. */
  readonly key?: string;
  readonly fault: Fault;
}

/** Drops what the schema refuses until the rest is right; each refusal becomes a fault. */
function sift(parsed: unknown, ruleIds: readonly string[]): { values: ProjectFile; faults: readonly FaultAt[] } {
  const schema = projectFileSchema(ruleIds);
  const shape = projectFileJsonSchema(ruleIds);
  const faults: FaultAt[] = [];
  let left: unknown = parsed;
  for (;;) {
    const result = schema.safeParse(left);
    if (result.success) return { values: result.data, faults };
    const rest = JSON.parse(JSON.stringify(left));
    for (const issue of result.error.issues) {
      const path = issue.path as Path;
      const keys = issue.code === 'unrecognized_keys' ? issue.keys : [undefined];
      for (const key of keys) faults.push({ path, key, fault: phrase(issue, key, shape, left) });
      for (const key of keys) drop(rest, key === undefined ? path : [...path, key]);
    }
    left = result.error.issues.some((issue) => issue.path.length === 0 && issue.code !== 'unrecognized_keys')
      ? {}
      : rest;
  }
}

/** Deletes the value at the path, or the nearest property around it where it is an item of a list or absent. */
function drop(value: unknown, path: Path): void {
  const parents: unknown[] = [value];
  for (const step of path.slice(0, -1)) parents.push((parents.at(-1) as Record<string | number, unknown>)?.[step]);
  for (let depth = path.length - 1; 0 <= depth; depth--) {
    const parent = parents[depth] as Record<string, unknown> | undefined;
    const key = String(path[depth]);
    if (parent === null || typeof parent !== 'object' || Array.isArray(parent) || !Object.hasOwn(parent, key)) continue;
    delete parent[key];
    return;
  }
}

/** Far beyond what the keys need, and far below what the parser can bear. */
const nestingAllowed = 100;

const tooDeep: Fault = {
  message: 'the braces stand too deep in one another',
  cure: 'close each { and [ where it ends',
};

/** How deep braces and brackets stand in one another, at most. */
function nesting(text: string): number {
  const scanner = createScanner(text, true);
  let [depth, deepest] = [0, 0];
  // By its first character: a brace inside a text or a comment does not open one.
  for (scanner.scan(); 0 < scanner.getTokenLength(); scanner.scan()) {
    const opening = text.charAt(scanner.getTokenOffset());
    if (/[{[]/.test(opening)) deepest = Math.max(deepest, ++depth);
    if (/[}\]]/.test(opening)) depth--;
  }
  return deepest;
}

const emptyFile: Fault = { message: 'the file is empty', cure: 'write { } with the settings between the braces' };

const repeatedKey = (key: Node): Fault => ({
  message: `"${key.value}" stands twice; the later one counts`,
  cure: 'keep one of the two',
});

/** The later of two equal keys of one object, anywhere in the tree. */
function repeated(node: Node): readonly Node[] {
  const seen = new Set<string>();
  const own: Node[] = [];
  for (const property of node.type === 'object' ? (node.children ?? []) : []) {
    const key = property.children?.[0];
    if (key === undefined) continue;
    if (seen.has(key.value)) own.push(key);
    seen.add(key.value);
  }
  return [...own, ...(node.children ?? []).flatMap(repeated)];
}

/** Keys that are kept for later versions: said, so that nobody relies on them. */
function unused(values: ProjectFile): readonly (readonly [Path, Fault])[] {
  const scopes: [Path, ProjectFile][] = [[[], values]];
  for (const [name, own] of Object.entries(values.sections ?? {})) scopes.push([['sections', name], own]);
  return scopes.flatMap(([path, scope]) =>
    (['amendments', 'season'] as const)
      .filter((key) => scope[key] !== undefined)
      .map((key) => [[...path, key], phraseUnused(key)] as const),
  );
}

/** The node of a value, or of its key where `key` is given; the nearest one around it where it is absent. */
function nodeAt(root: Node, path: Path, key?: string): Node {
  const parent = findNodeAtLocation(root, [...path]);
  if (parent === undefined) return path.length === 0 ? root : nodeAt(root, path.slice(0, -1));
  const property = parent.children?.find((child) => child.children?.[0]?.value === key);
  return property?.children?.[0] ?? parent;
}

const onNode = (source: Source, node: Node, fault: Fault, weight: SettingsProblem['weight']): SettingsProblem =>
  at(source, node.offset, node.length, fault, weight);

function at(
  { path, text }: Source,
  start: number,
  length: number,
  fault: Fault,
  weight: SettingsProblem['weight'],
): SettingsProblem {
  const lines = text.slice(0, start).split(/\r\n|\r|\n/u);
  return { ...fault, weight, path, start, end: start + length, line: lines.length, column: lines.at(-1)!.length + 1 };
}
