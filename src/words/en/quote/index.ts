import { beside, blankQuote, lineNames, sayLaidLine, sayQuoteCaution } from './say-beside';
import { twoPlans } from './say-two-plans';

/** Words of a quote beside a plan, and of two plans beside each other. */
export const quotes = {
  ...beside,
  lineNames,
  line: sayLaidLine,
  caution: sayQuoteCaution,
  blank: blankQuote,
  twoPlans,
};
