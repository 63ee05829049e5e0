/** Four sections in other registers, and what a careful durability engineer would say of each: expectation by judgment. */
import type { Expected, Silent } from './planted.ts';

/** The words of the section that the finding stands on; for an omission only the place can be said. */
export interface Judged extends Expected {
  readonly on?: string;
}

export interface Register {
  readonly path: string;
  readonly register: string;
  /** A letter has no numbers to cite: places are not compared. */
  readonly unnumbered?: true;
  readonly expect: readonly Judged[];
  readonly silent: readonly Silent[];
}

export const registers: readonly Register[] = [
  {
    path: 'sidewalk-ordinance.md',
    register: 'a small city sets rules in paragraphs of one sentence',
    expect: [
      {
        rule: 'air-content-missing',
        severity: 'must',
        place: '11.20.020',
        why: 'Freezing, wet and salted by its own words, and not a word on air; the percentages are loam, slag and density.',
      },
      {
        rule: 'strength-low',
        severity: 'must',
        place: '11.20.020',
        on: 'three thousand pounds per square inch',
        why: 'The use stated is that of F3: 4500 psi, and 3500 psi even where ground slabs are only nonstructural.',
      },
      {
        rule: 'dry-cement-on-surface',
        severity: 'must',
        place: '11.20.030',
        on: 'dry cement may be dusted over it',
        why: 'Permission to dust, right after a ban on water.',
      },
      {
        rule: 'trowel-before-broom',
        severity: 'must',
        place: '11.20.030',
        on: 'troweled smooth with a steel trowel and then brushed',
        why: 'The trowel does the harm before the broom hides it.',
      },
      {
        rule: 'curing-too-short',
        severity: 'must',
        place: '11.20.040',
        on: 'three (3) days',
        why: 'Three days under wet burlap; seven and fourteen days are closings to travel.',
      },
      {
        rule: 'deicer-hold-off-missing',
        severity: 'should',
        place: '11.20.030',
        why: 'The lot owners salt, and nothing keeps them off the first winter.',
      },
    ],
    silent: [
      {
        rule: 'exposure-class-missing',
        trap: 'freeze and thaw, lie wet, are salted',
        why: 'Words that decide all three questions stand for the class.',
      },
      {
        rule: 'w-cm-high',
        trap: 'five gallons to the sack',
        why: 'Five gallons of 8.345 lb on a sack of 94 lb is 0.444.',
      },
      { rule: 'w-cm-missing', trap: 'five gallons to the sack', why: 'Gallons per sack are a water limit.' },
      { rule: 'strength-missing', trap: 'three thousand pounds', why: 'It is stated, in words.' },
      { rule: 'surface-water-ban-missing', trap: 'thrown upon the surface', why: 'The ban stands in 11.20.030.' },
      {
        rule: 'water-added-to-surface',
        trap: 'The ground shall be wetted',
        why: 'The ground is no surface of a slab.',
      },
      { rule: 'hard-trowel-outdoors', trap: 'steel trowel', why: 'The sequence speaks once, as trowel before broom.' },
      {
        rule: 'cold-weather-clause-missing',
        trap: 'thermometer stands below forty degrees',
        why: 'A trigger, a cover and an end are given.',
      },
      { rule: 'air-test-method-missing', trap: 'shall stand a test', why: 'The chapter has no testing of its own.' },
      { rule: 'curing-duration-missing', trap: 'kept wet', why: 'Three days are stated; they are too few.' },
    ],
  },
  {
    path: 'design-standard.md',
    register: 'an owner tells designers what to specify',
    expect: [
      {
        rule: 'w-cm-high',
        severity: 'must',
        place: '3.3',
        on: '0.50',
        why: 'A number for salted walks, declared F3 in 2.2, that every project would copy: 0.45 for plain concrete.',
      },
      {
        rule: 'hard-trowel-outdoors',
        severity: 'must',
        place: '4.2',
        on: 'hard steel-trowel finish',
        why: 'A finish given outright to exterior steps.',
      },
    ],
    silent: [
      { rule: 'air-content-missing', trap: 'shall specify total air', why: 'The number is the designer’s to give.' },
      { rule: 'air-tolerance-missing', trap: 'with its tolerance', why: 'The designer gives it.' },
      { rule: 'air-test-method-missing', trap: 'the method by which it is tested', why: 'The designer gives it.' },
      { rule: 'strength-missing', trap: 'shall specify the 28-day strength', why: 'The designer gives it.' },
      { rule: 'exposure-class-missing', trap: 'Exterior steps', why: 'The designer assigns classes by 2.1.' },
      { rule: 'curing-missing', trap: 'how sidewalks are cured', why: 'The designer gives it.' },
      { rule: 'curing-method-missing', trap: 'how sidewalks are cured', why: 'The designer gives it.' },
      { rule: 'curing-duration-missing', trap: 'for how long', why: 'The designer gives it.' },
      { rule: 'surface-water-ban-missing', trap: 'The specifications shall say', why: 'The designer writes it.' },
      { rule: 'cold-weather-clause-missing', trap: 'need a cold-weather article', why: 'The designer decides.' },
      { rule: 'deicer-hold-off-missing', trap: 'when salting may begin', why: 'Handed to the owner’s own people.' },
    ],
  },
  {
    path: 'small-works-letter.md',
    register: 'a client writes a letter',
    unnumbered: true,
    expect: [
      {
        rule: 'water-added-to-surface',
        severity: 'must',
        place: '',
        on: 'you can wet the surface a little with the hose',
        why: 'Permission to finish the steps with water.',
      },
      {
        rule: 'curing-duration-missing',
        severity: 'must',
        place: '',
        on: 'spray everything with white curing compound',
        why: 'A compound and a starting time, and no length; a week under blankets is for frost.',
      },
      {
        rule: 'calcium-chloride-allowed',
        severity: 'should',
        place: '',
        on: 'A bag of calcium chloride',
        why: 'Whether the steps and the walk hold steel is not said.',
      },
      {
        rule: 'harmful-deicer-specified',
        severity: 'must',
        place: '',
        on: 'garden fertilizer',
        why: 'Fertilizer as ice melt attacks the paste, whoever spreads it.',
      },
      {
        rule: 'deicer-hold-off-missing',
        severity: 'should',
        place: '',
        why: 'October concrete, salted from the first snow.',
      },
    ],
    silent: [
      {
        rule: 'exposure-class-missing',
        trap: 'It freezes here, wet snow, we salt them',
        why: 'Words that decide all three questions stand for the class.',
      },
      { rule: 'w-cm-high', trap: '0.45', why: 'It is the value of plain concrete in F3.' },
      { rule: 'strength-low', trap: '4500 psi', why: 'It is the value of plain concrete in F3.' },
      { rule: 'air-content-low', trap: '6 percent give or take 1.5', why: 'It is the band for 3/4 inch stone.' },
      { rule: 'air-tolerance-missing', trap: 'give or take 1.5', why: 'That is the tolerance.' },
      { rule: 'surface-water-ban-missing', trap: 'wet the surface', why: 'The ban is there, for the walk.' },
      { rule: 'hard-trowel-outdoors', trap: 'a nice smooth face', why: 'No trowel is named.' },
      {
        rule: 'cold-weather-clause-missing',
        trap: 'Should a frost be announced',
        why: 'A trigger, blankets and a week are given.',
      },
      { rule: 'air-test-method-missing', trap: 'air at 6 percent', why: 'The letter tests nothing.' },
      { rule: 'finishing-over-bleed-water', trap: 'its bleed water', why: 'It asks to wait.' },
    ],
  },
  {
    path: 'highway-item.md',
    register: 'an agency item leaves most to its standard specifications',
    expect: [
      {
        rule: 'water-added-to-surface',
        severity: 'must',
        place: '1101.03.c',
        on: 'may sprinkle water over the surface',
        why: 'Permission to float with water.',
      },
      {
        rule: 'curing-too-short',
        severity: 'must',
        place: '1101.03.d',
        on: '72 hours',
        why: 'Three days by the item itself, milder than what it cites; 24 hours and 10 days are closings to traffic.',
      },
    ],
    silent: [
      { rule: 'exposure-class-missing', trap: 'Class A (AE)', why: 'The standard specifications give the mixture.' },
      { rule: 'air-content-missing', trap: 'Class A (AE)', why: 'The standard specifications give the mixture.' },
      { rule: 'w-cm-missing', trap: 'Class A (AE)', why: 'The standard specifications give the mixture.' },
      { rule: 'strength-missing', trap: 'Class A (AE)', why: 'The standard specifications give the mixture.' },
      { rule: 'air-test-method-missing', trap: 'sample, and test', why: 'In accordance with what is cited.' },
      {
        rule: 'surface-water-ban-missing',
        trap: 'sprinkle water',
        why: 'What is cited may ban it; the permission speaks.',
      },
      { rule: 'curing-method-missing', trap: '72 hours', why: 'The method is that of what is cited.' },
      { rule: 'curing-duration-missing', trap: 'in accordance with', why: 'A length is stated; it is too short.' },
      { rule: 'cold-weather-clause-missing', trap: 'in cold weather', why: 'Handed to what is cited.' },
      { rule: 'deicer-hold-off-missing', trap: 'Opening', why: 'One question to the agency instead.' },
      { rule: 'calcium-chloride-allowed', trap: 'its admixtures', why: 'None is named.' },
    ],
  },
];
