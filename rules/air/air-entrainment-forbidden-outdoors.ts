/** Entrained air is ruled out for concrete that freezes: a floor clause that was copied outdoors. */
import { needsAir, saidForSize } from '../kinds/air.ts';
import { classOf } from '../kinds/asked.ts';
import { defineRule, fitted, quoted, surestFirst, unitless, whereSaid } from '../kinds/define.ts';
import { type View, viewsOf } from '../kinds/view.ts';
import type { ActFact, ValueFact } from '../model/fact.ts';
import { highest } from '../model/measure.ts';
import type { RuleFinding } from '../model/rule.ts';
import { floorAir } from '../tables/air.ts';
import { clauses } from '../tables/clauses.ts';

const clause = unitless('Limit the ban on air-entraining admixtures to interior floors that receive a trowel finish.');

export default defineRule({
  title: 'Entrained air is ruled out outdoors',
  severity: 'must',
  reason:
    'A clause for trowelled floors, copied outdoors, takes away the one thing that protects the surface from frost.',
  citations: clauses['air-ban'],
  clause,
  // Words that rule air out leave no number to ask for beside them.
  outranks: ['air-content-missing'],
  gate: 'freezing',
  check: function* (context) {
    const byFact = new Map<Ruling, View[]>();
    for (const view of surestFirst(viewsOf(context).filter(needsAir))) {
      for (const fact of rulings(view)) byFact.set(fact, [...(byFact.get(fact) ?? []), view]);
    }
    for (const [fact, views] of byFact) yield finding(fact, views);
  },

  examples: {
    flagged: {
      'a ban in a section of exterior walks': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Concrete for exterior walks: f'c 4500 psi (31 MPa). Do not use air-entraining admixtures.
                                                       ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ rules out entrained air for exterior walks
`,
      'no more air than a floor may have': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Entrance plaza slabs, exterior, shall have no more than 3 percent air.
                                              ^^^^^^^^^^^^^^^^^^^^^^^^^^ rules out entrained air
`,
      'non-air-entrained by name': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Concrete for the loading-dock apron: non-air-entrained.
   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ rules out entrained air
`,
    },
    clean: {
      'a legend rules nothing out': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Mixtures:

| Use | f'c, psi | Air |
| --- | --- | --- |
| Shelter walks, Exposure Class F3 | 4500 | 6 ± 1.5 % |
| Footings, Exposure Class F0 | 3000 | NAE |

B. NAE = non-air-entrained.
`,
      'the ban is for interior floors': `
SECTION 03 30 00 - CAST-IN-PLACE CONCRETE
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Exterior walks: total air 6 percent plus or minus 1.5 percent.
B. Do not use air-entraining admixtures in interior floors to be trowelled.
`,
      'a restriction of the material': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks are Exposure Class F3. Use no air-entraining admixture other than one conforming to ASTM C260.
`,
      'footings below frost': `
SECTION 03 30 00 - CAST-IN-PLACE CONCRETE
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Footings are Exposure Class F0: non-air-entrained concrete.
`,
      'a limit on air at the site is no ban': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks: total air 6 percent plus or minus 1.5 percent.
B. Do not add air-entraining admixture at the site without approval of the Engineer.
`,
    },
  },
});

type Ruling = ActFact | ValueFact;

/** Statements that leave the element without entrained air. */
function rulings(view: View): readonly Ruling[] {
  const values = view.values('air-content').filter(({ doubt, force }) => doubt === undefined && force !== 'waive');
  const numbers = values.filter((value) => !isFloorValue(value));
  const bans = view.acts('air-entrainment').filter((fact) => isBan(fact) && !isOverruled(fact, numbers));
  return numbers.length > 0 ? bans : [...values, ...bans];
}

function isBan({ force, act, doubt }: ActFact): boolean {
  const isPlain = act.manner === undefined || act.manner === 'plain';
  return isPlain && doubt === undefined && (force === 'ban' || force === 'waive');
}

/** A number of air for the very element overrules a ban that speaks in general. */
const isOverruled = (ban: ActFact, numbers: readonly ValueFact[]): boolean =>
  numbers.some((number) => specificity(ban) < specificity(number));

const specificity = ({ subject }: Ruling): number =>
  subject.elements.length + subject.mixtures.length > 0 ? Number.POSITIVE_INFINITY : subject.exterior === 'yes' ? 1 : 0;

/** A ceiling without a floor, as low as for a trowelled floor. */
function isFloorValue({ value }: ValueFact): boolean {
  const most = value.target === undefined && value.min === undefined ? highest(value) : undefined;
  return most !== undefined && most <= floorAir.value;
}

function finding(fact: Ruling, views: readonly View[]): RuleFinding {
  const [view] = views as readonly [View, ...View[]];
  const elements = views.map(({ element }) => element);
  const words = quoted(fact.words);
  const asks = saidForSize(view);
  const where = whereSaid(fact, view.context.specification);
  return {
    at: fact.spans[0],
    message: fitted(elements, (names) => `${where} rules out entrained air for ${names} ("${words}")`),
    detail: `Air is needed here (${classOf(view)})${asks ? `: ${asks}` : ''}. A ban of this kind is right for trowelled interior floors only.`,
    found: words,
    required: asks,
    elements,
    remedy: { kind: 'replace', span: fact.spans[0], clause },
  };
}
