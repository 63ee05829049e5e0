/** The words that the reader puts into the slots of acts and names: the trade's words, one for one meaning. */

/** `finish`: operations in the order written. `trowel` is a finish by trowel; `hard trowel` is steel, hard, burnished or slick. */
export type FinishStep =
  | 'strike off'
  | 'bull-float'
  | 'float'
  | 'power float'
  | 'trowel'
  | 'hard trowel'
  | 'light trowel'
  | 'power trowel'
  | 'broom'
  | 'burlap drag'
  | 'tine'
  | 'exposed aggregate'
  | 'rock salt'
  | 'stamp'
  | 'rub'
  | 'edge';

/** `bleed-water` verbs: wait until it has gone, take it off, work it in, finish while it is there, start by the clock alone. */
export type BleedWaterVerb = 'wait' | 'remove' | 'work in' | 'finish over' | 'start by time';

/** `evaporation-retarder` manners. */
export type RetarderManner = 'finishing aid' | 'between operations' | 'plain';

/** `curing-method` manners; `approved` and `unspecified` name no method. */
export type CuringManner =
  | 'wet cover'
  | 'water'
  | 'fog'
  | 'sheet'
  | 'compound'
  | 'steam'
  | 'forms'
  | 'insulated cover'
  | 'listed'
  | 'approved';

/** `curing` manners: how the duty to cure is put. `plain`: "cure"; `vague`: adequately, as required, as long as necessary. */
export type CuringDuty = 'plain' | 'vague' | 'basic' | 'additional' | 'extended wet';

/** `cold-weather` verbs. `avoid` is a wish without a trigger or a duty; `cool` a rate of cooling, `record` readings kept. */
export type ColdWeatherVerb =
  | 'protect'
  | 'place'
  | 'heat'
  | 'hold'
  | 'plan'
  | 'frozen base'
  | 'cool'
  | 'record'
  | 'avoid';

/** `season` names: a window of mild months, or placing into winter; `of` holds the dates as written. */
export type SeasonWindow = 'mild months' | 'late';

/** `deicer-use` verbs: spread a material; sand for grip; clear by shovel or plow; the owner's sheet; the spring inspection. */
export type DeicerUseVerb = 'spread' | 'sand' | 'clear' | 'instruct' | 'inspect';

/** `deicer-use`: material spread on the concrete; time "first winter" or as written. */
export type DeicerMaterial =
  | 'de-icer'
  | 'sodium chloride'
  | 'calcium chloride'
  | 'magnesium chloride'
  | 'ammonium sulfate'
  | 'ammonium nitrate'
  | 'fertilizer'
  | 'acid'
  | 'urea';

/** `sealer-instead` manners: what the sealer stands in for. */
export type SealerInsteadOf = 'air' | 'curing' | 'hold-off';

/** `accelerator` materials. */
export type AcceleratorMaterial = 'calcium chloride' | 'chloride' | 'non-chloride' | 'unspecified';

/**
 * `air-entrainment` manners. `as needed`: if desired, as needed, at an option; `where required`: by a class, table or
 * schedule; `site adjustment` is a correction at the truck. Its verb is `entrain`, or `omit` where it may be left out.
 */
export type AirEntrainmentManner = 'plain' | 'as needed' | 'where required' | 'site adjustment' | 'material';

/** `finishing-tool` names as read. */
export type FinishingTool =
  | 'steel trowel'
  | 'power trowel'
  | 'bull float'
  | 'float'
  | 'broom'
  | 'edger'
  | 'groover'
  | 'fresno';

/** `trait` names of elements and mixtures. */
export type Trait =
  | 'structural'
  | 'nonstructural'
  | 'suspended'
  | 'on ground'
  | 'reinforced'
  | 'plain'
  | 'prestressed'
  | 'precast'
  | 'slipform'
  | 'pervious'
  | 'lightweight'
  | 'topping'
  | 'snow-melt'
  | 'high-early'
  | 'heated'
  | 'repair';

/** `elsewhere`: what is said in another place: a duty by name, or everything. `of` is the place: "Drawings", "03 30 00". */
export type ElsewhereValue =
  | 'everything'
  | 'exposure'
  | 'air'
  | 'air-tolerance'
  | 'air-test'
  | 'site-water'
  | 'w-cm'
  | 'strength'
  | 'curing'
  | 'cold-weather'
  | 'evaporation'
  | 'hold-off'
  | 'surface-water';

/** `standard`: role in which a standard is cited. */
export type StandardRole = 'requirement' | 'material' | 'test' | 'guide' | 'listed';

/** `test`: property measured; `of` is the method, "ASTM C231". The longer words are points of acceptance and carry no method. */
export type TestedProperty =
  | 'air'
  | 'air frequency'
  | 'air sampling'
  | 'air action'
  | 'air tester'
  | 'strength'
  | 'slump'
  | 'temperature'
  | 'flexure'
  | 'other';

/** `curing-duration` and `curing-strength`, `of`: holds for high-early-strength concrete only. */
export type CuringOf = 'high-early';
