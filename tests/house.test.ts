/** The house rules that neither compiler nor linter can see, held against all files; each is shown to find its fault. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { rules } from '../rules/index.ts';
import { packagesUsed, protocolMakers, wrongImports } from './house/borders.ts';
import { broken } from './house/broken.ts';
import * as manners from './house/manners.ts';
import { type Parsed, parse, root, textsOf } from './house/parsing.ts';
import { bareNumbers, rulesIn } from './house/rules.ts';

const files = parse(textsOf());

const houseRules: Readonly<Record<string, (file: Parsed) => readonly string[]>> = {
  'imports follow the arrows': wrongImports,
  'one file makes what the protocol carries': protocolMakers,
  'no drawer for odds and ends': manners.drawers,
  'files are short': manners.longFiles,
  'functions are short': manners.longFunctions,
  'each file opens with a sentence that says what it is for': manners.unopened,
  'no parameter is a switch': manners.booleanParameters,
  'nothing silences the compiler or the linter': manners.silencers,
  'no test is left out': manners.leftOutTests,
  'no clock and no chance where results are made': manners.clocksAndChances,
  'no network and no text run as code': manners.networkAndEval,
  'nothing names a folder of some machine': manners.foreignPaths,
  'a rule file holds no number but 0 and 1': bareNumbers,
};

test.each(Object.entries(houseRules))('%s', (_, rule) => {
  expect(files.flatMap(rule)).toEqual([]);
});

test('the list of rules is the files, each under its own name and folder', () => {
  const listed = rules.map(({ family, id }) => `${family}/${id}`);
  expect(listed.toSorted()).toEqual(rulesIn(files).toSorted());
});

test('the top holds only what is agreed', () => {
  const agreed = ['client', 'rules', 'server', 'tests', 'package.json', 'package-lock.json', 'tsconfig.json'];
  const pages = ['CHANGELOG.md', 'DEVELOPERS.md', 'LICENSE', 'README.md'];
  const made = /^(?:dist|node_modules|.*\.vsix)$/;
  const others = readdirSync(root).filter((name) => !name.startsWith('.') && !made.test(name));
  expect(others.toSorted()).toEqual([...agreed, ...pages].toSorted());
});

/** Given by the editor, and types without a program behind them. */
const given = ['vscode', 'mdast'];

test('the packages asked for are those used: shipped ones by the programs, the others by tests and tools', () => {
  const { dependencies, devDependencies } = JSON.parse(readFileSync(`${root}package.json`, 'utf8'));
  const isShipped = ({ path }: Parsed): boolean => /^(?:rules|server|client)\//.test(path);
  const shipped = [...packagesUsed(files.filter(isShipped))].filter((name) => !given.includes(name));
  expect(shipped.toSorted()).toEqual(Object.keys(dependencies).toSorted());
  const known = Object.keys({ ...dependencies, ...devDependencies });
  expect(known).toEqual(expect.arrayContaining([...packagesUsed(files)].filter((name) => !given.includes(name))));
  expect(known).toEqual(expect.arrayContaining(given.map((name) => `@types/${name}`)));
});

const brokenFiles = parse(new Map(broken.map(([, path, text]) => [path, text])));

test.each(broken.map((each, index) => [...each, index] as const))(
  '%s, else it is told: %s',
  (rule, _, __, said, index) => {
    const found = houseRules[rule]?.(brokenFiles[index] as Parsed) ?? [];
    expect(found).toHaveLength(1);
    expect(found[0]).toContain(said);
  },
);

test('every house rule is shown to find a fault', () => {
  expect(Object.keys(houseRules).filter((name) => !broken.some(([rule]) => rule === name))).toEqual([]);
});
