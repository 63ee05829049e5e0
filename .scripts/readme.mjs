/** Renews what the README quotes: the sample, the keys of the project file, the rules. `--print` only shows the result. */
import { execFileSync } from 'node:child_process';
import { readFile, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const page = await readFile(`${root}README.md`, 'utf8');
const schema = JSON.parse(await readFile(`${root}dist/firstwinter.schema.json`, 'utf8'));

const parts = {
  sample: fenced(shortened(firstWinter('check', 'client/demo', '--fail-on', 'never'))),
  keys: table(['Key', 'Values', 'What it says'], keyRows(schema.properties)),
  rules: table(['Rule', 'Level', 'What it finds'], JSON.parse(firstWinter('rules', '--format', 'json')).map(ruleRow)),
};
const renewed = Object.entries(parts).reduce(
  (text, [name, part]) =>
    text.replace(
      new RegExp(`(<!-- made: ${name} -->\n)[^]*?(<!-- end -->)`),
      (_, opening, closing) => `${opening}\n${part}\n\n${closing}`,
    ),
  page,
);

if (process.argv.includes('--print')) process.stdout.write(renewed);
else await writeFile(`${root}README.md`, renewed);

function firstWinter(...words) {
  return execFileSync(process.execPath, ['dist/firstwinter.js', ...words], { cwd: root, encoding: 'utf8' });
}

/** The head, two findings, a clean section and the close of a report; `…` stands where something is left out. */
function shortened(report) {
  const wanted = [/^First Winter/, /^Code {2}/, /^SECTION 03/, /rule (?:w-cm-high|hard-trowel-outdoors)$/, /^\d+ must/];
  const blocks = report.trim().split('\n\n');
  const kept = blocks.map((block) => (wanted.some((words) => words.test(block)) ? block : '…'));
  return kept.filter((block, at) => block !== '…' || kept[at + 1] !== '…').join('\n\n');
}

/** One row a key; what may be said of an element or a section by name is listed below it. */
function keyRows(properties, before = '') {
  return Object.entries(properties).flatMap(([name, key]) => {
    if (name === '$schema') return [];
    const row = [`\`${before}${name}\``, values(key), key.description ?? ''];
    const named = key.additionalProperties?.properties;
    const inner = name === 'sections' ? undefined : (named ?? key.properties ?? key.items?.properties);
    return [
      row,
      ...(inner ? keyRows(inner, `${before}${name}${key.type === 'array' ? '[]' : ''}${named ? '.NAME' : ''}.`) : []),
    ];
  });
}

function values({ enum: choices, type, propertyNames, additionalProperties: each }) {
  if (choices) return choices.map((choice) => `\`${choice}\``).join(', ');
  if (propertyNames?.enum) return `by rule or family: ${values(each)}`;
  if (type === 'object') return each ? 'by name' : 'keys below';
  return type === 'array' ? 'a list' : 'a text';
}

function ruleRow({ id, severity, title }) {
  return [`\`${id}\``, severity, title];
}

function table(head, rows) {
  const line = (cells) => `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n');
}

function fenced(text) {
  return `\`\`\`text\n${text}\n\`\`\``;
}
