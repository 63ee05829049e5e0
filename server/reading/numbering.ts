/** The stack of paragraph labels inside one article: which paragraph holds which, and how it is cited. */
import { type Label, type LabelKind, labelAt } from './labels.ts';
import type { Block } from './outline.ts';

interface Level {
  readonly kind: LabelKind;
  readonly name: string;
  readonly ordinal: number;
  readonly indent: number;
  block?: Block;
}

/** Outer to inner, as most sections nest; what a document does differently wins. */
const usual: readonly LabelKind[] = [
  '1.1',
  'I.',
  'A.',
  '1.',
  'a.',
  'i.',
  '1)',
  'A)',
  'a)',
  'i)',
  '(A)',
  '(1)',
  '(a)',
  '(i)',
  '.1',
  'bullet',
];
const rank = (kind: LabelKind): number => usual.indexOf(kind);

/** More levels than any section has; a garbled text must not nest without end. */
const deepest = 8;

export class Numbering {
  /** The ordinal last seen of each kind that is still open. */
  readonly last = new Map<LabelKind, number>();
  readonly #article: string;
  /** Places of the whole document, and how often each has occurred. */
  readonly #seen: Map<string, number>;
  #levels: Level[] = [];
  #plain = 0;
  #rows = 0;

  constructor(article: string, seen: Map<string, number>) {
    this.#article = article;
    this.#seen = seen;
  }

