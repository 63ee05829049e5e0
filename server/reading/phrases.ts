/** Word sequences with a meaning: a trie over stems, longest run wins, so a trap is a longer run with a meaning of its own. */
import type { Token } from './tokens.ts';
import { tokensOf } from './tokens.ts';

export interface Found<M> {
  readonly meaning: M;
  /** Token indices, half-open. */
  readonly from: number;
  readonly to: number;
}

interface Node<M> {
  readonly next: Map<string, Node<M>>;
  meaning?: M;
}

export class Phrases<M> {
  readonly #root: Node<M> = { next: new Map() };

  /** `entries`: meaning and the ways of saying it, as plain words; hyphens do not matter. */
  constructor(entries: Iterable<readonly [M, readonly string[]]>) {
    for (const [meaning, ways] of entries) for (const way of ways) this.#add(meaning, way);
  }

  /** All runs, left to right, none overlapping. */
  in(tokens: readonly Token[], from = 0, to = tokens.length): Found<M>[] {
    const found: Found<M>[] = [];
    for (let at = from; at < to; ) {
      const hit = this.at(tokens, at, to);
      if (hit) found.push(hit);
      at = hit ? hit.to : at + 1;
    }
    return found;
  }

  /** The longest run that begins at token `at`. */
  at(tokens: readonly Token[], at: number, to = tokens.length): Found<M> | undefined {
    let node: Node<M> | undefined = this.#root;
    let best: Found<M> | undefined;
    for (let next = at; next < to && node; next++) {
      const token = tokens[next] as Token;
      if (token.text === '-' && at < next) continue;
      node = node.next.get(token.stem);
      if (node?.meaning !== undefined) best = { meaning: node.meaning, from: at, to: next + 1 };
    }
    return best;
  }

  #add(meaning: M, way: string): void {
    let node = this.#root;
    for (const token of tokensOf(way, 0, way.length)) {
      if (token.text === '-') continue;
      let next = node.next.get(token.stem);
      if (!next) {
        next = { next: new Map() };
        node.next.set(token.stem, next);
      }
      node = next;
    }
    node.meaning = meaning;
  }
}
