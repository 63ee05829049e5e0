/** Which words in an article's title tell what the article is about; the first that meets wins. */
import type { Region } from '../../../rules/model/specification.ts';

export const regionWords: readonly { readonly region: Region; readonly words: RegExp }[] = [
  { region: 'related', words: /related (?:sections?|work|documents?|requirements?)/ },
  { region: 'references', words: /references?\b|standards? (?:cited|referenced)|codes and standards|normative/ },
  { region: 'definitions', words: /definitions?|abbreviations|terms\b/ },
  { region: 'submittals', words: /submittals?|samples?\b|shop drawings|information to be sent/ },
  { region: 'schedule', words: /schedule\b|legend/ },
  { region: 'weather', words: /cold|hot|winter|weather|frost|temperature|season|freezing|snow/ },
  // "Curing materials" names products; the duty to cure stands elsewhere.
  { region: 'materials', words: /\b(?:curing|concrete|finishing) (?:materials|products|compounds?)\b|admixtures?/ },
  { region: 'curing', words: /\bcur(?:e|ing)\b/ },
  {
    region: 'mixtures',
    words: /\bmix(?:es|tures?|ing)?\b|proportion|design criteria|concrete classes|strength|performance/,
  },
  { region: 'finishing', words: /finish|texture|troweling|trowelling|floating|brooming/ },
  { region: 'placing', words: /plac(?:ing|ement)|pouring|concreting|consolidat|conveying|casting/ },
  { region: 'joints', words: /\bjoints?\b|sealants?|fillers?/ },
  { region: 'field-quality', words: /field quality|testing|tests?\b|inspection|acceptance|sampling/ },
  { region: 'quality', words: /quality|qualifications?|meetings?|mock-?up/ },
  { region: 'delivery', words: /delivery|storage|handling|batch|truck|transport|ready-?mix/ },
  { region: 'repair', words: /repairs?\b|patching|defects|defective|surface repairs/ },
  {
    region: 'closeout',
    words: /closeout|maintenance|owner|opening to traffic|protection|first winter|de-?ic|cleaning|winter care/,
  },
  { region: 'preparation', words: /preparation|subgrade|base\b|subbase|formwork|forms\b|examination|grading/ },
  { region: 'materials', words: /materials?\b|products?\b|aggregates?|cement|admixtures?|accessories|manufacturers/ },
  { region: 'summary', words: /summary|scope|general|description|section includes|exposure|design/ },
];
