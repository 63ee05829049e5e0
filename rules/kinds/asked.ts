/** What is asked of an element, layer by layer, and how gravely a miss speaks. */
import type { Severity } from '../model/project.ts';
import type { Alternative, Limits } from '../model/requirement.ts';
import type { View } from './view.ts';

/** Law, the project's own word, and what a slab needs to last. */
export type Layer = 'lawful' | 'declared' | 'recommended';

export interface Asked<T> {
  readonly value: T;
  readonly by: Layer;
}

const layers: readonly Layer[] = ['lawful', 'declared', 'recommended'];

/** The same limit in every layer that sets it, the most binding layer first. */
export function asked<T>({ requirement }: View, pick: (limits: Limits) => T | undefined): readonly Asked<T>[] {
  return layers.flatMap((by) => {
    const limits = requirement?.[by];
    const value = limits && pick(limits);
    return value === undefined ? [] : [{ value, by }];
  });
}

/** The layers whose limit is missed, the strictest first. */
export function missed<T>(
  view: View,
  pick: (limits: Limits) => T | undefined,
  isMissed: (limit: T) => boolean,
  strictness: (limit: T) => number,
): readonly Asked<T>[] {
  return asked(view, pick)
    .filter(({ value }) => isMissed(value))
    .sort((a, b) => strictness(b.value) - strictness(a.value));
}

/**
 * Law and the project's own class bind; what holds only for a class that we computed is advice, and so is durability.
 * The residential table goes by weathering, so it binds without a class.
 */
export function severityOf(view: View, layersMissed: readonly { readonly by: Layer }[]): Severity {
  const isBinding = layersMissed.some(({ by }) => by !== 'recommended');
  return isBinding && (view.isDeclared || isByWeathering(view)) ? 'must' : 'should';
}

const isByWeathering = (view: View): boolean => view.project.code === 'irc' && !view.isDeclared;

/** The limit that a finding puts first: what binds if it is a must, else the strictest of all. */
export function headline<T>(view: View, layersMissed: readonly Asked<T>[]): Asked<T> | undefined {
  const binding = layersMissed.find(({ by }) => by !== 'recommended');
  return severityOf(view, layersMissed) === 'must' ? binding : layersMissed[0];
}

/** "Class F3" where the text says so, "F3 by its exposure" where we do. */
export function classOf(view: View): string {
  if (isByWeathering(view)) return 'residential table';
  if (view.freezeClass === undefined) return 'its exposure';
  return view.isDeclared ? `Class ${view.freezeClass}` : `${view.freezeClass} by its exposure`;
}

/** Why a miss is not graver, and what else would hold if the text said more. */
export function standing(view: View, layersMissed: readonly { readonly by: Layer }[]): string {
  const isAdvice = layersMissed.every(({ by }) => by === 'recommended');
  const sentences = [
    isAdvice && view.structural !== 'yes' && view.project.code.startsWith('aci')
      ? 'ACI 318 itself leaves ground slabs that carry no structure out, so this is advice unless your code or owner adopts it.'
      : undefined,
    view.isDeclared || isByWeathering(view)
      ? undefined
      : `No exposure class is stated; ${view.freezeClass ?? 'the class'} is what its exposure points to.`,
  ];
  return sentences.filter(Boolean).join(' ');
}

/** The question that is left open: what would be asked if the element were structural, or reinforced as such. */
export function question(view: View, say: (limits: Limits) => string | undefined): string | undefined {
  const lines = (view.requirement?.alternatives ?? []).flatMap((alternative) => lineFor(alternative, say));
  return lines.length > 0 ? lines.join(' ') : undefined;
}

function lineFor(
  { about, given, limits }: Alternative,
  say: (limits: Limits) => string | undefined,
): readonly string[] {
  const text = about === 'structural' || about === 'reinforced' ? say(limits) : undefined;
  return text === undefined ? [] : [`If it is ${given}: ${text}.`];
}
