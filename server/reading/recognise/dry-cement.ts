/** Dry cement and mixtures of it dusted on wet concrete; dry-shake hardeners are kept apart. */
import type { ActFact } from '../../../rules/model/fact.ts';
import { holds, type Statement } from '../statement.ts';
import { act, allWords, words } from './act.ts';

const cement = words(
  'dry cement',
  'neat cement',
  'cement dust',
  'cement and sand',
  'cement sand mixture',
  'cement-sand mixture',
  'dry mix',
  'dry mixture',
  'dust with cement',
  'dust cement',
  'sprinkle cement',
  'cement and fine sand',
  'sand and cement',
  'dry sand and cement',
  'dry portland cement',
  'cement powder',
  'cement dusted',
  'mixture of cement and sand',
  'mix of cement and sand',
  'dry material',
  'dusting',
  'dusting with',
  'driers',
  'powdered cement',
  'dry grout',
  'cement to absorb',
  'cement to dry',
);
const spreading = words(
  'dust',
  'strew',
  'strewn',
  'scatter',
  'dusting',
  'sprinkle',
  'spread',
  'apply',
  'use',
  'blot',
  'absorb',
  'dry up',
  'sift',
  'throw',
  'cast',
  'place',
  'coat',
  'take up',
  'used',
  'rub',
);
const others = words(
  'subbase',
  'subgrade',
  'base',
  'soil',
  'stabilized',
  'stabilised',
  'joint',
  'grout the',
  'bag',
  'mixer',
  'hardener',
  'emery',
  'mortar bed',
  'post',
  'silo',
  'dry mix shotcrete',
  'haul road',
  'dry shake',
);

const dusted = act({
  kind: 'dry-cement',
  meets: [cement, spreading],
  unless: others,
  // The dust that a broom sweeps up is none.
  act: (statement) =>
    /\bcement\b|\bdusting\b|\bdry m|\bdriers?\b|\bdry grout/.test(allWords(statement))
      ? { verb: 'spread', material: 'dry cement', object: 'surface' }
      : undefined,
});

const plainCement = words('cement', 'portland cement');
const otherCement = words(
  'cement paste',
  'cement grout',
  'cement mortar',
  'cement content',
  'cement ratio',
  'water cement ratio',
  'cement finish',
  'white cement',
  'slag cement',
  'cement concrete',
  'portland cement concrete',
);
/** "Water, cement or a mixture of the two spread upon the surface": cement alone is dry where it is put on the surface. */
const ontoSurface =
  /\b(?:dust|sprinkl|spread|strew|scatter|sift|cast|throw|appl)\w*\b.{0,40}\b(?:on|upon|onto|over|to) (?:the )?(?:\w+ )?(?:surface|slab|face|concrete|walks?)\b/;

const spreadPlain = act({
  kind: 'dry-cement',
  meets: [plainCement, spreading],
  unless: others,
  act: (statement) =>
    ontoSurface.test(allWords(statement)) && !holds(otherCement, statement)
      ? { verb: 'spread', material: 'dry cement', object: 'surface' }
      : undefined,
});

export function dryCement(statement: Statement): ActFact[] {
  const made = dusted(statement);
  return 0 < made.length ? made : spreadPlain(statement);
}

const shake = words(
  'dry shake',
  'shake on hardener',
  'shake-on',
  'dry-shake hardener',
  'mineral hardener',
  'metallic hardener',
  'emery',
  'hardener blend',
);

export const dryShake = act({
  kind: 'dry-shake',
  meets: [shake],
  act: () => ({ verb: 'spread', material: 'dry shake' }),
});
