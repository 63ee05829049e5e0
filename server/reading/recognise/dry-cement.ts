/** Dry cement and mixtures of it dusted on wet concrete; dry-shake hardeners are kept apart. */
import { act, words } from './act.ts';

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
  'dry material',
  'dusting',
  'driers',
  'powdered cement',
  'dry grout',
  'cement to absorb',
  'cement to dry',
);
const spreading = words(
  'dust',
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

export const dryCement = act({
  kind: 'dry-cement',
  meets: [cement, spreading],
  unless: others,
  act: () => ({ verb: 'spread', material: 'dry cement', object: 'surface' }),
});

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
