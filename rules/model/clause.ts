/** What a statement does, to whom it speaks, and under which condition. */
import type { Span } from './source.ts';

/** `require` also covers limits; `state` describes or defines; `ban` forbids; `waive` releases from a duty. */
export type Force = 'require' | 'permit' | 'recommend' | 'ban' | 'waive' | 'state';

/** An owner's design standard speaks to the designer; then missing values are not faults of the section. */
export type Addressee = 'contractor' | 'designer' | 'owner' | 'supplier' | 'tester';

/** Words with their place. */
export interface Quoted {
  readonly words: string;
  readonly span: Span;
}

/** `open` exceptions name need, weather, schedule or the finisher; bounded ones a group, the engineer or a protection. */
export interface Exception extends Quoted {
  readonly open: boolean;
}

/** Members of one "one of the following" list share this id. */
export type AlternativeId = string;
