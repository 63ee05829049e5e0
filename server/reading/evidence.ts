/** Words that tell in or out of doors: nouns that can only be outside, nouns that may be either, and indoor words. */
import type { Span } from '../../rules/model/source.ts';
import type { Cue } from '../../rules/model/specification.ts';
import type { Reading } from './reading.ts';

const outdoor =
  /\b(?:sidewalk|curb|kerb|gutter|driveway|parking|bus (?:bay|apron|pad|stop|lane)|apron|plaza|patio|porch|stoop|exterior|outdoor|outside|site paving|roadway|street|road|alley|footpath|footway|flatwork|hardscape)/;
const either = /\b(?:walk|walkway|ramp|step|stair|platform|pad|landing|dock|pavement|paving)s?\b/;
const indoor =
  /\b(?:interior|indoor|floors?|office|hall|lobby|mechanical|basement|warehouse|metal deck|conditioned|heated|vestibule|garage floor|enclosed|metal pan)\b/;

export function nounCues(label: string, exterior: 'yes' | 'no' | 'unknown', place: string, span: Span): Cue[] {
  const words = label.replace(/\bunheated\b/, '').replace(/\b(?:nonstructural|structural)\b/, '');
  const cues: Cue[] = [];
  const made = (kind: Cue['kind'], said: string): Cue => ({ kind, words: said, place, span });
  if (exterior === 'yes' && !outdoor.test(words))
    cues.push(made('outdoor-noun', `exterior ${label}`.replace('exterior exterior', 'exterior')));
  const isOut = outdoor.exec(words);
  const isIn = indoor.exec(words);
  if (isOut) cues.push(made('outdoor-noun', label));
  else if (either.test(words)) cues.push(made('either-noun', label));
  if (isIn) cues.push(made('indoor-noun', label));
  else if (exterior === 'no' && !isOut)
    cues.push(made('indoor-noun', `interior ${label}`.replace('interior interior', 'interior')));
  return cues;
}

/** Division 32 is exterior improvements. */
export function sectionCue({ section, title, source }: Reading): Cue[] {
  if (!section?.startsWith('32')) return [];
  return [
    {
      kind: 'outdoor-section',
      words: `Section ${section}${title ? ` ${title}` : ''}`,
      place: section,
      span: { path: source.path, start: 0, end: 1 },
    },
  ];
}
