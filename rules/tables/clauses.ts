/** Where each subject stands in each code, and the guides that speak where no code does: what the rules cite. */
import type { CodeId } from '../model/project.ts';
import type { Citation } from '../model/rule.ts';
import type { Known, Origin } from '../model/table.ts';
import * as documents from './documents.ts';

/** Clauses by code; the first entry serves for codes that are not listed. */
export type Clauses = Readonly<Partial<Record<CodeId, readonly Citation[]>>>;

const cited = ({ document, edition, clause, known }: Origin): Citation => ({
  document,
  edition,
  clause,
  status: known,
});
const at = (document: string, edition: string, clause: string, status: Known): Citation => ({
  document,
  edition,
  clause,
  status,
});

const aci19 = (clause: string, known?: Known) => cited(documents.aci318of19(clause, known));
const aci14 = (clause: string, known?: Known) => cited(documents.aci318of14(clause, known));
const aci25 = (clause: string) => at('ACI 318', '25', clause, 'seen second hand');
const csa = (clause: string, known: Known = 'from memory') => cited(documents.csaA23(clause, known));
const en206 = (clause: string, known?: Known) => cited(documents.en206(clause, known));
const pem = (clause: string) => at('AASHTO R 101', 'current', clause, 'from memory');
const c94Air = cited(documents.astmC94('section on air content'));
const floorAir = cited(documents.aci302guide('air in floors to be trowelled'));
const c231 = at('ASTM C231/C231M', 'current', 'scope', 'seen second hand');
const coldDefinition = cited(documents.aci306guide('1.1'));
const coldSpecification = cited(documents.aci306specification('whole'));

/** Nonstructural concrete: strength by freeze-thaw class, with the air of ACI 318. */
const ibcNonstructural = cited(documents.ibc('1904.2'));
const ircWeathering = cited(documents.irc('Table R402.2'));
const ircAir = cited(documents.irc('Table R402.2, footnote'));
const groundSlabs = aci19('1.4.8');
const mixtureTable = 'Table 19.3.2.1';
const plainFootnote = 'Table 19.3.2.1, footnote on plain concrete';
const capsTable = '26.4.2.2(b), Table 26.4.2.2(b)';

const undone = (citation: Citation): Citation => ({ ...citation, protects: true });

