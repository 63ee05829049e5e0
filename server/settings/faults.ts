/** Words for what is wrong in a project file: what it is, what to write instead, and what was probably meant. */
import { printParseErrorCode } from 'jsonc-parser';
import type * as z from 'zod';
import { nearest } from './nearest.ts';

export interface Fault {
  readonly message: string;
  readonly cure: string;
}

type Issue = z.core.$ZodIssue;

/** The part of JSON Schema that ours uses. */
interface Shape {
  readonly properties?: Readonly<Record<string, Shape>>;
  readonly additionalProperties?: Shape | boolean;
  readonly propertyNames?: { readonly enum?: readonly string[] };
  readonly items?: Shape | readonly Shape[];
}

/** One refusal of the schema in words; `key` is the unknown key it is about, `root` the refused value as a whole. */
export function phrase(issue: Issue, key: string | undefined, shape: object, root: unknown): Fault {
  if (key !== undefined) return unknownKey(key, issue.path, shape);
  const name = issue.path.length === 0 ? 'The file' : `"${issue.path.join('.')}"`;
  if (issue.code === 'invalid_value') return wrongValue(name, valueAt(root, issue.path), issue.values.map(String));
  if (issue.code === 'invalid_type') return wrongType(name, issue.expected, valueAt(root, issue.path));
  if (issue.code === 'custom' || issue.code === 'invalid_format') {
    return { message: `${name}: ${shown(valueAt(root, issue.path))} cannot be read`, cure: issue.message };
  }
  if (issue.path.at(-1) === 'placing') {
    return { message: `${name} takes two dates`, cure: 'write the first and the last, ["2026-04-15", "2026-10-15"]' };
  }
  return { message: `${name} is empty or too long`, cure: 'write a text between the quotes' };
}

/** What the parser of the file itself stumbled on. */
export function phraseSyntax(code: number): Fault {
  const [message, cure] = syntax[printParseErrorCode(code)] ?? ['this cannot be read here', 'write JSON with comments'];
  return { message, cure };
}

/** A key that is checked and kept, without effect so far. */
export const phraseUnused = (key: string): Fault => ({
  message: `"${key}" is read and kept, but no rule of this version uses it`,
  cure: 'judge these values yourself until a later version does',
});

const syntax: Readonly<Record<string, readonly [string, string]>> = {
  InvalidSymbol: ['a word stands here without quotes', 'put it between double quotes'],
  PropertyNameExpected: ['a key is missing here', 'write a key in double quotes, or take the comma away'],
  ValueExpected: ['a value is missing here', 'write the value after the colon'],
  ColonExpected: ['a colon is missing here', 'write "key": "value"'],
  CommaExpected: ['a comma is missing before this', 'put a comma between two entries'],
  CloseBraceExpected: ['a closing brace is missing', 'end the object with }'],
  CloseBracketExpected: ['a closing bracket is missing', 'end the list with ]'],
  EndOfFileExpected: ['text stands after the end of the settings', 'keep one object, { … }, in the file'],
  UnexpectedEndOfString: ['a text is not closed', 'end it with a double quote on the same line'],
  UnexpectedEndOfComment: ['a comment is not closed', 'end it with */'],
};

function unknownKey(key: string, path: Issue['path'], shape: object): Fault {
  const known = keysAt(shape as Shape, path);
  const meant = nearest(key, known);
  const where = path.length === 0 ? 'a key of the project file' : `a key of "${path.join('.')}"`;
  const isLevels = path.at(-1) === 'levels';
  const message = isLevels ? `"${key}" is neither a rule nor a family` : `"${key}" is not ${where}`;
  if (meant !== undefined) return { message, cure: `did you mean "${meant}"?` };
  return { message, cure: isLevels ? 'the command "rules" lists them' : `keys here: ${known.join(', ')}` };
}

function wrongValue(name: string, value: unknown, allowed: readonly string[]): Fault {
  const meant = typeof value === 'string' ? nearest(value, allowed) : undefined;
  const hint = meant === undefined ? '' : `; did you mean "${meant}"?`;
  return { message: `${name} cannot be ${shown(value)}`, cure: `write one of ${allowed.join(', ')}${hint}` };
}

function wrongType(name: string, expected: string, value: unknown): Fault {
  const takes = typeWords[expected] ?? expected;
  if (value === undefined) return { message: `${name} is missing`, cure: `add it: ${takes}` };
  return { message: `${name} takes ${takes}, not ${shown(value)}`, cure: `write ${takes}` };
}

/** A refused value, cut where it is long. */
function shown(value: unknown): string {
  const text = JSON.stringify(value);
  return text.length <= 40 ? text : `${text.slice(0, 39)}…`;
}

const typeWords: Readonly<Record<string, string>> = {
  string: 'a text in double quotes',
  object: 'an object, { … }',
  record: 'an object, { … }',
  array: 'a list, [ … ]',
  tuple: 'a list of two dates, [ … ]',
};

function keysAt(shape: Shape, path: Issue['path']): readonly string[] {
  let here: Shape | undefined = shape;
  for (const step of path) here = here && stepInto(here, step);
  return Object.keys(here?.properties ?? {}).concat(here?.propertyNames?.enum ?? []);
}

function stepInto(shape: Shape, step: PropertyKey): Shape | undefined {
  if (typeof step === 'number') return Array.isArray(shape.items) ? shape.items[step] : (shape.items as Shape);
  const own = shape.properties?.[String(step)];
  return own ?? (typeof shape.additionalProperties === 'object' ? shape.additionalProperties : undefined);
}

function valueAt(root: unknown, path: Issue['path']): unknown {
  return path.reduce<unknown>((value, step) => (value as Record<PropertyKey, unknown> | undefined)?.[step], root);
}
