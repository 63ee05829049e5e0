/** `require`: what the code asks of an exposure, without a document. */
import type { Command } from 'commander';
import { computeRequirement } from '../../../rules/formulas/requirement.ts';
import { type ComputedCode, computedCodes, structuralUnder } from '../../../rules/formulas/requirement-input.ts';
import { codeIds, type YesNo } from '../../../rules/model/project.ts';
import type { Quantity } from '../../../rules/model/quantity.ts';
import { exposureClasses } from '../../../rules/tables/exposure.ts';
import { residentialStrengths } from '../../../rules/tables/residential.ts';
import { requirementJson, requirementText } from '../../render/requirement.ts';
import { codeNames } from '../../render/words.ts';
import { nearest, parseAggregate, parseAmount } from '../../settings.ts';
import { choice, colourOf, type OutputOptions, withOutput } from './arguments.ts';
import { deliver, parseOutputs } from './output.ts';
import { Refusal } from './status.ts';

interface RequireOptions extends OutputOptions {
  readonly code: string;
  readonly exposure: string;
  readonly aggregate?: string;
  readonly strength?: string;
  readonly reinforced?: boolean;
  readonly plain?: boolean;
  readonly prestressed?: boolean;
}

export function addRequire(program: Command): void {
  withOutput(program.command('require'))
    .description('compute what the code asks of an exposure, without a document')
    .addOption(choice('--code <code>', 'code that the work is held to', codeIds).default('aci-318-19'))
    .requiredOption('--exposure <classes>', 'exposure classes, as F3,C2')
    .option('--aggregate <size>', 'nominal maximum size, as "3/4 in", "19 mm" or "57"')
    .option('--strength <stress>', 'specified strength, as "5000 psi" or "35 MPa"')
    .option('--reinforced', 'with structural reinforcement')
    .option('--plain', 'without, or with less than the minimum')
    .option('--prestressed', 'prestressed')
    .action(async (options: RequireOptions) => {
      const requirement = computeRequirement(inputOf(options));
      const renderers = {
        text: requirementText.bind(undefined, requirement),
        json: () => requirementJson(requirement),
      };
      await deliver(parseOutputs(options.format), renderers, colourOf(options));
    });
}

function inputOf(options: RequireOptions) {
  const code = computed(options.code);
  return {
    code,
    classes: classesOf(options.exposure, code),
    structural: structuralUnder[code],
    reinforced: steelOf(options),
    prestressed: options.prestressed ? 'yes' : 'no',
    aggregate: aggregateOf(options.aggregate),
    strength: strengthOf(options.strength),
  } as const;
}

function computed(code: string): ComputedCode {
  const known = computedCodes.find((each) => each === code);
  if (known) return known;
  const name = codeNames[code as keyof typeof codeNames];
  throw new Refusal(`this version does not compute ${name}`, `codes it computes: ${computedCodes.join(', ')}`);
}

function classesOf(text: string, code: ComputedCode): readonly string[] {
  const valid = validClasses(code);
  const words = text.split(/[\s,;]+/).filter(Boolean);
  if (words.length === 0) throw new Refusal('--exposure names no class', `classes: ${valid.join(', ')}`);
  return words.map((word) => {
    const known = valid.find((name) => name.toLowerCase() === word.toLowerCase());
    if (known) return known;
    const meant = nearest(word, valid);
    const hint = meant === undefined ? '' : `; did you mean ${meant}?`;
    throw new Refusal(`"${word}" is no exposure class of ${codeNames[code]}`, `classes: ${valid.join(', ')}${hint}`);
  });
}

/** The building codes take the classes of ACI 318-19; the residential code has words for the weathering besides. */
function validClasses(code: ComputedCode): readonly string[] {
  const classes = exposureClasses[code === 'aci-318-14' ? code : 'aci-318-19'].map(({ name }) => name);
  const weathering = residentialStrengths.map((row) => row.weathering);
  return code === 'irc' ? [...classes, ...weathering] : classes;
}

function steelOf({ reinforced, plain, prestressed }: RequireOptions): YesNo {
  if (plain && (reinforced || prestressed)) {
    throw new Refusal('--plain contradicts --reinforced and --prestressed', 'give one of them');
  }
  if (plain) return 'no';
  return reinforced ? 'yes' : 'unknown';
}

function aggregateOf(text: string | undefined): Quantity<'length'> | undefined {
  if (text === undefined) return undefined;
  const size = parseAggregate(text);
  if (size && 0 < size.amount) return size;
  throw new Refusal(`--aggregate cannot be "${text}"`, 'write a size with its unit, "3/4 in" or "19 mm", or "57"');
}

function strengthOf(text: string | undefined): Quantity<'stress'> | undefined {
  if (text === undefined) return undefined;
  const strength = parseAmount(text, 'stress');
  if (strength && 0 < strength.amount) return strength;
  throw new Refusal(`--strength cannot be "${text}"`, 'write a strength with its unit, "5000 psi" or "35 MPa"');
}
