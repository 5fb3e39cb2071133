import type { OldPriceIn } from '../../../plan/money/plan-money';
import { inSentence, listOf } from '../list-of';

/** A price more than two years old, with the routes it is part of. */
export const sayOldPrice = ({ price, titles }: OldPriceIn): string =>
  `${price} It is part of: ${listOf(titles.map(inSentence))}.`;
