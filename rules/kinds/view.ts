/** One element as the rules look at it: its evidence, what is required of it, and what the text says about it. */
import { type ExposureEvidence, exposureEvidence } from '../formulas/exposure-evidence.ts';
import { computeRequirement } from '../formulas/requirement.ts';
import { allAbout, closest } from '../model/binding.ts';
import type { ActFact, ActKind, Fact, FactKind, NamedFact, NamedKind, PropertyKind, ValueFact } from '../model/fact.ts';
import { type ElementSettings, type Project, projectFor, type YesNo } from '../model/project.ts';
import type { Requirement } from '../model/requirement.ts';
import type { Context } from '../model/rule.ts';
import type { Element, Region, SectionDocument } from '../model/specification.ts';
import type { Duty } from '../tables/cited-specifications.ts';
import { candidateClass, isFlat, isFreezeClass, loadBearing } from './element-kinds.ts';
import { aggregateOf, specifiedStrength } from './mixture.ts';
import { suppliedFor } from './supplied.ts';

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
  /** Documents that name the element, in the order of the manual. */
  readonly documents: readonly SectionDocument[];
  /** The document that names the element first. */
  readonly document: SectionDocument;
  readonly evidence: ExposureEvidence;
  readonly #settings: ElementSettings | undefined;
  #requirement?: Requirement;
  /** Asked once for each kind: rules ask for every fact of a long manual. */
  readonly #every = new Map<FactKind, readonly Fact[]>();
  readonly #about = new Map<FactKind, readonly Fact[]>();

  constructor(
    readonly context: Context,
    readonly element: Element,
  ) {
    const { documents } = context.specification;
    this.documents = documents.filter(({ path }) => element.documents.includes(path));
    this.document = (documents.find(({ path }) => path === element.first.path) ?? documents[0]) as SectionDocument;
    this.project = projectFor(context.project, element.first.path);
    this.evidence = exposureEvidence(element.cues);
    this.#settings = this.project.elements[element.name] ?? this.project.elements[element.label];
  }

  /** What the text says at the most specific level at which it speaks. */
  values(kind: PropertyKind): readonly ValueFact[] {
    return this.#closest(kind) as readonly ValueFact[];
  }

  acts(kind: ActKind): readonly ActFact[] {
    return this.#closest(kind) as readonly ActFact[];
  }

  names(kind: NamedKind): readonly NamedFact[] {
    return this.#closest(kind) as readonly NamedFact[];
  }

  /** What the text says at every level: a general ban binds a walk that has clauses of its own. */
  every(kind: PropertyKind): readonly ValueFact[];
  every(kind: ActKind): readonly ActFact[];
  every(kind: NamedKind): readonly NamedFact[];
  every(kind: FactKind): readonly Fact[] {
    return this.#all(kind);
  }

  says(kind: FactKind): boolean {
    return this.#all(kind).length > 0;
  }

  has(trait: string): boolean {
    return this.element.traits.has(trait);
  }

  /** Does a document that names the element have an article of this kind? A letter without articles speaks of the work itself. */
  hasArticle(...wanted: readonly Region[]): boolean {
    const asksOfWork = wanted.includes('placing') || wanted.includes('finishing');
    return this.documents.some(
      ({ articles }) =>
        articles.some(({ region }) => wanted.includes(region)) ||
        (asksOfWork && articles.every(({ region }) => region === 'other')),
    );
  }

  /** A landscaping section that names a walk in passing says nothing of its concrete, and need not. */
  get isConcreteWork(): boolean {
    return this.documents.some(({ signs }) => signs === undefined || 0 < signs.length);
  }

  get isExterior(): boolean {
    return this.evidence.band === 'strong exterior' || this.evidence.band === 'medium exterior';
  }

  get isInterior(): boolean {
    return this.evidence.band === 'strong interior' || this.evidence.band === 'medium interior';
  }

  /** Outdoors, and not known to be where it never freezes. */
  get isExposed(): boolean {
    return this.isExterior && this.freezing !== 'no';
  }

  /** Laid flat and finished on top. */
  get isFlatwork(): boolean {
    return isFlat(this.element.kind);
  }

  /** Flatwork that a crew finishes in place: neither precast, nor slipformed, nor pervious. */
  get isFinishedByHand(): boolean {
    return this.isFlatwork && !this.has('precast') && !this.has('slipform') && !this.has('pervious');
  }

  /** Does water freeze in it? The text's own classes win over everything, its words over an unknown climate. */
  get freezing(): YesNo {
    if (this.isDeclared) return 'yes';
    if (this.project.climate !== 'unknown') return this.project.climate === 'freezing' ? 'yes' : 'no';
    return this.every('freezing').length > 0 ? 'yes' : 'unknown';
  }

  /** Do de-icers reach it? Its own setting, the text, its class, and the project's setting for flatwork outdoors. */
  get salted(): YesNo {
    if (this.saltedByText !== 'unknown') return this.saltedByText;
    if (this.declaredClasses.includes('F3')) return 'yes';
    return this.isExterior && this.isFlatwork ? this.project.deicers : 'unknown';
  }

  /** What is said about salts on this very element, in the text or in the settings. */
  get saltedByText(): YesNo {
    const own = this.#settings?.deicers ?? 'unknown';
    return own === 'unknown' ? this.element.salted.value : own;
  }

  /** Exposure classes that the text or the project file gives it. */
  get declaredClasses(): readonly string[] {
    const own = this.#settings?.exposure;
    return own ?? [...new Set(this.names('exposure-class').map(({ value }) => value))];
  }

  /** True where the freeze-thaw class is the text's own, not our candidate. */
  get isDeclared(): boolean {
    return this.declaredClasses.some(isFreezeClass);
  }

  /** The class it freezes in: declared, else the one the evidence points to; undefined for what does not freeze. */
  get freezeClass(): string | undefined {
    const declared = this.declaredClasses.find(isFreezeClass);
    if (declared !== undefined || !this.isExposed) return declared;
    return candidateClass(this.element.kind, this.salted);
  }

  get classes(): readonly string[] {
    if (this.isDeclared || this.freezeClass === undefined) return this.declaredClasses;
    return [...this.declaredClasses, this.freezeClass];
  }

  get structural(): YesNo {
    const stated = this.#stated('structural');
    if (stated !== undefined) return stated;
    if (this.has('structural') || this.has('suspended')) return 'yes';
    return this.has('nonstructural') || this.has('on ground') ? 'no' : loadBearing(this.element.kind);
  }

  get reinforced(): YesNo {
    if (this.has('reinforced') || this.has('suspended')) return 'yes';
    const stated = this.#stated('reinforced');
    if (stated !== undefined) return stated;
    if (this.has('plain')) return 'no';
    // Class C2 is one of concrete with steel in it.
    return this.declaredClasses.includes('C2') ? 'yes' : 'unknown';
  }

  /** What the code in force requires of it; undefined where this version does not compute that code. */
  get requirement(): Requirement | undefined {
    this.#requirement ??= computeRequirement({
      code: this.project.code,
      classes: this.classes,
      structural: this.structural,
      reinforced: this.reinforced,
      prestressed: this.has('prestressed') ? 'yes' : 'no',
      declared: this.isDeclared ? 'yes' : 'no',
      lie: this.element.kind === 'wall' ? 'upright' : 'flat',
      aggregate: aggregateOf(this),
      strength: specifiedStrength(this),
    });
    return this.#requirement;
  }

  /** A cited specification, the drawings, or another section answer for the duty. */
  supplied(duty: Duty): boolean {
    return suppliedFor(this, duty);
  }

  #all(kind: FactKind): readonly Fact[] {
    return remembered(this.#every, kind, () => allAbout(this.context.specification, this.element, kind));
  }

  #closest(kind: FactKind): readonly Fact[] {
    return remembered(this.#about, kind, () => closest(this.#all(kind), this.element));
  }

  #stated(what: 'structural' | 'reinforced'): YesNo | undefined {
    const own = this.#settings?.[what] ?? this.project[what];
    return own === 'unknown' ? undefined : own;
  }
}

function remembered(
  known: Map<FactKind, readonly Fact[]>,
  kind: FactKind,
  make: () => readonly Fact[],
): readonly Fact[] {
  const found = known.get(kind) ?? make();
  known.set(kind, found);
  return found;
}
