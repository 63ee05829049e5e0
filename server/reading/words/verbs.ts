/** Stems of verbs with which specifications give orders; one of them at the start of a statement is an imperative. */
import { stem } from '../stem.ts';

const words =
  'accept achieve add adjust allow apply assign avoid begin blot bring broom brush bull-float burnish calculate clean clear close comply conform consolidate continue control coordinate cover cure cut dampen deliver determine develop discontinue do drag dry dust edge ensure extend finish fit float flood fog follow furnish give hold heat inspect install insulate keep lay leave level limit maintain make measure mist mix moisten monitor notify obtain omit open perform place plan pour prepare prevent produce proportion protect provide pull rake record reject remove repair replace report require restore retain retest rub sample saw screed seal select set sift spray spread sprinkle stamp start stop strike strip submit sweep take tamp temper test texture thaw tool trowel use vibrate wait wash water wet withhold work';

export const imperatives: ReadonlySet<string> = new Set(words.split(' ').map(stem));
