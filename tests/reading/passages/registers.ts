/** All passages, by the register they are written in. */
import { canadian } from './canadian.ts';
import { european } from './european.ts';
import { guide } from './guide.ts';
import { highway } from './highway.ts';
import { letter } from './letter.ts';
import { master } from './master.ts';
import { municipal } from './municipal.ts';
import { ordinance } from './ordinance.ts';
import type { Passage } from './passage.ts';
import { runon } from './runon.ts';
import { scanned } from './scanned.ts';
import { university } from './university.ts';
import { word } from './word.ts';

export const registers: Readonly<Record<string, readonly Passage[]>> = {
  municipal,
  highway,
  guide,
  university,
  master,
  letter,
  canadian,
  european,
  ordinance,
  scanned,
  runon,
  word,
};
