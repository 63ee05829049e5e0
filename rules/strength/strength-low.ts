/** The specified strength is below what the exposure of the element asks for. */
import { isStrengthBelow } from '../formulas/comparison.ts';
import { bothUnits, say } from '../formulas/unit-twins.ts';
import { asked, classOf, headline, type Layer, missed, question, severityOf, standing } from '../kinds/asked.ts';
import { limit, type Shortfall } from '../kinds/limit.ts';
import { isSpecifiedStrength, stressOf } from '../kinds/mixture.ts';
import type { View } from '../kinds/view.ts';
import type { ValueFact } from '../model/fact.ts';
import { clauses } from '../tables/clauses.ts';

export default limit({
  title: 'Strength too low',
  severity: 'must',
  reason:
    'Below the strength that belongs to the w/cm the ratio is surely exceeded, and the surface resists freezing too late in its first season.',
  citations: clauses.strength,
  clause: {
    inchPound: "Provide a specified compressive strength f'c of [4500] psi at 28 days for [shelter walks].",
    metric: "Provide a specified compressive strength f'c of [31] MPa at 28 days for [shelter walks].",
  },
  outranks: ['w-cm-strength-mismatch'],

  kind: 'strength',
  when: (view) => view.isExposed && !view.has('pervious'),
  short,
  message: ({ where, required, elements, view, fact }) =>
    `f'c ${saidStress(fact)} for ${elements} in ${where} is below ${required} (${classOf(view)})`,

  examples: {
    flagged: {
      'a reinforced slab over a tunnel': `
SECTION 03 30 00 - CAST-IN-PLACE CONCRETE
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. The apron slab over the utility tunnel is structurally reinforced, Exposure Classes F3 and C2: f'c 4000 psi (28 MPa) at 28 days.
                                                                                                      ^^^^^^^^^^^^^^^^^^^^^^^^^^^^ is below 5000 psi (35 MPa) (Class F3)
`,
      'between the lawful and the durable': {
        code: 'ibc',
        text: `
SECTION 32 16 13 - CURBS AND GUTTERS
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Curbs, salted in winter: f'c 3500 psi (24 MPa) at 28 days.
                                ^^^^^^^^^^^^^^^^^^^^^^^^^^^^ should: is below 4500 psi (31 MPa) (F3 by its exposure)
`,
      },
      'below the residential table': {
        code: 'irc',
        text: `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Driveway: f'c 3000 psi at 28 days.
                 ^^^^^^^^^^^^^^^^^^^ f'c 3000 psi for driveway in 2.01.A is below 3500 psi (24 MPa)
`,
      },
    },
    clean: {
      'plain concrete of a stated class': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks are Exposure Class F3, plain concrete: f'c 4500 psi (31 MPa) at 28 days.
`,
      'wire mesh does not make it reinforced': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Curb ramps on ground, with wire mesh, are Exposure Class F3: f'c 4500 psi (31 MPa) at 28 days.
`,
      'the metric twin is rounded': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks are Exposure Class F3, plain concrete: 31 MPa at 28 days.
`,
      'a strength at 7 days is on its way': `
SECTION 32 13 13 - CONCRETE PAVING
PART 2 - PRODUCTS
2.01 CONCRETE MIXTURES
A. Shelter walks are Exposure Class F3: 3000 psi (21 MPa) at 7 days and 4500 psi (31 MPa) at 28 days.
`,
    },
  },
});

function short(fact: ValueFact, view: View): Shortfall | undefined {
  const stated = stressOf(fact);
  if (!stated || !isSpecifiedStrength(fact)) return undefined;
  const broken = missed(
    view,
    ({ strength }) => strength?.value,
    (least) => isStrengthBelow(stated, least),
    (least) => least.inchPound.amount,
  );
  const first = headline(view, broken);
  if (!first) return undefined;
  return {
    required: bothUnits(first.value.inchPound),
    instead: first.value.inchPound,
    severity: severityOf(view, broken),
    detail: [
      standing(view, broken),
      otherLimit(view, first.by),
      question(view, ({ strength }) => strength && `f'c at least ${bothUnits(strength.value.inchPound)}`),
    ]
      .filter(Boolean)
      .join(' '),
  };
}

/** The lawful minimum beside the durable strength, or the other way round. */
function otherLimit(view: View, by: Layer): string | undefined {
  if (view.structural === 'yes') return undefined;
  const [other, name] = by === 'lawful' ? ['recommended', 'A strength that lasts'] : ['lawful', 'The lawful minimum'];
  const limit = asked(view, ({ strength }) => strength).find((each) => each.by === other)?.value;
  if (!limit) return undefined;
  const { document, clause } = limit.origin;
  return `${name} is ${bothUnits(limit.value.inchPound)} (${document} ${clause}).`;
}

function saidStress(fact: ValueFact): string {
  const stress = stressOf(fact);
  return stress ? say(stress) : fact.value.asWritten;
}
