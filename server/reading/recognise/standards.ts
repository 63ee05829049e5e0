/** Standards by their role, references to sections, what is said elsewhere, and tests by property and method. */
import type { ElsewhereValue, StandardRole, TestedProperty } from '../../../rules/model/acts.ts';
import type { NamedFact } from '../../../rules/model/fact.ts';
import type { Designation } from '../designations.ts';
import { type Statement, said, trimmed } from '../statement.ts';
import { allWords, sentenceWords } from './act.ts';

const complying =
  /\b(?:compl\w*|conform\w*|accordance|according|accord|per|meet\w*|follow\w*|as (?:required|specified|given) (?:by|in)|requirements of|under|to (?:aci|astm|csa|en)|protect\w*|place)\b/;
const guides = /^ACI (?:\d{3}(?:\.\d)?R|211\.1|212|213)$/;
const specifications =
  /^ACI (?:301|305\.1|306\.1|308\.1|318|330\.1|332|350|117)$|^CSA A23\.1$|^EN (?:206|13670)$|^IBC$|^IRC$|^ASTM (?:C94|C685)$/;
const testMethods =
  /^ASTM (?:C(?:31|39|42|78|138|143|172|173|231|457|666|672|1064|1074|1202)|E1155)$|^AASHTO T|^CSA A23\.2-|^EN 12/;

export function standards(statement: Statement, designations: readonly Designation[]): NamedFact[] {
  const { predication } = statement;
  const inside = designations.filter(({ from }) => predication.from <= from && from < predication.to);
  const cited = inside
    .filter(({ kind }) => kind === 'standard')
    .map(
      (each): NamedFact => ({
        kind: 'standard',
        ...said(statement, each),
        value: each.name,
        of: roleOf(each, statement),
      }),
    );
  return [...cited, ...agency(statement), ...sections(statement, inside), ...elsewhere(statement, inside)];
}

function roleOf({ name }: Designation, statement: Statement): StandardRole {
  if (guides.test(name)) return 'guide';
  if (statement.region === 'references' || statement.region === 'related') return 'listed';
  const isAsked =
    statement.predication.force !== 'ban' &&
    statement.region !== 'submittals' &&
    (complying.test(sentenceWords(statement)) || standsAlone(statement));
  // "CSA A23.1, Class C-2" in a mixture orders that concrete without a verb.
  const isOrdered = statement.region === 'mixtures' && /\bclass\b/.test(sentenceWords(statement));
  if (specifications.test(name)) return isAsked || isOrdered ? 'requirement' : 'listed';
  return testMethods.test(name) ? 'test' : 'material';
}

/** "ACI 306.1." and "ACI 306.1 applies." under a heading that says for what; a list of documents has its own article. */
function standsAlone(statement: Statement): boolean {
  return (
    statement.region !== 'quality' &&
    /^\W*(?:aci|csa|en|astm) [a-z]?[\d.]+(?: (?:applies|governs|shall (?:apply|govern)))?(?: (?:in|for|during|when)\b.*| ?, or\b.*)?\W*$/.test(
      allWords(statement).replace(/ ?- ?\d+\b/g, ''),
    )
  );
}

const agencies =
  /\bstandard specifications?\b|\b(?:department of transportation|dot|state|state highway) specifications?\b/;