  /** Place, parent and depth of a paragraph that opens with `label`. */
  open(label: Label, indent: number, afterColon: () => boolean): { place: string; parent?: Block; level: number } {
    this.#levels = this.#levels.slice(0, Math.min(this.#depthFor(label, indent, afterColon), deepest - 1));
    const parent = this.#levels.at(-1)?.block;
    this.#levels.push({ kind: label.kind, name: label.name, ordinal: label.ordinal, indent });
    this.last.clear();
    for (const { kind, ordinal } of this.#levels) this.last.set(kind, ordinal);
    const place = this.#place();
    return { place: label.kind === 'bullet' ? place : this.#distinct(place), parent, level: this.#levels.length };
  }

  /** The block that the last opened label stands before. */
  hold(block: Block): void {
    const level = this.#levels.at(-1);
    if (level) level.block = block;
  }

  /** Text without a label: it belongs to the paragraph before it, or is counted where the article has no labels. */
  plain(): { place: string; level: number } {
    const labelled = this.#levels.some(({ kind }) => kind !== 'bullet');
    if (labelled) return { place: this.#place(), level: this.#levels.length };
    this.#plain++;
    return { place: this.#article ? this.#article : `paragraph ${this.#plain}`, level: 0 };
  }

  /** "2.04.A row 2": rows of a table are counted without its head. */
  row(first: 'first' | 'next'): string {
    this.#rows = first === 'first' ? 1 : this.#rows + 1;
    return `${this.#place() || 'table'} row ${this.#rows}`;
  }

  /** The next label inside running text that continues a sequence, or opens one that goes on. */
  inside(text: string): { readonly at: number; readonly label: Label } | undefined {
    candidate.lastIndex = 0;
    for (let match = candidate.exec(text); match; match = candidate.exec(text)) {
      const at = match.index + (match[1] as string).length;
      const label = labelAt(text.slice(at, at + 12), this.last);
      if (label && label.kind !== 'bullet' && this.#fits(label, (match[1] as string).trim(), text.slice(at)))
        return { at, label };
      candidate.lastIndex = at + 1;
    }
    return undefined;
  }

  #fits(label: Label, before: string, rest: string): boolean {
    const last = this.last.get(label.kind);
    if (last !== undefined && label.ordinal === last + 1) return before !== '' || label.kind !== '1.';
    if (label.ordinal !== 1 || last !== undefined || before === ',') return false;
    return secondOf(label.kind)?.test(rest.slice(0, reach)) ?? false;
  }

  #depthFor(label: Label, indent: number, afterColon: () => boolean): number {
    if (label.kind === 'bullet') return this.#bulletDepth(indent);
    if (label.kind === '1.1') return this.#decimalDepth(label);
    if (this.#levels.some(({ kind }) => kind === label.kind)) return this.#knownDepth(label, indent, afterColon);
    const withoutBullets = this.#levels.filter(({ kind }) => kind !== 'bullet');
    const outer = withoutBullets.findIndex(({ kind }) => rank(label.kind) < rank(kind));
    return outer < 0 || label.ordinal <= 1 ? withoutBullets.length : outer;
  }

  #bulletDepth(indent: number): number {
    const deeper = this.#levels.findIndex((level) => level.kind === 'bullet' && indent <= level.indent);
    return deeper < 0 ? this.#levels.length : deeper;
  }

  /** "4.3.2.1" stands under "4.3.2", whatever came between. */
  #decimalDepth({ name }: Label): number {
    const beside = this.#levels.findIndex((level) => level.kind === '1.1' && !name.startsWith(`${level.name}.`));
    return 0 <= beside ? beside : this.#levels.findLastIndex(({ kind }) => kind === '1.1') + 1;
  }

  /**
   * Canadian `.1` labels look alike at every depth, and others may come back deeper: the number that would come next tells
   * which list goes on, the indent decides between two.
   */
  #knownDepth({ kind, ordinal }: Label, indent: number, afterColon: () => boolean): number {
    const same = [...this.#levels.keys()].filter((at) => this.#levels[at]?.kind === kind).reverse();
    const goesOn = same.filter((at) => this.#levels[at]?.ordinal === ordinal - 1);
    const next = goesOn.find((at) => this.#levels[at]?.indent === indent) ?? goesOn[0];
    if (next !== undefined) return next;
    const last = this.#levels.at(-1) as Level;
    if (ordinal === 1 && (kind === '.1' || last.indent < indent || (last.kind === kind && afterColon())))
      return this.#levels.length;
    const after = same.find((at) => (this.#levels[at]?.ordinal as number) < ordinal);
    return after ?? (same[0] as number);
  }

  /** Numbers that are cited whole begin anew: "4.3.2.1", not "4.3.4.3.2.1"; "(a)" joins without a point. */
  #place(): string {
    const whole = this.#levels.findLastIndex(({ kind }) => kind === '1.1');
    const names = this.#levels.slice(whole + 1).map(({ name }) => name);
    const base = this.#levels[whole]?.name ?? this.#article;
    return names.reduce(
      (place, name) => (name === '' || place === '' || name.startsWith('(') ? place + name : `${place}.${name}`),
      base,
    );
  }

  /** A label that occurs twice prints as "1.01.B (2nd)". */
  #distinct(place: string): string {
    const count = (this.#seen.get(place) ?? 0) + 1;
    this.#seen.set(place, count);
    return count === 1 ? place : `${place} (${count}${count === 2 ? 'nd' : count === 3 ? 'rd' : 'th'})`;
  }
}

/** Punctuation or a wide gap, then something that looks like a label before a capital. Blanks are counted, so that time stays linear. */
const candidate = /([.:;,)] {1,4}|[.:;,)]\s|\s{2})(?=\(?(?:[A-Z]|[a-z]{1,4}|\d{1,2})[.)] {1,4}[A-Z"'])/g;

const seconds: Readonly<Partial<Record<LabelKind, RegExp>>> = {
  'A.': /[.:;]\s{1,4}B\. {1,4}[A-Z]/,
  '1.': /[.:;]\s{1,4}2\. {1,4}[A-Z]/,
  'a.': /[.:;,]\s{1,4}b\. /,
  'i.': /[.:;,]\s{1,4}ii\. /,
  '1)': /[.:;,]\s{1,4}2\) /,
  'a)': /[.:;,]\s{1,4}b\) /,
  '(1)': /[.:;,]\s{1,4}\(2\) /,
  '(a)': /[.:;,]\s{1,4}\(b\) /,
};

/** Could one of these words be a label? Quickly said, and never wrongly denied. */
export function mayHoldLabel(text: string): boolean {
  candidate.lastIndex = 0;
  return candidate.test(text);
}

/** How far behind a first label its second is looked for. */
export const reach = 2000;

const secondOf = (kind: LabelKind): RegExp | undefined => seconds[kind];
