/** "Did you mean": the known word that a mistyped one most resembles. */

/** The candidate nearest to `word`, or undefined where none is near enough to be meant. */
export function nearest(word: string, candidates: Iterable<string>): string | undefined {
  const typed = word.toLowerCase();
  let best: string | undefined;
  let least = allowance(typed) + 1;
  for (const candidate of candidates) {
    const distance = strokes(typed, candidate.toLowerCase());
    if (distance < least) [best, least] = [candidate, distance];
  }
  return best;
}

/** How many strokes may be wrong before it is another word. */
const allowance = (word: string): number => Math.max(1, Math.floor(word.length / 3));

/** Letters to insert, drop, change or swap with their neighbour to make `b` of `a`. */
function strokes(a: string, b: string): number {
  let before: number[] = [];
  let above = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = above[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      let least = Math.min(change, above[j]! + 1, row[j - 1]! + 1);
      const swapped = 1 < i && 1 < j && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      if (swapped) least = Math.min(least, before[j - 2]! + 1);
      row.push(least);
    }
    [before, above] = [above, row];
  }
  return above[b.length]!;
}
