/** `rules` lists the rules; `explain RULE` gives one rule's page. */
import type { Command } from 'commander';
import { rules } from '../../../rules/index.ts';
import { explainJson, explainText } from '../../render/explain.ts';
import { rulesJson, rulesText } from '../../render/rules.ts';
import { nearest } from '../../settings.ts';
import { colourOf, type OutputOptions, withOutput } from './arguments.ts';
import { deliver, parseOutputs } from './output.ts';
import { Refusal } from './status.ts';

export function addRules(program: Command): void {
  withOutput(program.command('rules'))
    .description('list the rules with their level')
    .action(async (options: OutputOptions) => {
      const renderers = { text: rulesText.bind(undefined, rules), json: () => rulesJson(rules) };
      await deliver(parseOutputs(options.format), renderers, colourOf(options));
    });
}

export function addExplain(program: Command): void {
  withOutput(program.command('explain'))
    .description('give the ground of one rule: why, on whose word, the clause to write, examples')
    .argument('<rule>', 'id of the rule, as at the end of a finding')
    .action(async (id: string, options: OutputOptions) => {
      const rule = findRule(id);
      const renderers = { text: explainText.bind(undefined, rule), json: () => explainJson(rule) };
      await deliver(parseOutputs(options.format), renderers, colourOf(options));
    });
}

function findRule(id: string): (typeof rules)[number] {
  const rule = rules.find((known) => known.id === id);
  if (rule !== undefined) return rule;
  const meant = nearest(
    id,
    rules.map((known) => known.id),
  );
  const cure = meant === undefined ? '"firstwinter rules" lists them' : `did you mean ${meant}?`;
  throw new Refusal(`there is no rule "${id}"`, cure);
}
