import type { Undecided } from '../../../plan/sureness/floor-of-answers';
import { formatQuantity } from '../../../quantity/format-quantity';

import { sayDecides } from '../sureness/say-decides';

/** The page of a home that has told too little. */
export const thinPage = {
  draft: 'DRAFT: too little is answered to advise anything yet, so this page names nothing to buy.',
  theseDecide: 'These answers decide',
  decides: ({ question, says }: Undecided) => `${says}. ${sayDecides[question]}.`,
  already: 'What can be said already',
  goalNotTold: (countedHours: number) =>
    `How long was not told: until it is, we count ${formatQuantity(countedHours, 'h')}.`,
  getReady:
    'Getting ready costs little and is worth doing whatever comes of this: lights, stored water (a gallon a person a day), a cooler, a paper list of phone numbers.',
  nothingRuledOut:
    'Nothing here is planned, sized or ruled out yet: a question that was not asked is no answer.',
  anyHome: 'Cautions any home needs',
  goOn: (home: string) => `Go on answering: lampkeeper ${home}.home.yaml`,
};
