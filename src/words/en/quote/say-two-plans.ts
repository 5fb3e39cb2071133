import type { TwoPlans } from '../../../plan/quote/two-plans';
import { formatQuantity } from '../../../quantity/format-quantity';
import { inSentence } from '../list-of';
import { sayRouteTitle } from '../routes/route-titles';

const hours = (h: number) => formatQuantity(Math.round(h), 'h');

/** One plan as the lines that are laid beside those of another. */
export const twoPlans = {
  title: (one: string, other: string) => `Two plans: ${one} and ${other}`,
  same: (line: string) => `Both: ${line}`,
  each: (home: string, line: string) => `${home}: ${line}`,
  buy: ({ called, usd }: TwoPlans['buy']) =>
    `${inSentence(sayRouteTitle(called))}, about ${formatQuantity(usd, '$')}.`,
  lasts: (lasting: TwoPlans['lasts']) =>
    lasting === null
      ? 'no end is foreseen, or it gives no power.'
      : `about ${hours(lasting.likely)}, careful count ${hours(lasting.careful)}.`,
  carries: ({ carried, of }: TwoPlans['carries']) =>
    `${carried === of ? `all ${of} of` : `${carried} of ${of} of`} what must keep running.`,
  odds: (inHundred: string | null) =>
    inHundred === null
      ? 'not counted.'
      : `through ${inHundred} of 100 outages of the length asked for.`,
  state: (draft: boolean) => (draft ? 'a draft: some answers are open.' : 'enough is told for it.'),
  headings: ['The job', 'The purchase', 'How long', 'What it carries', 'How often', 'How sure'],
};
