/** The level of one finding: the rule's own, what the project sets, and what the evidence of exposure allows. */
import type { View } from '../rules/kinds/view.ts';
import type { Level, Severity } from '../rules/model/project.ts';
import type { Rule, RuleFinding } from '../rules/model/rule.ts';
import type { Levels } from './settings.ts';

export interface LevelFound {
  readonly severity: Severity;
  /** Said in the detail where the level is not the rule's own. */
  readonly because?: string;
}

/** Undefined: the finding is not shown. */
export function levelFor(
  rule: Rule,
  said: RuleFinding,
  view: View | undefined,
  levels: Levels,
): LevelFound | undefined {
  const own = wanted(rule, said, levels);
  return own === undefined ? undefined : capped(own, rule, view);
}

function wanted(
  rule: Rule,
  { severity, at: { path } }: RuleFinding,
  { everywhere, byPath }: Levels,
): Severity | undefined {
  const set = byPath[path]?.[rule.id] ?? byPath[path]?.[rule.family] ?? everywhere[rule.id] ?? everywhere[rule.family];
  if (set === 'off') return undefined;
  if (set !== undefined && set !== 'on') return set;
  const card: Level = severity ?? rule.severity;
  if (rule.severity !== 'off') return card === 'off' ? undefined : card;
  return set === 'on' ? 'note' : undefined;
}

/** One level down on medium evidence, never above a note where evidence or climate is unknown, nothing indoors. */
function capped(severity: Severity, { gate }: Rule, view: View | undefined): LevelFound | undefined {
  if (!view) return { severity };
  const { band } = view.evidence;
  if (gate === 'freezing') {
    if (band.endsWith('interior') || view.freezing === 'no') return undefined;
    if (view.freezing === 'unknown')
      return asNote(severity, 'a note because neither the text nor the project file says whether it freezes here');
  }
  if (band === 'unknown')
    return asNote(severity, `a note because nothing tells whether ${view.element.label} stand outdoors`);
  if (band !== 'medium exterior') return { severity };
  const lower: Readonly<Record<Severity, Severity | undefined>> = { must: 'should', should: 'note', note: undefined };
  const next = lower[severity];
  return (
    next && {
      severity: next,
      because: `(One level lower, because the evidence that ${view.element.label} stand outdoors is not strong.)`,
    }
  );
}

const asNote = (severity: Severity, why: string): LevelFound =>
  severity === 'note' ? { severity } : { severity: 'note', because: `(Only ${why}.)` };
