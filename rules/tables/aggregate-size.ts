/** Size numbers of coarse aggregate and the nominal maximum size that each stands for. */
import { inches, type Quantity } from '../model/quantity.ts';
import { defineTable } from '../model/table.ts';
import { astmC33 } from './documents.ts';

export interface AggregateSize {
  /** As written after "No.": "57". */
  readonly number: string;
  readonly nominalMaximum: Quantity<'length'>;
}

export const aggregateSizes = defineTable<AggregateSize>({
  origin: astmC33('grading table of coarse aggregate'),
  rows: [
    { number: '8', nominalMaximum: inches(3 / 8) },
    { number: '7', nominalMaximum: inches(1 / 2) },
    { number: '67', nominalMaximum: inches(3 / 4) },
    { number: '57', nominalMaximum: inches(1) },
    { number: '467', nominalMaximum: inches(1.5) },
    { number: '357', nominalMaximum: inches(2) },
  ],
});
