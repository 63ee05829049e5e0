/** What wakes the server: two signs of a concrete section, one of them the trade's own; a readme never does. */
import { expect, test } from 'vitest';
import { firstLook, firstLookLength, seemsSection } from '../../server/lsp/first-look.ts';
import { read } from '../../server/reading/read.ts';
import { paving, readme } from './job.ts';

test('a section of the demo manual shows its signs', () => {
  expect(firstLook(paving)).toEqual([
    'the number of a concrete section',
    'a part heading',
    'article numbers',
    'words of concrete work',
  ]);
  expect(seemsSection('paving.md', paving)).toBe(true);
});

test.each<[string, string]>([
  ['numbered parts and articles of a guide', readme],
  [
    'a readme about concrete classes',
    '# Concrete\n\nAbstract and concrete classes.\n\n1.1 Install\n\nEND OF SECTION\n',
  ],
  ['release notes', '# 1.2 Changes\n\n## PART 1\n\n1.01 first release\n2.03 second release\n'],
  ['a recipe with cement in it', '# Garden path\n\nMix portland cement with sand; the slump should be low.\n'],
  ['a section on other work', 'SECTION 07 10 00 - WATERPROOFING\n\nPART 1 - GENERAL\n\n1.01 SUMMARY\n'],
  ['planting', '32 90 00 Planting\n\nPART 1 - GENERAL\n\n1.01 SUMMARY\n'],
  ['nothing', ''],
])('asleep: %s', (_, text) => {
  expect(seemsSection('text.md', text)).toBe(false);
});

test.each<[string, string]>([
  [
    'no section line, but articles and the work',
    '2.03 MIXTURES\n\nA. Air-entrain flatwork. Slump 4 in. Keep off the de-icing salt.\n',
  ],
  ['a section line in a heading, and a part', '# SECTION 03 30 00 - CAST-IN-PLACE CONCRETE\n\n## PART 1 - GENERAL\n'],
  ['a number without the word', '# 03 30 00 Cast-in-place concrete\n\n1.01 SUMMARY\n'],
  ['an old five-figure number', 'SECTION 03300\nCAST-IN-PLACE CONCRETE\n\nPART 1 GENERAL\n'],
  ['the end of a section', 'A. Slump: 4 in. Air-entrain it. ASTM C94.\n\nEND OF SECTION\n'],
  ['indented and in bold', '  **SECTION 32.13.13 CONCRETE PAVING**\n\n**PART 3 - EXECUTION**\n'],
  ['Windows line ends', 'SECTION 03 30 00\r\n\r\nPART 1 - GENERAL\r\n'],
])('awake: %s', (_, text) => {
  expect(seemsSection('text.md', text)).toBe(true);
});

test('only the opening is looked at', () => {
  const opening = '.\n'.repeat(firstLookLength / 2);
  expect(seemsSection('paving.md', opening + paving)).toBe(false);
});

test.each(['README.md', '/jobs/ridge/readme.txt', 'CHANGELOG.md', 'C:\\jobs\\LICENSE', 'docs/contributing.md'])(
  '%s is none even if it quotes a whole section, for the reader as for us',
  (path) => {
    expect(seemsSection(path, paving)).toBe(false);
    expect(read({ path, text: paving }).signs).toEqual([]);
  },
);

test('what the reader takes for a section by two signs wakes the server', () => {
  expect(read({ path: 'paving.md', text: paving }).signs.length).toBeGreaterThanOrEqual(2);
  expect(seemsSection('paving.md', paving)).toBe(true);
});
