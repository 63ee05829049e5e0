/** What a project file may say: one schema for checking it, for the editor's completion and for the types. */
import * as z from 'zod';
import { climates, codeIds, stages } from '../../rules/model/project.ts';
import { families } from '../../rules/model/rule.ts';
import { exposureClasses, freezeClasses } from '../../rules/tables/exposure.ts';
import { parseAggregate } from './amounts.ts';

const yesNo = z.enum(['yes', 'no', 'unknown']);
const day = z.string().regex(/^\d{4}-\d{2}-\d{2}$/, 'write a date as 2026-10-15');
const aggregate = z
  .string()
  .refine(
    (text) => parseAggregate(text) !== undefined,
    'write a size with its unit, "3/4 in" or "19 mm", or a size number, "57"',
  );

export const levelSettings = ['must', 'should', 'note', 'off', 'on'] as const;
export type LevelSetting = (typeof levelSettings)[number];

const knownClasses: readonly string[] = [
  ...Object.values(exposureClasses).flatMap((classes) => classes.map(({ name }) => name)),
  ...freezeClasses.map(({ name }) => name),
];

/** Classes of other systems that say nothing of frost: of EN 206, of CSA A23.1 by its hyphen, and the mild ones. */
const otherClass = /^(?:X0|X[ACDMS]\d|[ACFRS]-(?:\d|XL)|N|RF0)$/;

const exposureClass = z
  .string()
  .refine(
    (name) => knownClasses.includes(name) || otherClass.test(name),
    'write an exposure class as its code does, F3, C2, C-1 or XF4',
  );

const element = z.strictObject({
  structural: yesNo.optional().describe('Is the element structural, so that ACI 318 applies in full?'),
  reinforced: yesNo.optional().describe('Has it structural reinforcement? Mesh and light bars count as no.'),
  deicers: yesNo.optional().describe('Do de-icing chemicals reach it?'),
  exposure: z.array(exposureClass).optional().describe('Exposure classes, as ["F3", "C2"].'),
});

const amendment = z.strictObject({
  property: z.string().min(1).describe('What the local value is of: "w-cm", "strength", "air-content", ...'),
  exposure: z.string().min(1).optional().describe('Exposure class that it belongs to.'),
  value: z.string().min(1).describe('The local value with its unit.'),
  citation: z.string().min(1).describe('Document, edition and clause that set it.'),
});

const season = z.strictObject({
  placing: z.tuple([day, day]).optional().describe('First and last date of placing.'),
  firstSalt: day.optional().describe('Date of the first de-icing salt.'),
});

/** Keys that hold for the whole project or for one section. */
const shared = (levelNames: readonly string[]) => ({
  code: z.enum(codeIds).optional().describe('Code that the project is held to.'),
  climate: z.enum(climates).optional().describe('Does concrete freeze where the project is?'),
  deicers: yesNo.optional().describe('Are de-icing chemicals used on exterior flatwork?'),
  aggregate: aggregate.optional().describe('Nominal maximum aggregate size where a section gives none.'),
  units: z.enum(['ip', 'si', 'both']).optional().describe('Units of suggested clauses.'),
  stage: z.enum(stages).optional().describe('How far the text is: blanks are faults only before issue.'),
  structural: yesNo.optional().describe('Are elements structural unless the text says otherwise?'),
  reinforced: yesNo.optional().describe('Are they structurally reinforced unless the text says otherwise?'),
  levels: z
    .partialRecord(z.enum(levelNames as readonly [string, ...string[]]), z.enum(levelSettings))
    .optional()
    .describe('Level of a rule or of a family; a rule wins over its family.'),
  elements: z.record(z.string(), element).optional().describe('What the project states of an element, by its name.'),
  amendments: z
    .array(amendment)
    .optional()
    .describe('Local values with their citation. Kept for a later version: no rule uses them yet.'),
  season: season
    .optional()
    .describe('When concrete is placed and first salted. Kept for a later version: no rule uses it yet.'),
});

/** The schema of `firstwinter.jsonc`; `ruleIds` are the rules whose level may be set. */
export function projectFileSchema(ruleIds: readonly string[]) {
  const keys = shared([...families, ...ruleIds]);
  return z.strictObject({
    $schema: z.string().optional().describe('Where this schema is, for an editor.'),
    ...keys,
    sections: z
      .record(z.string(), z.strictObject(keys))
      .optional()
      .describe('What differs for a section, by path or pattern; a file listed here is always read.'),
  });
}

export type ProjectFile = z.infer<ReturnType<typeof projectFileSchema>>;
export type SectionSettings = Omit<ProjectFile, '$schema' | 'sections'>;

/** The schema as JSON Schema, for completion in an editor. */
export function projectFileJsonSchema(ruleIds: readonly string[]): object {
  return z.toJSONSchema(projectFileSchema(ruleIds), { target: 'draft-7' });
}
