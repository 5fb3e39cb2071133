import { exactly } from './exactly';
import { sayFigureName } from './figure-names';
import { asAbove, from, head, shownElsewhere } from './lines';
import { endTitle } from './say-end';
import { step } from './step';
import { stepName } from './step-names';
import { how, notInPlan, said, shownAs, title } from './titles';

/** How a figure was worked out, in words. */
export const explain = {
  exactly,
  asAbove,
  endTitle,
  figureName: sayFigureName,
  from,
  head,
  how,
  notInPlan,
  said,
  shownAs,
  shownElsewhere,
  step,
  stepName,
  title,
};
