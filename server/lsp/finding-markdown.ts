/** A finding with its working, as a hover shows it. */
import type { Severity } from '../../rules/model/project.ts';
import type { ElementEvidence, Finding } from '../checking.ts';
import { list } from '../render/layout.ts';
import { sayCitation, sayStep } from '../render/words.ts';
import { caution, listed, numbered, paragraphs, plain, strong } from './markdown.ts';

export function findingMarkdown(finding: Finding): string {
  const { severity, place, message, detail, steps, evidence, because, citations, suggestion } = finding;
  return paragraphs([
    `${strong([levelWords[severity], message.includes(place) ? '' : place].filter(Boolean).join(' · '))}: ${plain(message)}`,
    foundAndRequired(finding),
    detail && plain(detail),
    headed(
      'See also',
      because.map((each) => [each.place, each.message].filter(Boolean).join(': ')),
    ),
    0 < steps.length ? `Working:\n\n${numbered(steps.map(sayStep))}` : undefined,
    headed('Why it counts as exterior', sayEvidence(evidence)),
    headed('By', citations.map(sayCitation)),
    suggestion && `Suggested: ${plain(suggestion.title)}`,
    caution,
    `rule \`${finding.rule}\``,
  ]);
}

const levelWords: Readonly<Record<Severity, string>> = {
  must: 'Must change before bid',
  should: 'Should change',
  note: 'Note',
};

/** The two belong side by side. */
function foundAndRequired({ found, required, elements }: Finding): string {
  const rows = [
    ['Found', found],
    ['Required', required],
    ['For', elements.length === 0 ? undefined : list(elements)],
  ].filter(([, text]) => text);
  return rows.map(([label, text]) => `- ${label}: ${plain(text ?? '')}`).join('\n');
}

function headed(title: string, lines: readonly string[]): string | undefined {
  return lines.length === 0 ? undefined : `${title}:\n\n${listed(lines)}`;
}

/** The first element has the best evidence; it is shown in full, the others by their sum. */
function sayEvidence([first, ...others]: readonly ElementEvidence[]): readonly string[] {
  if (!first) return [];
  const cues = first.cues.map(
    ({ words, place, points }) => `"${words}" ${[place, signed(points)].filter(Boolean).join(', ')}`,
  );
  return [[sayBand(first), ...cues].join('; '), ...(others.length === 0 ? [] : [others.map(sayBand).join('; ')])];
}

const sayBand = ({ element, band, points }: ElementEvidence): string => `${element}: ${band}, ${signed(points)} points`;

const signed = (points: number): string => (points < 0 ? String(points) : `+${points}`);
