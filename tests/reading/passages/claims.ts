/** One form for what was expected and what was read, so that the two can be held side by side. */
import type { Force } from '../../../rules/model/clause.ts';
import { type Act, type Fact, type FactKind, isAct, isValue } from '../../../rules/model/fact.ts';
import type { Measure } from '../../../rules/model/measure.ts';
import type { Expected, Value } from './passage.ts';

export interface Claim {
  readonly kind: FactKind;
  readonly forces?: readonly Force[];
  readonly value?: Value;
  /** Slots of an act, one operation of a finish, or a name. */
  readonly slots: Readonly<Record<string, string | number | undefined>>;
  readonly subject?: readonly string[];
  readonly exterior?: string;
  readonly addressee?: string;
  /** The statement it came from: operations of one finish share it. */
  readonly from: Expected | Fact;
}

/** Which of several statements a finish stands in is a matter of style: each operation is a claim of its own. */
export const claimsExpected = (facts: readonly Expected[]): readonly Claim[] =>
  facts.flatMap((fact) => {
    const forces = fact.force === undefined ? undefined : [fact.force].flat();
    const { kind, subject, exterior, addressee } = fact;
    const claim = { kind, forces, subject, exterior, addressee, from: fact };
    if ('value' in fact) {
      return [{ ...claim, value: fact.value, slots: { of: fact.of, age: fact.age } }];
    }
    if ('act' in fact && fact.act) return perStep(claim, fact.act, fact.of);
    return [{ ...claim, slots: { name: 'name' in fact ? fact.name : undefined, of: fact.of } }];
  });

export const claimsRead = (facts: readonly Fact[]): readonly Claim[] =>
  [...facts]
    .sort((a, b) => a.spans[0].start - b.spans[0].start)
    .flatMap((fact) => {
      const { elements, exterior } = fact.subject;
      const subject = elements.map(({ name }) => name);
      const claim = { kind: fact.kind, forces: [fact.force], subject, exterior, addressee: fact.addressee, from: fact };
      if (isValue(fact)) return [{ ...claim, value: numbersOf(fact.value), slots: { of: fact.of, age: fact.age } }];
      if (isAct(fact)) return perStep(claim, fact.act, undefined);
      return [{ ...claim, slots: { name: fact.value, of: fact.of } }];
    });

/** How a claim reads in a list of misses: numbers and slots, force, subject. */
export function show(claim: Claim): string {
  const about = claim.subject?.length ? ` (${claim.subject.join(', ')})` : '';
  const where = claim.exterior && claim.exterior !== 'unknown' ? ` exterior ${claim.exterior}` : '';
  return `${claim.forces?.join('/') ?? ''} ${claim.kind} ${content(claim)}${about}${where}`.trim();
}

/** Numbers and slots alone. */
export function content({ value, slots }: Claim): string {
  const numbers = value ? Object.entries(value) : [];
  return [...numbers, ...Object.entries(slots)]
    .filter(([, each]) => each !== undefined)
    .map(([slot, each]) => (slot === 'unit' ? String(each) : `${slot} ${each}`))
    .join(' ');
}

/** "No finishing while the water stands" and "wait until it has gone" are one order. */
function perStep(claim: Omit<Claim, 'slots'>, { steps, ...slots }: Partial<Act>, of: string | undefined): Claim[] {
  if (claim.kind === 'finish' && steps?.length) return steps.map((step) => ({ ...claim, slots: { step, of } }));
  if (claim.kind === 'bleed-water' && slots.verb === 'finish over' && claim.forces?.includes('ban')) {
    return [{ ...claim, forces: ['require'], slots: { ...slots, verb: 'wait' } }];
  }
  return [{ ...claim, slots: { ...slots, of } }];
}

const numbersOf = ({ min, max, target, plus, minus, unit }: Measure): Value => ({
  min,
  max,
  target,
  plus,
  minus,
  unit,
});
