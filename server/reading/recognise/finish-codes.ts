/** Finish codes and their legend, as a schedule writes them: "T-1 = steel trowel", then "T-1" in a row. */
import type { FinishStep } from '../../../rules/model/acts.ts';
import type { ActFact } from '../../../rules/model/fact.ts';
import { Phrases } from '../phrases.ts';
import { type Statement, said } from '../statement.ts';
import { finishWords } from '../words/finishes.ts';

const operations = new Phrases(finishWords);

/** "T-1", "Finish B" in a schedule; the legend "T-1 = steel trowel" resolves it when the manual is assembled. */
export function finishCodes(statement: Statement): ActFact[] {
  const { tokens, predication, block } = statement;
  const facts: ActFact[] = [];
  for (let at = predication.from; at < predication.to; at++) {
    const code = codeAt(tokens, at);
    if (!code) continue;
    const behind = tokens[code.to]?.text ?? '';
    const isLegend =
      behind === '=' ||
      (behind === ':' && /^finish$/.test(tokens[at - 1]?.text ?? '')) ||
      (behind === '-' && /legend|finish/.test(statement.heading));
    const isUse =
      /finish/.test(`${statement.header}`) ||
      (block.kind === 'row' && predication.to - predication.from <= 4 && /-/.test(code.name));
    if (!isLegend && !isUse) continue;
    facts.push({
      kind: 'finish',
      ...said(statement, { from: at, to: code.to }),
      act: {
        verb: 'finish',
        manner: `${isLegend ? 'legend' : 'code'} ${code.name}`,
        steps: isLegend ? legendSteps(statement, code.to) : [],
      },
    });
  }
  return facts;
}

function legendSteps(statement: Statement, from: number): FinishStep[] {
  return operations
    .in(statement.tokens, from, statement.sentence.to)
    .flatMap(({ meaning }) => (meaning === 'none' ? [] : [meaning]));
}

function codeAt(tokens: Statement['tokens'], at: number): { readonly name: string; readonly to: number } | undefined {
  const token = tokens[at];
  if (token?.kind !== 'word' || !token.capital || 3 < token.text.length || (tokens[at - 1] && !token.spaced))
    return undefined;
  const [dash, number] = [tokens[at + 1], tokens[at + 2]];
  if (dash?.text === '-' && !dash.spaced && number?.kind === 'number' && !number.spaced)
    return { name: `${token.text}-${number.text}`.toUpperCase(), to: at + 3 };
  if (dash?.kind === 'number' && !dash.spaced) return { name: `${token.text}-${dash.text}`.toUpperCase(), to: at + 2 };
  return token.text.length === 1 ? { name: token.text.toUpperCase(), to: at + 1 } : undefined;
}
