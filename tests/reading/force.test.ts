/** What a clause comes to: bans that an exception undoes, limits put as bans, duties waived, and what orders nothing. */
import { describe, expect, test } from 'vitest';
import type { Force } from '../../rules/model/clause.ts';
import { comesTo, type Fact, type FactKind } from '../../rules/model/fact.ts';
import type { Source } from '../../rules/model/source.ts';
import { read } from '../../server/reading/read.ts';
import { findings } from '../sections/manual.ts';

const walks = 'The shelter walks, exterior, are structurally reinforced, Exposure Class F3.';

const section = (heading: string, text: string): Source => ({
  path: 'walks.md',
  text: [
    'SECTION 32 13 13 - CONCRETE PAVING',
    'PART 1 - GENERAL',
    '1.01 SUMMARY',
    `A. ${walks}`,
    'PART 3 - EXECUTION',
    `3.04 ${heading}`,
    `A. ${text}`,
    '',
  ].join('\n'),
});

const factsOf = (kind: FactKind, heading: string, text: string): readonly Fact[] =>
  read(section(heading, text)).facts.filter((fact) => fact.kind === kind);

const comings = (kind: FactKind, heading: string, text: string): readonly Force[] =>
  factsOf(kind, heading, text).map(comesTo);

/** What the rule finds in the clause, as it quotes it. */
const found = (rule: string, heading: string, text: string): readonly (string | undefined)[] =>
  findings(section(heading, text))
    .filter((finding) => finding.rule === rule)
    .map((finding) => finding.found);

describe('a ban that need, weather or somebody on the site may lift is none', () => {
  test.each([
    ['water-added-to-surface', 'Do not add water to the surface unless it has dried.'],
    ['water-added-to-surface', 'Do not add water to the surface, except on hot days.'],
    ['water-added-to-surface', "Do not add water to the surface without the inspector's approval."],
    ['water-added-to-surface', 'Do not add water to the surface unless permitted by the foreman.'],
    ['calcium-chloride-allowed', 'Do not use calcium chloride without approval.'],
    ['calcium-chloride-allowed', 'No calcium chloride shall be used unless the weather is cold.'],
    ['site-water-uncontrolled', 'Do not add water at the site unless the concrete is too stiff to place.'],
    ['hard-trowel-outdoors', 'Do not steel-trowel unless the surface is too dry to broom.'],
    ['dry-cement-on-surface', 'Do not sprinkle dry cement on the surface except on wet days.'],
  ])('%s speaks, and quotes the exception: %s', (rule, text) => {
    const exception = text.slice(text.search(/unless|except|without/)).replace('.', '');
    const [first] = findings(section('FINISHING', text)).filter((finding) => finding.rule === rule);
    expect(first?.severity).toBe('must');
    expect(`${first?.message} ${first?.detail}`).toContain(exception);
  });

  test.each([
    ['water-added-to-surface', 'Do not add water to the surface except fog above the slab.'],
    ['water-added-to-surface', 'Do not add water to the surface except for curing after final set.'],
    ['water-added-to-surface', 'Do not add water to the surface except as needed for curing.'],
    ['water-added-to-surface', 'Do not add water at the site unless the concrete is too stiff to place.'],
    ['calcium-chloride-allowed', 'Do not use calcium chloride unless the Engineer directs in writing.'],
    ['calcium-chloride-allowed', "Do not use calcium chloride without the Engineer's written approval."],
    ['site-water-uncontrolled', 'Add no water at the site except the water withheld from the approved mixture.'],
    ['site-water-uncontrolled', 'Add no water at the site unless otherwise specified.'],
    ['hard-trowel-outdoors', 'Do not steel-trowel except interior floors.'],
  ])('%s is silent where the exception is bound to something harmless: %s', (rule, text) => {
    expect(found(rule, 'FINISHING', text)).toEqual([]);
  });

  test('an exception that names an approval counts for a ban only', () => {
    expect(comings('accelerator', 'ADMIXTURES', 'Calcium chloride may be used without approval.')).toEqual(['permit']);
  });
});
