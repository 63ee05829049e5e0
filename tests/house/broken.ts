/** Small files that break one house rule each, and what is said of them. */
const lines = (count: number, line: string): string => Array(count).fill(line).join('\n');

/** Put together here, so that this file does not break what it shows broken. */
const later = ['TO', 'DO'].join('');
const outside = ['..', 'shared'].join('/');
const someone = ['', 'home', 'me'].join('/');

/** A file that breaks the rule, and what is said of it; the rule would be empty without. */
export const broken: readonly (readonly [rule: string, path: string, text: string, said: string])[] = [
  [
    'imports follow the arrows',
    'rules/air/a.ts',
    "import x from './air-content-low.ts';",
    'rules/air/air-content-low.ts',
  ],
  ['imports follow the arrows', 'rules/tables/a.ts', "import x from '../formulas/requirement.ts';", 'rules/formulas/'],
  ['imports follow the arrows', 'rules/model/a.ts', "import type { X } from '../../server/checking.ts';", 'server/'],
  ['imports follow the arrows', 'rules/kinds/a.ts', "export * from 'zod';", 'zod'],
  ['imports follow the arrows', 'server/b.ts', "import { rules } from '../rules/index.ts';", 'rules/index.ts'],
  ['imports follow the arrows', 'server/reading/a.ts', "import { unified } from 'unified';", 'unified'],
  ['imports follow the arrows', 'server/lsp/a.ts', "type X = import('vscode').Uri;", 'vscode'],
  ['imports follow the arrows', 'server/render/a.ts', "const fs = await import('node:fs');", 'node:fs'],
  ['imports follow the arrows', 'server/hosts/a.ts', "import { request } from 'node:https';", 'node:https'],
  ['imports follow the arrows', 'client/a.ts', "import { check } from '../server/checking.ts';", 'server/checking.ts'],
  ['imports follow the arrows', 'server/new/a.ts', 'export const a = 1;', 'no place'],
  [
    'one file makes what the protocol carries',
    'server/lsp/c.ts',
    "import { Range, type Hover } from 'vscode-languageserver';",
    'Range',
  ],
  ['no drawer for odds and ends', 'server/utils/a.ts', '', 'utils'],
  ['no drawer for odds and ends', 'server/helpers.ts', '', 'helpers'],
  ['files are short', 'server/c.ts', lines(251, 'a();'), '251 lines'],
  ['functions are short', 'server/d.ts', `const f = () => {\n${lines(39, 'a();')}\n};`, ':1: 41 lines'],
  ['functions are short', 'tests/c.test.ts', `test('x', () => {\n${lines(40, 'a();')}\n});`, '42 lines'],
  ['each file opens with a sentence that says what it is for', 'server/e.ts', 'export const a = 1;\n', 'e.ts'],
  ['no parameter is a switch', 'server/f.ts', 'function f(isLong: boolean) {}', 'isLong'],
  ['nothing silences the compiler or the linter', 'server/g.ts', 'const a: any = 1;', ':1: any'],
  ['nothing silences the compiler or the linter', 'server/h.ts', `// ${later} x`, later],
  ['no test is left out', 'tests/a.test.ts', "test.skip('x', () => {});", 'skip'],
  ['no test is left out', 'tests/b.test.ts', "test('x', { skip: true }, () => {});", 'skip: true'],
  ['no clock and no chance where results are made', 'rules/kinds/b.ts', 'const now = Date.now();', 'Date'],
  ['no clock and no chance where results are made', 'server/reading/b.ts', 'const x = Math.random();', 'random'],
  ['no network and no text run as code', 'server/lsp/b.ts', "fetch('x');", 'fetch'],
  ['no network and no text run as code', 'server/i.ts', "new Function('return 1');", 'Function'],
  ['nothing names a folder of some machine', 'README.md', `see ${outside}/x`, outside],
  ['nothing names a folder of some machine', 'server/j.ts', `'${someone}'`, '/home'],
  ['a rule file holds no number but 0 and 1', 'rules/air/b.ts', 'const x = `$' + '{1 + 7}\\n` + 0;', ':1: 7'],
];
