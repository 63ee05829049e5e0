/** Running heads and feet that a conversion left between the lines: they cut sentences, and are no wording. */

/** Which of the lines are furniture, by index: what repeats at least three times with a mark of a page, and page numbers in a row. */
export function furnitureAmong(lines: readonly string[]): ReadonlySet<number> {
  const byKey = new Map<string, number[]>();
  lines.forEach((line, at) => {
    if (line.length < 4 || longest < line.length || !isRunningHead(line)) return;
    const key = furnitureKey(line);
    const found = byKey.get(key);
    if (found) found.push(at);
    else byKey.set(key, [at]);
  });
  const repeated = [...byKey.values()].filter((found) => fewest <= found.length).flat();
  return new Set([...repeated, ...pageNumbers(lines)]);
}

/** Section number of the running heads, where they carry one. */
export function sectionIn(heads: readonly string[]): string | undefined {
  const counts = new Map<string, number>();
  for (const head of heads) {
    const number = head.match(/\b\d{2} \d{2} \d{2}\b/g)?.at(-1);
    if (number) counts.set(number, (counts.get(number) ?? 0) + 1);
  }
  return [...counts].sort((a, b) => b[1] - a[1])[0]?.[0];
}

const fewest = 3;
const longest = 120;

const marks =
  /\b\d{2} ?\d{2} ?\d{2}\b|\b(?:january|february|march|april|may|june|july|august|september|october|november|december)\b.*\b\d{4}\b|\b\d{1,2}[/.-]\d{1,2}[/.-]\d{2,4}\b|\bpage\s+\d|\b\d{5}\s?-\s?\d{1,3}$/i;
const verbs = /\b(?:shall|must|will|may|should|do not|is|are|be|provide|comply)\b/i;
const quantities = /\d\s*(?:%|°|percent|psi|MPa|mm|inch|in\.|ft|feet|hours?|days?|lb|kg)\b/i;

const isRunningHead = (text: string): boolean =>
  marks.test(text) && !verbs.test(text.replace(/\bmay\b(?=.*\d{4})/i, '')) && !quantities.test(text);

/** Page numbers differ from page to page. */
const furnitureKey = (text: string): string =>
  text.replace(/\b(page\s+)?\d{1,3}(\s+of\s+\d{1,3})?$/i, '#').replace(/\s+/g, ' ');

/** Lines of a number alone, each one more than the last, are page numbers; a column of values does not count up. */
function pageNumbers(lines: readonly string[]): readonly number[] {
  const alone = lines.flatMap((line, at) => {
    const number = /^(?:[-–—]\s*)?(\d{1,3})(?:\s*[-–—])?$/.exec(line)?.[1];
    return number === undefined ? [] : [{ at, number: Number(number) }];
  });
  const counts = alone.every(({ number }, at) => at === 0 || number === (alone[at - 1]?.number ?? 0) + 1);
  return fewest <= alone.length && counts ? alone.map(({ at }) => at) : [];
}
