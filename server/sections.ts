/** What is taken for a section: the one threshold that the command line and the editor share. */
import type { Reading } from './reading/reading.ts';

/** Signs that make a text a concrete specification section, where nobody named it as one. */
const signsNeeded = 2;

export const showsSection = ({ signs }: Reading): boolean => signsNeeded <= signs.length;
