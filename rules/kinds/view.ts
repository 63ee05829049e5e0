/** One element as the rules look at it: its evidence, what is required of it, and what the text says about it. */
import { type ExposureEvidence, exposureEvidence } from '../formulas/exposure-evidence.ts';
import { computeRequirement } from '../formulas/requirement.ts';
import { about, allAbout } from '../model/binding.ts';
import type { ActFact, ActKind, Fact, FactKind, NamedFact, NamedKind, PropertyKind, ValueFact } from '../model/fact.ts';
import { lowest } from '../model/measure.ts';
import { type Project, projectFor, type YesNo } from '../model/project.ts';
import { type Quantity, quantity } from '../model/quantity.ts';
import type { Requirement } from '../model/requirement.ts';
import type { Context } from '../model/rule.ts';
import type { Element, SectionDocument } from '../model/specification.ts';
import { citedSpecifications, type Duty } from '../tables/cited-specifications.ts';

/** Elements of the manual as the rules look at them, made once for one specification and project. */
export function viewsOf(context: Context): readonly View[] {
  const known = views.get(context);
  if (known) return known;
  const made = context.specification.elements.map((element) => new View(context, element));
  views.set(context, made);
  return made;
}

const views = new WeakMap<Context, readonly View[]>();

export class View {
  readonly project: Project;
  /** The document that names the element first. */
  readonly document: SectionDocument;
  readonly evidence: ExposureEvidence;
  #requirement?: Requirement;

  constructor(
    readonly context: Context,
    readonly element: Element,
  ) {
    const { documents } = context.specification;
    this.document = (documents.find(({ path }) => path === element.first.path) ?? documents[0]) as SectionDocument;
    this.project = projectFor(context.project, element.first.path);
    this.evidence = exposureEvidence(element.cues);
  }

  /** What the text says at the most specific level at which it speaks. */
  values(kind: PropertyKind): readonly ValueFact[] {
    return about(this.context.specification, this.element, kind);
  }

  acts(kind: ActKind): readonly ActFact[] {
    return about(this.context.specification, this.element, kind);
  }

  names(kind: NamedKind): readonly NamedFact[] {
    return about(this.context.specification, this.element, kind);
  }

  /** What the text says at every level: a general ban binds a walk that has clauses of its own. */
  every(kind: FactKind): readonly Fact[] {
    return allAbout(this.context.specification, this.element, kind);
  }

  get isExterior(): boolean {
    return this.evidence.band === 'strong exterior' || this.evidence.band === 'medium exterior';
  }

  has(trait: string): boolean {
    return this.element.traits.has(trait);
  }

  /** Does water freeze in it? The text's own words and classes win over an unknown climate, never over a mild one. */
  get freezing(): YesNo {
    if (this.declaredClasses.some((token) => freezes.has(token))) return 'yes';
    if (this.project.climate !== 'unknown') return this.project.climate === 'freezing' ? 'yes' : 'no';
    return this.every('freezing').length > 0 ? 'yes' : 'unknown';
  }

  get salted(): YesNo {
    const own = this.project.elements[this.element.name]?.deicers;
    if (own && own !== 'unknown') return own;
    if (this.element.salted.value !== 'unknown') return this.element.salted.value;
    if (this.declaredClasses.includes('F3')) return 'yes';
    return this.isExterior && isHorizontal(this.element) ? this.project.deicers : 'unknown';
  }

  /** Exposure classes that the text or the project file gives it. */
  get declaredClasses(): readonly string[] {
    const own = this.project.elements[this.element.name]?.exposure;
    return own ?? [...new Set(this.names('exposure-class').map(({ value }) => value))];
  }

  /** Declared classes, else the candidate that the evidence points to; empty for what does not freeze. */
  get classes(): readonly string[] {
    if (this.declaredClasses.length > 0) return this.declaredClasses;
    if (!this.isExterior || this.freezing !== 'yes') return [];
    return [this.salted === 'no' ? 'F2' : this.salted === 'yes' || isHorizontal(this.element) ? 'F3' : 'F2'];
  }

  /** True where the freeze-thaw class is the text's own, not our candidate. */
  get isDeclared(): boolean {
    return this.declaredClasses.length > 0;
  }

  get structural(): YesNo {
    return (
      this.#stated('structural') ?? (this.has('structural') || this.has('suspended') ? 'yes' : builtIn(this.element))
    );
  }

  get reinforced(): YesNo {
    if (this.has('reinforced') || this.has('suspended')) return 'yes';
    return this.#stated('reinforced') ?? (this.has('plain') ? 'no' : 'unknown');
  }

  /** What the code in force requires of it; undefined where this version does not compute that code. */
  get requirement(): Requirement | undefined {
    this.#requirement ??= this.#compute();
    return this.#requirement;
  }

  /** A cited specification, another section or the drawings answer for the duty. */
  supplied(duty: Duty): boolean {
    return (
      this.#cited(duty) ||
      this.every('elsewhere').some((fact) => 'value' in fact && answers(fact.value as string, duty))
    );
  }

  #cited(duty: Duty): boolean {
    const required = this.every('standard').filter((fact) => 'of' in fact && fact.of === 'requirement');
    const names = new Set(required.map((fact) => ('value' in fact ? fact.value : '')));
    return citedSpecifications.some(({ designation, supplies }) => names.has(designation) && supplies.includes(duty));
  }

  #stated(what: 'structural' | 'reinforced'): YesNo | undefined {
    const own = this.project.elements[this.element.name]?.[what] ?? this.project[what];
    return own === 'unknown' ? undefined : own;
  }

  #compute(): Requirement | undefined {
    const strengths = this.values('strength').map(({ value }) => lowest(value as never, 'psi' as never));
    const known = strengths.filter((value): value is number => value !== undefined);
    const strength = known.length > 0 ? quantity(Math.min(...known), 'psi') : undefined;
    return computeRequirement({
      code: this.project.code,
      classes: this.classes,
      structural: this.structural,
      reinforced: this.reinforced,
      prestressed: this.has('prestressed') ? 'yes' : 'no',
      aggregate: this.aggregate,
      strength,
    });
  }

  /** Nominal maximum size of aggregate, the text's or the project's. */
  get aggregate(): Quantity<'length'> | undefined {
    for (const { value, doubt } of this.values('aggregate-size')) {
      const amount = value.max ?? value.target ?? value.min;
      if (doubt === undefined && amount !== undefined) return quantity(amount, value.unit) as Quantity<'length'>;
    }
    return this.project.aggregate;
  }
}

const freezes: ReadonlySet<string> = new Set([
  'F1',
  'F2',
  'F3',
  'XF1',
  'XF2',
  'XF3',
  'XF4',
  'C-XL',
  'C-1',
  'C-2',
  'C-3',
  'C-4',
  'F-1',
  'F-2',
]);

const upright: ReadonlySet<string> = new Set(['wall', 'footing', 'other']);
const isHorizontal = ({ kind }: Element): boolean => !upright.has(kind);

/** Walks, curbs and pads on ground carry no structure (ACI 318-19 1.4.8); walls, decks and footings do. */
function builtIn({ kind }: Element): YesNo {
  if (kind === 'wall' || kind === 'footing' || kind === 'deck') return 'yes';
  return kind === 'slab' || kind === 'concrete' || kind === 'other' ? 'unknown' : 'no';
}

/** "Strength as indicated on Drawings" answers for strength; "concrete: Section 03 30 00" for everything. */
const answers = (what: string, duty: Duty): boolean => what === 'everything' || what === duty;
