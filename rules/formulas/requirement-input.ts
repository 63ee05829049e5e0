/** What a requirement is computed from, and which document speaks first for it. */
import type { CodeId, YesNo } from '../model/project.ts';
import type { Quantity } from '../model/quantity.ts';
import type { AciEdition } from '../tables/exposure.ts';
import type { Situation } from './aci-limits.ts';
import type { Lie } from './residential-limits.ts';

/** Codes that this version computes; the others are known by name only. */
export const computedCodes = ['aci-318-19', 'aci-318-14', 'ibc', 'irc'] as const satisfies readonly CodeId[];
export type ComputedCode = (typeof computedCodes)[number];
export const isComputed = (code: CodeId): code is ComputedCode => (computedCodes as readonly CodeId[]).includes(code);

/** What an element is taken for where only a code is given: ACI 318 is for structures, the others for ground slabs. */
export const structuralUnder: Readonly<Record<ComputedCode, YesNo>> = {
  'aci-318-19': 'yes',
  'aci-318-14': 'yes',
  ibc: 'no',
  irc: 'no',
};

export interface RequirementInput {
  readonly code: CodeId;
  readonly classes: readonly string[];
  /** Unknown is judged as not structural, with the structural limits as an alternative. */
  readonly structural: YesNo;
  /** Yes: with at least the minimum steel. Unknown is judged as plain, with the reinforced pair as an alternative. */
  readonly reinforced: YesNo;
  readonly prestressed: 'yes' | 'no';
  /** Yes: the project's own text states the classes, or cites ACI 318 or 301 as a requirement for them. */
  readonly declared?: 'yes' | 'no';
  /** Nominal maximum size. */
  readonly aggregate?: Quantity<'length'>;
  /** Specified f'c; it decides whether the air may be reduced. */
  readonly strength?: Quantity<'stress'>;
  readonly finish?: 'hard-trowelled interior floor';
  /** Flat unless said otherwise. */
  readonly lie?: Lie;
}

/** ACI 318 speaks first for the structure, IBC 1904.2 on ground, the IRC for a residence. */
export type Scope = 'structure' | 'ground' | 'residence';

export function scopeOf({ code, structural }: RequirementInput): Scope {
  if (code === 'irc') return 'residence';
  return structural === 'yes' ? 'structure' : 'ground';
}

/** The building codes adopt ACI 318; its 2019 edition serves them here. */
const editionOf = (code: CodeId): AciEdition => (code === 'aci-318-14' ? code : 'aci-318-19');

export function situationOf(input: RequirementInput): Situation {
  const { code, classes, reinforced, prestressed, aggregate, strength } = input;
  return { edition: editionOf(code), classes, reinforced, prestressed, aggregate, strength };
}
