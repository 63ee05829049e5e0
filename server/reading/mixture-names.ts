/** Names of mixtures as a clause uses them. */
import type { Token } from './tokens.ts';

/** "Mixture 2", "Mix Class EX-1", "mix A". */
export function mixturesIn(tokens: readonly Token[], from: number, to: number): string[] {
  const names: string[] = [];
  for (let at = from; at < to - 1; at++) {
    if (!/^(?:mix|mixture|mixes|mixtures|mixtype)$/.test(tokens[at]?.text ?? '')) continue;
    let next = at + 1;
    while (/^(?:class|type|no|design|\.|designation|-|:)$/.test(tokens[next]?.text ?? '')) next++;
    const parts: string[] = [];
    for (; next < to && parts.length < 4; next++) {
      const token = tokens[next] as Token;
      if (0 < parts.length && token.spaced) break;
      if (
        token.kind === 'number' ||
        token.text === '-' ||
        (token.kind === 'word' && token.text.length <= 3 && token.capital)
      )
        parts.push(token.text);
      else break;
    }
    if (parts.some((part) => part !== '-')) names.push(parts.join(''));
  }
  return names;
}
