/** Addresses: two spellings of one file are one path, and project files are looked for upward. */
import { expect, test } from 'vitest';
import { pathOf, projectFilePlaces } from '../../server/lsp/places.ts';
import { projectFileName, ruleOfPage, rulePageUri } from '../../server/lsp/protocol.ts';
import { projectFileName as nameInSettings } from '../../server/settings.ts';

test('percent signs and the case of a drive do not make another file', () => {
  expect(pathOf('file:///c%3A/jobs/03%2030%2000.md')).toBe('/c:/jobs/03 30 00.md');
  expect(pathOf('file:///C:/jobs/03 30 00.md')).toBe('/c:/jobs/03 30 00.md');
  expect(pathOf('file:///jobs/100%.md')).toBe('/jobs/100%.md');
  expect(pathOf('untitled:Untitled-1')).toBe('untitled:Untitled-1');
});

test('the nearest folder comes first, and the search ends at the root', () => {
  expect(projectFilePlaces('file:///jobs/ridge/03.md')).toEqual([
    'file:///jobs/ridge/firstwinter.jsonc',
    'file:///jobs/firstwinter.jsonc',
    'file:///firstwinter.jsonc',
  ]);
  expect(projectFilePlaces('untitled:Untitled-1')).toEqual([]);
});

test('the client knows the project file by the name that the settings give it', () => {
  expect(projectFileName).toBe(nameInSettings);
});

test('the page of a rule is found by its address', () => {
  expect(ruleOfPage(rulePageUri('air-content-low').replace('firstwinter:', ''))).toBe('air-content-low');
  expect(ruleOfPage('/rules/../secrets.md')).toBe(undefined);
});
