/** What reading one file gives: its outline and its facts, article by article. */
import type { Fact } from '../../rules/model/fact.ts';
import type { Source } from '../../rules/model/source.ts';
import type { Region, Unread } from '../../rules/model/specification.ts';

/** One line of the outline: a section, part, article or paragraph with the document's own number. Offsets into the text. */
export interface OutlineItem {
  readonly kind: 'section' | 'part' | 'article' | 'paragraph';
  /** "2.03.B.1": the number as a specifier would cite it; a duplicate prints as "1.01.B (2nd)". */
  readonly place: string;
  /** The label as it stands in the line, "B." */
  readonly label: string;
  readonly title: string;
  readonly level: number;
  readonly start: number;
  readonly end: number;
  readonly titleStart: number;
  readonly titleEnd: number;
  readonly region: Region;
  readonly children: readonly OutlineItem[];
}

/** One file as read. */
export interface Reading {
  readonly source: Source;
  readonly section?: string;
  readonly title?: string;
  readonly outline: readonly OutlineItem[];
  /** Lifted to offsets of the file. */
  readonly facts: readonly Fact[];
  readonly unread: readonly Unread[];
  readonly clauses: number;
  /** Signs that this is a concrete specification section; two or more and it is read. */
  readonly signs: readonly string[];
}
