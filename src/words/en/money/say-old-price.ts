import type { OldPrice } from '../../../bill/lifecycle/cost-part';
import type { OldPriceIn } from '../../../plan/money/plan-money';
import { inSentence, listOf } from '../list-of';

/** A price more than two years old, with the routes it is part of. */
export const sayOldPrice = ({ price, titles }: OldPriceIn): string =>
  `${sayPrice(price)} It is part of: ${listOf(titles.map(inSentence))}.`;

/** "Your quote for "Transfer switch" is from 2021, 5 years old. Ask again." */
export const sayPrice = ({ name, year, ageYears, quoted }: OldPrice): string =>
  `${quoted ? 'Your quote' : 'The price range'} for "${name}" is from ${year}, ${ageYears} years old. Ask again.`;
