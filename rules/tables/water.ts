/** Water and cement as they are counted on site: gallons and sacks. */
import { practice, unitGuide } from './documents.ts';
import { figure } from './figure.ts';

/** Pounds of water in a US gallon at room temperature. */
export const poundsPerGallon = figure(8.345, unitGuide('Appendix B, with water at 1000 kg/m3', 'derived'));

/** Pounds of cement in a US sack. */
export const poundsPerSack = figure(94, practice('sack of portland cement'));
