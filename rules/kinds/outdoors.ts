/** Levels of practices that harm every slab, and outdoor slabs most. */
import type { Severity } from '../model/project.ts';
import type { View } from './view.ts';

/** The card's own level where one of the elements may be outdoors; indoors the floor dusts or blisters, but nothing scales. */
export const milderIndoors = (_: unknown, views: readonly View[]): Severity | undefined =>
  views.every(({ isInterior }) => isInterior) ? 'should' : undefined;
