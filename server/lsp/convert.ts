/** From findings, faults and outlines to the shapes of the protocol: the only place that makes them. */
import {
  type CodeAction,
  CodeActionKind,
  type Diagnostic,
  type DiagnosticRelatedInformation,
  DiagnosticSeverity,
  type DocumentSymbol,
  type Hover,
  MarkupKind,
  type Range,
  type SymbolInformation,
  SymbolKind,
  type TextEdit,
  type WorkspaceEdit,
} from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { rules } from '../../rules/index.ts';
import type { Severity } from '../../rules/model/project.ts';
import type { Finding, Suggestion } from '../checking.ts';
import type { OutlineItem } from '../reading/reading.ts';
import type { SettingsFile, SettingsProblem } from '../settings.ts';
import { rulePageUri, sourceName } from './protocol.ts';
import type { Page } from './readings.ts';
import type { Abilities } from './session.ts';

interface Offsets {
  readonly start: number;
  readonly end: number;
}

/** The pages that spans of findings may point into. */
type Pages = readonly Page[];

export function rangeIn(text: TextDocument, { start, end }: Offsets): Range {
  return { start: text.positionAt(start), end: text.positionAt(end) };
}

const severities: Readonly<Record<Severity, DiagnosticSeverity>> = {
  must: DiagnosticSeverity.Error,
  should: DiagnosticSeverity.Warning,
  note: DiagnosticSeverity.Information,
};

export function findingDiagnostic(finding: Finding, page: Page, pages: Pages, abilities: Abilities): Diagnostic {
  return {
    range: rangeIn(page.text, finding.span),
    severity: severities[finding.severity],
    source: sourceName,
    code: finding.rule,
    ...(abilities.codeLinks && { codeDescription: { href: rulePageUri(finding.rule) } }),
    message: finding.message,
    ...(abilities.related && { relatedInformation: finding.because.flatMap((each) => causes(each, pages)) }),
  };
}

function causes(
  { at, place, message }: Finding['because'][number],
  pages: Pages,
): readonly DiagnosticRelatedInformation[] {
  const page = pages.find(({ path }) => path === at.path);
  if (!page) return [];
  const words = [place, message].filter(Boolean).join(': ');
  return [{ location: { uri: page.uri, range: rangeIn(page.text, at) }, message: words }];
}

/** Those among the diagnostics a client holds that show this finding. */
export function diagnosticsFor({ rule, span }: Finding, page: Page, held: readonly Diagnostic[]): Diagnostic[] {
  const { start } = rangeIn(page.text, span);
  return held.filter(({ source, code, range }) => {
    return (
      source === sourceName &&
      code === rule &&
      range.start.line === start.line &&
      range.start.character === start.character
    );
  });
}

/** A fault of the project file is a warning, as a wrong key only loses its effect; a notice is for information. */
export function settingsDiagnostics(uri: string, text: string, { problems }: SettingsFile): Diagnostic[] {
  const document = TextDocument.create(uri, 'jsonc', 0, text);
  return problems.map((problem) => ({
    range: rangeIn(document, problem),
    severity: weights[problem.weight],
    source: sourceName,
    message: `${problem.message}: ${problem.cure}`,
  }));
}

const weights: Readonly<Record<SettingsProblem['weight'], DiagnosticSeverity>> = {
  fault: DiagnosticSeverity.Warning,
  notice: DiagnosticSeverity.Information,
};

export function markdownHover(value: string, range: Range): Hover {
  return { contents: { kind: MarkupKind.Markdown, value }, range };
}

/**
 * What a finding suggests, as a quick fix for the diagnostics that it mends; undefined where it suggests nothing or the
 * text to edit is not at hand. The title says what it is about: several may be offered for one place.
 */
export function quickFix(
  { rule, suggestion }: Finding,
  mended: Diagnostic[],
  pages: Pages,
  abilities: Abilities,
): CodeAction | undefined {
  const edit = suggestion && workspaceEdit(suggestion, pages, abilities);
  if (!edit) return undefined;
  const decided = suggestion.mechanical ? '' : ' (engineer to decide)';
  return {
    title: `${fixName(suggestion)}: ${ruleName(rule)}${decided}`,
    kind: CodeActionKind.QuickFix,
    diagnostics: mended,
    isPreferred: suggestion.mechanical,
    edit,
  };
}

/** A value is told in the menu itself, a clause only by what is done with it. */
function fixName({ title, edits }: Suggestion): string {
  const [first] = edits;
  const isValue = first !== undefined && first.span.start < first.span.end && first.text.length <= longestShown;
  return isValue ? `Write "${first.text}"` : title;
}

const longestShown = 60;

/** The rule's title as the end of a sentence; its id where the list does not have it. */
function ruleName(id: string): string {
  const title = rules.find((rule) => rule.id === id)?.title ?? id.replaceAll('-', ' ');
  return title.charAt(0).toLowerCase() + title.slice(1);
}

function workspaceEdit({ edits }: Suggestion, pages: Pages, abilities: Abilities): WorkspaceEdit | undefined {
  const byPage = new Map<Page, TextEdit[]>();
  for (const { span, text } of edits) {
    const page = pages.find(({ path }) => path === span.path);
    if (!page) return undefined;
    const newText = withLineEndsOf(page.text.getText(), text);
    byPage.set(page, [...(byPage.get(page) ?? []), { range: rangeIn(page.text, span), newText }]);
  }
  if (byPage.size === 0) return undefined;
  if (!abilities.versionedEdits)
    return { changes: Object.fromEntries([...byPage].map(([{ uri }, own]) => [uri, own])) };
  const documentChanges = [...byPage].map(([{ uri, version }, own]) => {
    return { textDocument: { uri, version: version ?? null }, edits: own };
  });
  return { documentChanges };
}

/** New lines end as most lines of the text do. */
function withLineEndsOf(text: string, added: string): string {
  const all = text.match(/\n/g)?.length ?? 0;
  const withReturn = text.match(/\r\n/g)?.length ?? 0;
  return added.replace(/\r?\n/g, all < 2 * withReturn ? '\r\n' : '\n');
}

const symbolKinds: Readonly<Record<OutlineItem['kind'], SymbolKind>> = {
  section: SymbolKind.Module,
  part: SymbolKind.Namespace,
  article: SymbolKind.Class,
  paragraph: SymbolKind.Field,
};

export function documentSymbols(items: readonly OutlineItem[], text: TextDocument): DocumentSymbol[] {
  return items.map((item) => ({
    name: symbolName(item),
    detail: item.kind === 'paragraph' ? item.title : '',
    kind: symbolKinds[item.kind],
    range: rangeIn(text, item),
    selectionRange: rangeIn(text, { start: item.titleStart, end: item.titleEnd }),
    children: documentSymbols(item.children, text),
  }));
}

/** The outline as a list, for clients without a tree. */
export function symbolList(items: readonly OutlineItem[], page: Page, container?: string): SymbolInformation[] {
  return items.flatMap((item) => [
    {
      name: symbolName(item),
      kind: symbolKinds[item.kind],
      location: { uri: page.uri, range: rangeIn(page.text, item) },
      containerName: container,
    },
    ...symbolList(item.children, page, symbolName(item)),
  ]);
}

/** "2.03 MIXTURES"; a paragraph goes by its number alone, as a specifier cites it. */
function symbolName({ kind, place, label, title }: OutlineItem): string {
  if (kind === 'paragraph') return place || label;
  return title.startsWith(place) ? title : `${place} ${title}`.trim();
}
