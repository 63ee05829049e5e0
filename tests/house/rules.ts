/** What a rule file may hold. */
import { families } from '../../rules/model/rule.ts';
import { nodesOf, type Parsed, placeOf, SyntaxKind, wordsOf } from './parsing.ts';

const ruleFile = new RegExp(`^rules/(${families.join('|')})/([a-z-]+)\\.ts$`);

/** "air/air-content-low" for a rule file: its family and its id. */
export function rulesIn(files: readonly Parsed[]): readonly string[] {
  return files.flatMap(({ path }) => ruleFile.exec(path)?.slice(1).join('/') ?? []);
}

/** Numbers belong into the tables, where each has its source; words and examples may quote them. */
export function bareNumbers(file: Parsed): readonly string[] {
  if (!ruleFile.test(file.path)) return [];
  const numbers = nodesOf(file, SyntaxKind.NumericLiteral, SyntaxKind.BigIntLiteral);
  const bare = numbers.filter((node) => !['0', '1'].includes(wordsOf(file, node)));
  return bare.map((node) => `${placeOf(file, node)}: ${wordsOf(file, node)}`);
}
