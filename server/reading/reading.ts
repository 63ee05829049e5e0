/** What reading one file gives: its outline, its articles, its facts, and what was not understood. */
import type { Fact } from '../../rules/model/fact.ts';
import type { Source } from '../../rules/model/source.ts';
import type { Article, NewArticle, Region, Unread } from '../../rules/model/specification.ts';
import type { MentionRead } from './mentions.ts';

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

/** An element or mixture named in requirement text, with the place where it stands. */
export interface NamedThere {
  readonly elements: readonly MentionRead[];
  readonly mixtures: readonly string[];
  readonly exterior: 'yes' | 'no' | 'unknown';
  readonly place: string;
  readonly start: number;
  readonly end: number;
}

/** One file as read. */
export interface Reading {
  readonly source: Source;
  readonly section?: string;
  readonly title?: string;
  readonly outline: readonly OutlineItem[];
  readonly articles: readonly Article[];
  /** Where a new article would go, by part. */
  readonly newArticles: Readonly<Record<number, NewArticle>>;
  /** Lifted to offsets of the file. */
  readonly facts: readonly Fact[];
  readonly named: readonly NamedThere[];
  readonly unread: readonly Unread[];
  readonly clauses: number;
  /** Orders that speak to the designer. */
  readonly toDesigner: number;
  /** Lines of running heads and feet that were left out. */
  readonly furniture: number;
  /** Signs that this is a concrete specification section; two or more and it is read. */
  readonly signs: readonly string[];
}
