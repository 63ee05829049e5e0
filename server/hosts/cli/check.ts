/** `check PATH…`: what in these sections will scale. */
import type { Command } from 'commander';
import { rules } from '../../../rules/index.ts';
import type { Severity } from '../../../rules/model/project.ts';
import { check } from '../../checking.ts';
import { checkJson } from '../../render/json.ts';
import type { CheckedManual, Manual } from '../../render/report.ts';
import { checkText } from '../../render/text.ts';
import { choice, colourOf, type ReadingOptions, withReading } from './arguments.ts';
import { deliver, keepInputs, parseOutputs } from './output.ts';
import { inputsOf, readRun } from './reading.ts';
import { type Status, status } from './status.ts';

const failLevels = ['must', 'should', 'note', 'never'] as const;

interface CheckOptions extends ReadingOptions {
  readonly failOn: (typeof failLevels)[number];
  readonly notes?: boolean;
  readonly working?: boolean;
}

export function addCheck(program: Command, end: (status: Status) => void): void {
  withReading(program.command('check'))
    .description('say what in these sections will scale, and what they should require')
    .argument('<path...>', 'section files and folders; - is standard input')
    .addOption(choice('--fail-on <level>', 'findings from this level on give status 1', failLevels).default('must'))
    .option('--notes', 'show every note; without it at most five a section')
    .option('--working', 'show how each value was reached')
    .action(async (paths: readonly string[], options: CheckOptions) => end(await runCheck(paths, options)));
}

async function runCheck(paths: readonly string[], options: CheckOptions): Promise<Status> {
  const outputs = parseOutputs(options.format);
  const read = await readRun(paths, options);
  keepInputs(outputs, inputsOf(read));
  const run = { ...read, manuals: read.manuals.map(checked) };
  const text = {
    notes: options.notes ? 'all' : 'folded',
    working: options.working ? 'shown' : 'folded',
  } as const;
  await deliver(outputs, { text: (page) => checkText(run, page, text), json: () => checkJson(run) }, colourOf(options));
  return statusOf(read.status, run.manuals, options.failOn);
}

const checked = (manual: Manual): CheckedManual => ({
  ...manual,
  checked: check(manual.specification, manual.settings.project, rules, manual.settings.levels),
});

const ranks: Readonly<Record<Severity, number>> = { note: 0, should: 1, must: 2 };

/** How a run ends: a rule that failed outweighs what was found, and so does what went wrong while reading. */
export function statusOf(
  reading: Status,
  manuals: readonly Pick<CheckedManual, 'checked'>[],
  failOn: CheckOptions['failOn'],
): Status {
  if (manuals.some(({ checked: { failures } }) => 0 < failures.length)) return status.failed;
  if (reading !== status.clean || failOn === 'never') return reading;
  const findings = manuals.flatMap(({ checked: { findings } }) => findings);
  return findings.some(({ severity }) => ranks[failOn] <= ranks[severity]) ? status.findings : status.clean;
}
