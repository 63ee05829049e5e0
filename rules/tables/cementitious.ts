/** What the binder may be: caps on supplementary materials under salts, cement in sulfates, evidence on aggregates. */
import type { ScmCap } from '../model/requirement.ts';
import { defineTable, type Row } from '../model/table.ts';
import { aci318of14, aci318of19, irc, practice } from './documents.ts';
import type { AciEdition } from './exposure.ts';
import { figure } from './figure.ts';

type Cap = Omit<ScmCap, 'origin'>;

/** Percent of all cementitious material by mass; what blended cement contains counts. */
const caps: readonly Cap[] = [
  { material: 'fly ash', max: 25 },
  { material: 'slag cement', max: 50 },
  { material: 'silica fume', max: 10 },
  { material: 'fly ash + silica fume', max: 35 },
  { material: 'all three', max: 50 },
];

/** Class F3. "Fly ash" stands for every pozzolan of ASTM C618. */
export const scmCaps: Readonly<Record<AciEdition | 'irc', readonly Row<Cap>[]>> = {
  'aci-318-19': defineTable({ origin: aci318of19('26.4.2.2(b), Table 26.4.2.2(b)'), rows: caps }),
  'aci-318-14': defineTable({ origin: aci318of14('26.4.2.2(b), Table 26.4.2.2(b)'), rows: caps }),
  irc: defineTable({ origin: irc('R402.2'), rows: caps }),
};

export interface BinderRule {
  readonly class: string;
  readonly text: string;
  readonly calciumChloride: 'banned' | 'not addressed';
}

const sulfateBinders: readonly BinderRule[] = [
  {
    class: 'S1',
    text: 'cement ASTM C150 Type II, C595 with (MS), or C1157 Type MS',
    calciumChloride: 'not addressed',
  },
  {
    class: 'S2',
    text: 'cement ASTM C150 Type V, C595 with (HS), or C1157 Type HS; no calcium chloride',
    calciumChloride: 'banned',
  },
  {
    class: 'S3',
    text: 'cement ASTM C150 Type V, C595 with (HS), or C1157 Type HS, with pozzolan or slag; no calcium chloride',
    calciumChloride: 'banned',
  },
];

export const binderRules: Readonly<Record<AciEdition, readonly Row<BinderRule>[]>> = {
  'aci-318-19': defineTable({ origin: aci318of19('Table 19.3.2.1'), rows: sulfateBinders }),
  'aci-318-14': defineTable({ origin: aci318of14('Table 19.3.2.1', 'from memory'), rows: sulfateBinders }),
};

/** The second way to meet S3 in the 2019 edition: lower w/cm, and a cement tested to the tighter expansion limit. */
export const sulfateWithoutPozzolan = figure(
  'cement ASTM C150 Type V, C595 with (HS), or C1157 Type HS, to the tighter expansion limit; no calcium chloride',
  aci318of19('Table 19.3.2.1'),
);

/** Classes W1 and W2 of the 2019 edition. */
export const reactivityEvidence = figure(
  'evidence that alkalis and the aggregates do not react harmfully',
  aci318of19('26.4.2.2(d)'),
);

/** Percent above which a mixture is slow to set and gain strength in the cool half of the year. */
export const slowMixture = figure({ flyAsh: 20, slag: 35 }, practice('slow mixtures late in the season'));
