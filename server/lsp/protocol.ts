/** What client and server say to each other beyond the standard protocol: names and shapes only, no library. */

/** The name beside every finding. */
export const sourceName = 'First Winter';

/** Settings of a project: the nearest one upward from a section holds. */
export const projectFileName = 'firstwinter.jsonc';

/** Languages in which a section may be written. */
export const sectionLanguages = ['markdown', 'plaintext'] as const;

/** Virtual documents: the page of a rule. */
export const pageScheme = 'firstwinter';
export const rulePageUri = (rule: string): string => `${pageScheme}:/rules/${rule}.md`;

/** The rule of a page's path, "/rules/air-content-missing.md"; undefined for any other path. */
export const ruleOfPage = (path: string): string | undefined => /^\/rules\/([a-z0-9-]+)\.md$/.exec(path)?.[1];

/** The Markdown of a rule's page; null where no rule has that id. */
export const rulePageRequest = 'firstwinter/rulePage';
export interface RulePageParams {
  readonly rule: string;
}
export type RulePageResult = string | null;

/** Why a document is or is not checked, and what was found in it, as plain text. */
export const whyRequest = 'firstwinter/why';
export interface WhyParams {
  readonly uri: string;
}
export type WhyResult = string;

/** Sent by the server after each check, once for each open document. */
export const statusNotification = 'firstwinter/status';
export interface Status {
  readonly uri: string;
  readonly checked: boolean;
  /** One short line: counts, or that the document is not checked. */
  readonly text: string;
  /** Code, climate and de-icers in force with their origin; or why the document is not checked. */
  readonly detail: string;
  /** Something of ours or in the project file is broken. */
  readonly trouble?: string;
}

/** What our own client can do that the standard protocol has no name for. */
export interface InitializationOptions {
  /** It opens virtual documents of `pageScheme`. */
  readonly rulePages?: boolean;
  /** It takes status notifications. */
  readonly status?: boolean;
}
