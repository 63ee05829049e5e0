/** The documents the tables point into, each named once: a pointer is the document with a clause and how it is known. */
import type { Known, Origin } from '../model/table.ts';

/** A value whose document was not itself read is seen second hand, which is the usual case here. */
const pointing =
  (document: string, edition: string) =>
  (clause: string, known: Known = 'seen second hand'): Origin =>
    Object.freeze({ document, edition, clause, known });

export const aci318of19 = pointing('ACI 318', '19');
export const aci318of14 = pointing('ACI 318', '14');
export const aci332of20 = pointing('ACI 332', '20');
export const aci201guide = pointing('ACI 201.2R', '16');
export const aci201guideOld = pointing('ACI 201.2R', 'older editions');
export const aci302guide = pointing('ACI 302.1R', '15');
export const aci306guide = pointing('ACI 306R', '16');
export const aci306specification = pointing('ACI 306.1', '90');
export const ibc = pointing('IBC', '2015 to 2021');
export const irc = pointing('IRC', '2006 to 2018');
export const csaA23 = pointing('CSA A23.1', '14 and 19');
export const en206 = pointing('EN 206', '2013');
export const astmC33 = pointing('ASTM C33/C33M', '24a');
export const astmC94 = pointing('ASTM C94/C94M', '07 and later');
export const astmC309 = pointing('ASTM C309', '19');
export const mixtureHandbook = pointing('Design and Control of Concrete Mixtures', '14th edition');
export const scalingSheet = pointing('CIP 2', '1998 and later');
export const unitGuide = pointing('NIST SP 811', '2008');

/** No governing document was found: what the trade does, named by its subject. */
export const practice = (subject: string): Origin =>
  Object.freeze({ document: 'trade practice', edition: 'none', clause: subject, known: 'common practice' });
