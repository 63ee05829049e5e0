/** Steel below which a slab counts as plain concrete. */
import { aci318of19 } from './documents.ts';
import { figure } from './figure.ts';

/** Share of the gross area: mesh, fibers, dowels and light bars of ground slabs stay under it. */
export const minimumSteelRatio = figure(0.0018, aci318of19('Table 19.3.2.1, footnote on plain concrete'));
