/** One stem for all forms of a word: "trowelled", "troweling" and "trowels" are "trowel". */

const irregular: Readonly<Record<string, string>> = {
  frozen: 'freez',
  froze: 'freez',
  wetted: 'wet',
  wetting: 'wet',
  thawed: 'thaw',
  put: 'put',
  kept: 'keep',
  held: 'hold',
  laid: 'lay',
  swept: 'sweep',
  left: 'leave',
  begun: 'begin',
  began: 'begin',
  used: 'use',
  using: 'use',
  uses: 'use',
  use: 'use',
  cure: 'cur',
  cured: 'cur',
  curing: 'cur',
  cures: 'cur',
  this: 'this',
  is: 'is',
  was: 'was',
  has: 'has',
  as: 'as',
  its: 'its',
  less: 'less',
  unless: 'unless',
  gas: 'gas',
  thus: 'thus',
  does: 'does',
  glass: 'glass',
  process: 'process',
  grass: 'grass',
  cross: 'cross',
  during: 'during',
  nothing: 'nothing',
  something: 'something',
  spring: 'spring',
  string: 'string',
  bring: 'bring',
  salted: 'salt',
  unsalted: 'unsalt',
  bed: 'bed',
  bedding: 'bed',
  red: 'red',
  note: 'note',
  noted: 'note',
  notes: 'note',
  need: 'need',
  needed: 'need',
  feet: 'foot',
  steel: 'steel',
  percent: 'percent',
  cent: 'cent',
  building: 'building',
  buildings: 'building',
  opening: 'open',
  topping: 'topping',
  toppings: 'topping',
  landing: 'landing',
  landings: 'landing',
  parking: 'parking',
  paving: 'paving',
  footing: 'footing',
  footings: 'footing',
  railing: 'railing',
  coating: 'coating',
  coatings: 'coating',
  covering: 'covering',
  coverings: 'covering',
  steps: 'step',
  bus: 'bus',
  gypsum: 'gypsum',
  moisture: 'moistur',
  moist: 'moist',
  moistened: 'moisten',
  moisten: 'moisten',
  interior: 'interior',
  exterior: 'exterior',
  finishing: 'finish',
  finishers: 'finisher',
  finisher: 'finisher',
  water: 'water',
  watering: 'water',
  watered: 'water',
  weather: 'weather',
  number: 'number',
  trowels: 'trowel',
  trowel: 'trowel',
  aggregate: 'aggregat',
  aggregates: 'aggregat',
  // Nouns of things done keep apart from the doing where the difference decides.
  mixture: 'mix',
  mixtures: 'mix',
  mixes: 'mix',
  mixed: 'mix',
  mixing: 'mix',
  mix: 'mix',
};

const cache = new Map<string, string>();

export function stem(word: string): string {
  const known = irregular[word] ?? cache.get(word);
  if (known !== undefined) return known;
  const made = suffixed(word);
  if (cache.size < 20_000) cache.set(word, made);
  return made;
}

function suffixed(word: string): string {
  if (word.length <= 3) return word;
  if (word.endsWith("'s")) return stem(word.slice(0, -2));
  if (/(?:ies|ied)$/.test(word)) return `${word.slice(0, -3)}y`;
  if (/(?:ss|us|is)$/.test(word)) return word;
  if (/(?:sh|ch|x|z|ss)es$/.test(word)) return word.slice(0, -2);
  if (word.endsWith('s')) return final(word.slice(0, -1));
  if (5 <= word.length && word.endsWith('ing')) return undoubled(word.slice(0, -3));
  if (4 < word.length && word.endsWith('ed')) return undoubled(word.slice(0, -2));
  return final(word);
}

/** A silent e goes, so that "sprinkle" and "sprinkling" meet. */
const final = (word: string): string => (4 < word.length && /[^aeiou]e$/.test(word) ? word.slice(0, -1) : word);

const undoubled = (word: string): string =>
  /([bdgklmnprt])\1$/.test(word) && !/(?:ll|ss)$/.test(word)
    ? word.slice(0, -1)
    : /ll$/.test(word) && 5 < word.length
      ? word.slice(0, -1)
      : word;
