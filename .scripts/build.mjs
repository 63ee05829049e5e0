/** Builds what is shipped into dist/: the command line, the server, the client, and the schema of the project file. */
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const root = fileURLToPath(new URL('..', import.meta.url));
const { version } = JSON.parse(await readFile(`${root}package.json`, 'utf8'));

/** Built file -> where it starts. */
const programs = {
  firstwinter: 'server/hosts/cli.ts',
  server: 'server/hosts/node.ts',
  client: 'client/extension.ts',
};

/** The globbing package is an ES module that asks where it stands. */
const commandOnly = {
  banner: { js: "#!/usr/bin/env node\nconst ownUrl = require('node:url').pathToFileURL(__filename).href;" },
  define: { VERSION: JSON.stringify(version), 'import.meta.url': 'ownUrl' },
};

/** Settings of every bundle. `module` first: the other entry of one package hides its files behind run-time requires. */
const settings = {
  absWorkingDir: root,
  bundle: true,
  platform: 'node',
  target: 'node20',
  mainFields: ['module', 'main'],
  define: { VERSION: JSON.stringify(version) },
  legalComments: 'none',
  logLevel: 'warning',
};

const names = process.argv.slice(2).filter((word) => !word.startsWith('-'));
await buildAll(0 < names.length ? names : Object.keys(programs), { minify: process.argv.includes('--minify') });

/** Bundles the named programs, all where none is named, and writes the schema. */
async function buildAll(names, options) {
  await mkdir(`${root}dist`, { recursive: true });
  // The editor loads CommonJS; the package around it is made of ES modules.
  await writeFile(`${root}dist/package.json`, '{ "type": "commonjs" }\n');
  await Promise.all(names.map((name) => buildProgram(name, options)));
  if (names.includes('firstwinter')) await writeSchema();
}

async function buildProgram(name, options) {
  await build({
    ...settings,
    ...options,
    entryPoints: [programs[name]],
    outfile: `dist/${name}.js`,
    format: 'cjs',
    external: ['vscode'],
    ...(name === 'firstwinter' && commandOnly),
  });
}

/** The schema is made by the code that reads the project file, so that the two cannot differ. */
async function writeSchema() {
  const contents = `
    import { projectFileJsonSchema } from './server/settings.ts';
    import { rules } from './rules/index.ts';
    export default projectFileJsonSchema(rules.map((rule) => rule.id));
  `;
  const stdin = { contents, resolveDir: root, loader: 'ts' };
  const { outputFiles } = await build({ ...settings, stdin, write: false, format: 'esm' });
  const code = Buffer.from(outputFiles[0].contents).toString('base64');
  const { default: schema } = await import(`data:text/javascript;base64,${code}`);
  await writeFile(`${root}dist/firstwinter.schema.json`, `${JSON.stringify(schema, null, 2)}\n`);
}
