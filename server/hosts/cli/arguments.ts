/** Options that several commands share, and how a wrong value is answered. */
import { type Command, Option } from 'commander';
import { climates, codeIds, stages } from '../../../rules/model/project.ts';
import { type Flags, nearest } from '../../settings.ts';
import { Refusal } from './status.ts';

export interface OutputOptions {
  readonly format: readonly string[];
  /** Undefined where neither `--color` nor `--no-color` is given. */
  readonly color?: boolean;
}

export interface ReadingOptions extends OutputOptions, Flags {
  readonly settings?: string;
  readonly name: string;
}

export const colourOf = ({ color }: OutputOptions): 'auto' | 'always' | 'never' => {
  if (color === undefined) return 'auto';
  return color ? 'always' : 'never';
};

/** The settings given on the command line. */
export function flagsOf({ code, climate, deicers, stage }: ReadingOptions): Flags {
  const given = Object.entries({ code, climate, deicers, stage }).filter(([, value]) => value !== undefined);
  return Object.fromEntries(given);
}

export const withOutput = (command: Command): Command =>
  command
    .addOption(
      new Option('--format <format>', 'text or json; json=out.json writes to a file; may be given several times')
        .argParser(collect)
        .default([], 'text'),
    )
    .addOption(new Option('--color', 'colour even where nobody looks at it').default(undefined))
    .addOption(new Option('--no-color', 'no colour; so does NO_COLOR'));

export const withReading = (command: Command): Command =>
  withOutput(command)
    .option('--settings <file>', 'project file, in place of the nearest firstwinter.jsonc')
    .addOption(choice('--code <code>', 'code that the work is held to', codeIds))
    .addOption(choice('--climate <climate>', 'does concrete freeze there', climates))
    .addOption(choice('--deicers <use>', 'are de-icing chemicals used', ['yes', 'no', 'unknown']))
    .addOption(choice('--stage <stage>', 'how far the text is', stages))
    .option('--name <file>', 'file name of standard input (path -)', 'standard-input.md');

/** An option with a closed list of values. */
export const choice = (flags: string, description: string, allowed: readonly string[]): Option =>
  new Option(flags, `${description}: ${allowed.join(', ')}`).argParser((value) => oneOf(flags, value, allowed));

function oneOf(flags: string, value: string, allowed: readonly string[]): string {
  if (allowed.includes(value)) return value;
  const meant = nearest(value, allowed);
  const hint = meant === undefined ? '' : `; did you mean ${meant}?`;
  throw new Refusal(`${flags.split(' ')[0]} cannot be "${value}"`, `write one of ${allowed.join(', ')}${hint}`);
}

const collect = (value: string, earlier: readonly string[]): readonly string[] => [...earlier, value];