export const clauses = {
  exposure: {
    'aci-318-19': [aci19('19.3.1.1, Table 19.3.1.1'), groundSlabs],
    'aci-318-14': [aci14('19.3.1.1, Table 19.3.1.1')],
    'aci-318-25': [aci25('Table 19.3.1.1')],
    ibc: [ibcNonstructural],
    irc: [cited(documents.irc('Table R301.2')), ircWeathering],
    'csa-a23-1-19': [csa('Table 1', 'seen second hand')],
    'en-206': [en206('4.1, Table 1', 'from memory')],
    'aashto-r-101': [pem('freezing and thawing')],
  },
  air: {
    'aci-318-19': [aci19('19.3.3.1, Table 19.3.3.1')],
    'aci-318-14': [aci14('19.3.3.1, Table 19.3.3.1')],
    'aci-318-25': [aci25('Table 19.3.3.1')],
    ibc: [ibcNonstructural],
    irc: [ircAir],
    'csa-a23-1-19': [csa('Tables 2 and 4')],
    'en-206': [en206('Table F.1')],
    'aashto-r-101': [pem('air')],
  },
  'air-low': {
    'aci-318-19': [aci19('19.3.3.1, Table 19.3.3.1'), aci19('19.3.3.6'), c94Air],
    'aci-318-14': [aci14('19.3.3.1, Table 19.3.3.1'), aci14('19.3.3.3', 'from memory'), c94Air],
    ibc: [ibcNonstructural, c94Air],
    irc: [ircAir],
    'csa-a23-1-19': [csa('Table 4')],
    'en-206': [en206('Table F.1')],
  },
  'air-ban': {
    'aci-318-19': [aci19('19.3.3'), floorAir],
    'aci-318-14': [aci14('19.3.3'), floorAir],
    ibc: [ibcNonstructural, floorAir],
    irc: [ircAir, floorAir],
    'csa-a23-1-19': [csa('4.3.3')],
    'en-206': [en206('Table F.1')],
  },
  'air-tolerance': {
    'aci-318-19': [c94Air, undone(aci19('19.3.3.1, Table 19.3.3.1'))],
    'aci-318-14': [c94Air, undone(aci14('19.3.3.1, Table 19.3.3.1'))],
    ibc: [c94Air, undone(ibcNonstructural)],
    irc: [c94Air, undone(ircAir)],
    'csa-a23-1-19': [csa('Table 4', 'seen second hand')],
  },
  'air-test': {
    'aci-318-19': [aci19('19.3.3.2'), c231],
    'aci-318-14': [aci14('19.3.3.2', 'from memory'), c231],
    ibc: [c231, undone(ibcNonstructural)],
    irc: [c231, undone(ircAir)],
    'csa-a23-1-19': [at('CSA A23.2', '19', '4C', 'from memory')],
    'en-206': [at('EN 12350-7', 'current', 'scope', 'from memory')],
    'aashto-r-101': [at('AASHTO T 152', 'current', 'scope', 'seen second hand')],
  },
  'w-cm': {
    'aci-318-19': [aci19(plainFootnote), groundSlabs],
    'aci-318-14': [aci14(plainFootnote)],
    'aci-318-25': [aci25(mixtureTable)],
    ibc: [ibcNonstructural, aci19(plainFootnote)],
    irc: [ircWeathering, cited(documents.aci332of20('exposure table'))],
    'csa-a23-1-19': [csa('Table 2')],
    'en-206': [en206('Table F.1')],
    'aashto-r-101': [pem('freezing and thawing')],
  },
  strength: {
    'aci-318-19': [aci19(mixtureTable), groundSlabs, ibcNonstructural],
    'aci-318-14': [aci14(mixtureTable), ibcNonstructural],
    'aci-318-25': [aci25(mixtureTable)],
    ibc: [ibcNonstructural],
    irc: [ircWeathering],
    'csa-a23-1-19': [csa('Table 2', 'seen second hand')],
    'en-206': [en206('Table F.1')],
  },
  scm: {
    'aci-318-19': [aci19(capsTable)],
    'aci-318-14': [aci14(capsTable)],
    ibc: [aci19(capsTable), undone(ibcNonstructural)],
    irc: [cited(documents.irc('R402.2'))],
    'csa-a23-1-19': [csa('Table 2')],
    'en-206': [en206('Table F.1')],
  },
  chloride: {
    'aci-318-19': [aci19(mixtureTable), aci19('26.4', 'from memory')],
    'aci-318-14': [aci14(mixtureTable), aci14('26.4', 'from memory')],
    ibc: [cited(documents.ibc('1901.2', 'from memory')), aci19(mixtureTable)],
    irc: [cited(documents.irc('R402.2', 'from memory')), undone(ircWeathering)],
    'csa-a23-1-19': [csa('chloride ion content')],
    'en-206': [en206('5.2.8', 'from memory')],
  },
  curing: {
    'aci-318-19': [aci19('26.5.3.2')],
    'aci-318-14': [aci14('26.5.3.2')],
    ibc: [cited(documents.ibc('1901.2', 'from memory')), aci19('26.5.3.2'), undone(ibcNonstructural)],
    irc: [aci19('26.5.3.2'), undone(ircWeathering)],
    'csa-a23-1-19': [csa('curing table', 'seen second hand')],
    'en-206': [at('EN 13670', '2009', '8.5, Annex F', 'from memory')],
  },
  'cold-weather': {
    'aci-318-19': [coldDefinition, coldSpecification, aci19('26.5.4', 'from memory')],
    'aci-318-14': [coldDefinition, coldSpecification, aci14('26.5.4', 'from memory')],
    ibc: [coldDefinition, coldSpecification, undone(ibcNonstructural)],
    irc: [coldDefinition, coldSpecification, undone(ircWeathering)],
    'csa-a23-1-19': [csa('cold weather')],
    'en-206': [at('EN 13670', '2009', '8.5', 'from memory')],
  },
} as const satisfies Readonly<Record<string, Clauses>>;

/** Guides and reports, and the plain word where no document is named. */
export const grounds = {
  siteWater: cited(documents.astmC94('water added at the site')),
  finishingWater: cited(documents.scalingSheet('how to prevent scaling')),
  harmfulDeicers: cited(documents.scalingSheet('de-icing chemicals')),
  scalingReview: at(
    'Review of concrete scaling, 29th International Conference on Cement Microscopy',
    '2007',
    'abstract',
    'seen',
  ),
  floorGuide: cited(documents.aci302guide('finishing', 'from memory')),
  parkingGuide: at('ACI 330R', '92', '4.5.2', 'seen second hand'),
  hardTrowel: at('ASCC position statement', 'no. 1', 'whole', 'seen second hand'),
  trowelBan: cited(documents.csaA23('section 7, finishing')),
  retarder: at('ACI 308.1', '11', 'definitions', 'seen second hand'),
  curingMethods: at('ACI 308.1', '11', 'methods', 'from memory'),
  coldCuring: cited(documents.aci306guide('curing near freezing')),
  drying: cited(documents.mixtureHandbook('chapter on freezing and de-icers')),
  strengthBeforeSalts: cited(documents.aci201guide('freezing and thawing chapter', 'from memory')),
  sealers: at('State highway research report', '73-R1', 'air and coatings', 'seen'),
  commonPractice: { document: 'trade practice', edition: '', clause: '', status: 'common practice' },
} as const satisfies Readonly<Record<string, Citation>>;