const agencyWords =
  /\b(?:state|dot|department of transportation|transportation|highway|road|roads|bridge|agency|agency's|city|county|municipal|public works|provincial|ministry|district|commission|turnpike|division of highways)\b/;
const theirWork =
  /\b(?:concrete|paving|pavement|walks?|sidewalks?|curbs?|flatwork|work|construction|mix\w*|ramps?|materials|section)\b/;

/** "conform to the Standard Specifications of the State Department of Transportation": the agency answers for the mixture. */
function agency(statement: Statement): NamedFact[] {
  const sentence = sentenceWords(statement);
  const named =
    (agencies.test(sentence) && (agencyWords.test(sentence) || /\bthe standard specifications\b/.test(sentence))) ||
    /\b(?:class|mix\w*|concrete)\b.{0,40}\bof the (?:state|agency|department)'?s? (?:form|standard|specifications?)\b/.test(
      sentence,
    );
  if (!named || !complying.test(sentence) || statement.predication.from !== statement.sentence.predications[0]?.from)
    return [];
  if (statement.region === 'references' && !/\bshall\b/.test(sentence)) return [];
  if (
    !theirWork.test(sentence) ||
    /\b(?:subgrade|backfill|compaction|traffic control|aggregate base|base course|erosion|seeding|asphalt|bituminous|signs?|striping)\b/.test(
      sentence,
    )
  )
    return [];
  return [
    {
      kind: 'standard',
      ...said(statement, trimmed(statement.tokens, statement.sentence)),
      value: 'agency standard specifications',
      of: 'requirement',
    },
  ];
}

const sections = (statement: Statement, inside: readonly Designation[]): NamedFact[] =>
  inside
    .filter(({ kind }) => kind === 'section')
    .map((each) => ({ kind: 'section-reference', ...said(statement, each), value: each.name }));

