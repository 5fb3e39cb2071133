import { exactly } from './exactly';
import { asAbove, from, head } from './lines';
import { endTitle } from './say-end';
import { step } from './step';
import { stepName } from './step-names';
import { how, notInPlan, said, title } from './titles';

/** How a figure was worked out, in words. */
export const explain = {
  exactly,
  asAbove,
  endTitle,
  from,
  head,
  how,
  notInPlan,
  said,
  step,
  stepName,
  title,
};
