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
  '1.1.1',
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

export class Numbering {
  /** The ordinal last seen of each kind that is still open. */
  readonly last = new Map<LabelKind, number>();
  readonly #article: string;
  readonly #seen = new Map<string, number>();
  #levels: Level[] = [];
  #plain = 0;
  #rows = 0;

  constructor(article: string) {
    this.#article = article;
  }

  /** Place, parent and depth of a paragraph that opens with `label`. */
  open(label: Label, indent: number, afterColon: () => boolean): { place: string; parent?: Block; level: number } {
    this.#levels = this.#levels.slice(0, this.#depthFor(label, indent, afterColon));
    const parent = this.#levels.at(-1)?.block;
    this.#levels.push({ kind: label.kind, name: label.name, ordinal: label.ordinal, indent });
    this.last.clear();
    for (const { kind, ordinal } of this.#levels) this.last.set(kind, ordinal);
    const place = label.kind === '1.1.1' ? label.name : this.#place();
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
    if (label.kind === '.1') return this.#pointDepth(label);
    const known = this.#levels.findIndex(({ kind }) => kind === label.kind);
    if (0 <= known) return known;
    const withoutBullets = this.#levels.filter(({ kind }) => kind !== 'bullet');
    if (label.ordinal <= 1 && (afterColon() || withoutBullets.every(({ kind }) => rank(kind) < rank(label.kind))))
      return withoutBullets.length;
    const outer = withoutBullets.findIndex(({ kind }) => rank(label.kind) < rank(kind));
    return outer < 0 ? withoutBullets.length : label.ordinal <= 1 ? withoutBullets.length : outer;
  }

  #bulletDepth(indent: number): number {
    const deeper = this.#levels.findIndex((level) => level.kind === 'bullet' && indent <= level.indent);
    return deeper < 0 ? this.#levels.length : deeper;
  }

  /** Canadian `.1` labels look alike at every depth: the number that would come next tells which list goes on. */
  #pointDepth({ ordinal }: Label): number {
    for (let at = this.#levels.length - 1; 0 <= at; at--) {
      const level = this.#levels[at] as Level;
      if (level.kind === '.1' && level.ordinal + 1 === ordinal) return at;
    }
    return this.#levels.length;
  }

  #place(): string {
    const names = this.#levels
      .filter(({ kind }) => kind !== 'bullet')
      .map(({ name, kind }) => (kind === '.1' ? name : name));
    return [this.#article, ...names].filter((name) => name !== '').join('.');
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

/** How far behind a first label its second is looked for. */
const reach = 4000;

const secondOf = (kind: LabelKind): RegExp | undefined => seconds[kind];