const subjects: readonly (readonly [ElsewhereValue, RegExp])[] = [
  ['curing', /\bcur(?:e|ed|ing)\b/],
  ['cold-weather', /\b(?:cold|winter|freezing) ?-? ?weather|weather (?:protection|requirements)|\bhot and cold\b/],
  ['evaporation', /\bhot weather|evaporation\b/],
  ['exposure', /\bexposure (?:class\w*|categor\w*)\b/],
  ['w-cm', /\bw ?\/ ?cm?\b|\bwater ?[-/] ?cement\w*/],
  ['air-test', /\b(?:test\w*|sampl\w*)\b.{0,30}\bair\b|\bfield quality|\btesting\b|\bair tests?\b/],
  ['air', /\bair(?: content)?\b/],
  ['strength', /\bstrength\b|\bf ?' ?c\b/],
  ['hold-off', /\bde ?-? ?ic\w*|\bwinter care|\bfirst winter\b/],
  ['surface-water', /\bfinish\w*\b/],
];
const everything =
  /\b(?:all|cast ?-? ?in ?-? ?place|portland cement|pcc|the) ?(?:\w+ ){0,4}concrete\b|\bconcrete (?:materials|mix\w*|work|for|shall|and|is|to|:|as|see)|^concrete\b|\brequirements for all concrete\b|\bmix\w* (?:as|per|in|to)\b|\bpaving concrete\b|\bconcrete\b/;
const pointing =
  /\b(?:compl\w*|conform\w*|accordance|according|as (?:specified|indicated|shown|given|scheduled|noted|required)|specified|see|refer|per|follow\w*|are on|is on|shown on|meet|under|requirements of|by|from|governs?|as in)\b/;

const shortPointer = 8;
const mixtures = /\bmixtures?\b|\bmixes\b/;
const ofMixtures: readonly ElsewhereValue[] = ['exposure', 'air', 'w-cm', 'strength'];

/** "Cure as specified in Section 03 39 00", "strength as indicated on Drawings", "all concrete shall meet Section 03 30 00". */
function elsewhere(statement: Statement, inside: readonly Designation[]): NamedFact[] {
  const words = allWords(statement);
  if (statement.region === 'related' || statement.region === 'references' || statement.region === 'submittals')
    return [];
  if (!pointing.test(words) && statement.predication.force !== 'require') return [];
  const section = inside.find(({ kind }) => kind === 'section');
  const drawings =
    /\b(?:the drawings?|drawings|on (?:the )?plans|on [acls] ?- ?\d{3}|contract documents)\b/.test(words) ||
    inside.some(({ kind }) => kind === 'drawing');
  const table = /\btable 19\.3\.\d/.test(words) || (/\btable\b/.test(words) && /\b(?:aci|csa|en 206)\b/.test(words));
  const place = section?.name ?? (drawings ? 'Drawings' : table ? 'a table of the code' : undefined);
  const lead = leadWords(statement);
  if (!place || (section && lead === '' && !pointing.test(words))) return [];
  // "2.01 MIXTURES: A. As in Section 03 30 00.": a bare pointer speaks of what its heading names.
  const head = `${words} ${lead} ${words.split(' ').length <= shortPointer ? statement.heading : ''}`;
  const named = subjects.filter(([, say]) => say.test(head)).map(([value]) => value);
  const found = section && mixtures.test(head) ? [...new Set([...named, ...ofMixtures])] : named;
  const whole = section !== undefined && everything.test(head) && found.length === 0;
  const values: ElsewhereValue[] = whole ? ['everything'] : section || drawings || table ? found : [];
  return values.map((value) => ({
    kind: 'elsewhere',
    ...said(statement, trimmed(statement.tokens, statement.predication)),
    value,
    of: place,
  }));
}

/** The words before a colon belong to what follows: "Air content: per Table 19.3.3.1". */
const leadWords = ({ tokens, sentence, predication }: Statement): string =>
  sentence.from < predication.from && tokens[predication.from - 1]?.text === ':'
    ? tokens
        .slice(sentence.from, predication.from)
        .map(({ text }) => text)
        .join(' ')
    : '';

const airMethods =
  /^ASTM C(?:231|173)$|^AASHTO T (?:152|196|199|395)$|^AASHTO TP 118$|^CSA A23\.2-(?:4C|7C)$|^EN 12350-7$/;
const testing =
  /\b(?:test\w*|measur\w*|check\w*|sampl\w*|determin\w*|verif\w*|air content|total air|by|per|according|accordance)\b/;

export function tests(statement: Statement, designations: readonly Designation[]): NamedFact[] {
  if (['references', 'related', 'definitions', 'submittals'].includes(statement.region)) return [];
  const sentence = sentenceWords(statement);
  if (!testing.test(sentence)) return [];
  const { predication } = statement;
  const made = (value: TestedProperty, of?: string): NamedFact => ({
    kind: 'test',
    ...said(statement, trimmed(statement.tokens, predication)),
    value,
    ...(of && { of }),
  });
  const method = designations.find(
    ({ name, from }) => airMethods.test(name) && predication.from <= from && from < predication.to,
  );
  const facts: NamedFact[] = [];
  if (method) facts.push(made('air', method.name));
  else if (
    /\bair\b/.test(allWords(statement)) &&
    /\b(?:test\w*|check\w*|measur\w*|sampl\w*)\b/.test(allWords(statement)) &&
    !/\bair (?:temperature|is|falls|dry)/.test(sentence)
  )
    facts.push(made('air'));
  const about =
    /\bair\b|\bsampl\w*|\btest\w*/.test(sentence) &&
    statement.predication.from === statement.sentence.predications[0]?.from;
  if (
    !about ||
    (!/\bair\b/.test(sentence) && /\b(?:slump|strength|compressive|compaction|temperature)\b/.test(sentence))
  )
    return facts;
  if (/\b(?:each|every|first|once (?:per|each|every)|per \d|frequency|daily|loads? (?:each|per))\b/.test(sentence))
    facts.push(made('air frequency'));
  if (/\b(?:point of (?:discharge|placement|delivery)|truck|hose|chute|discharge|point of)\b/.test(sentence))
    facts.push(made('air sampling'));
  if (/\b(?:reject\w*|adjust\w*|retest\w*|out of range|outside|not be placed|do not place|miss)\b/.test(sentence))
    facts.push(made('air action'));
  if (/\b(?:certified|certification|grade i|technician|qualified|accredited|laboratory|agency)\b/.test(sentence))
    facts.push(made('air tester'));
  return facts;
}
