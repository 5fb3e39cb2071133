import type { OldPrice } from '../../../bill/lifecycle/cost-part';
import type { OldPriceIn } from '../../../plan/money/plan-money';
import { inSentence, listOf } from '../list-of';
import { sayPart } from '../parts/say-part';
import { sayRouteTitle } from '../routes/route-titles';

/** A price more than two years old, with the routes it is part of. */
export const sayOldPrice = ({ price, routes }: OldPriceIn): string =>
  `${sayPrice(price)} It is part of: ${listOf(routes.map((one) => inSentence(sayRouteTitle(one))))}.`;

/** "Your quote for "Transfer switch" is from 2021, 5 years old. Ask again." */
export const sayPrice = ({ called, year, ageYears, quoted }: OldPrice): string =>
  `${quoted ? 'Your quote' : 'The price range'} for "${sayPart(called)}" is from ${year}, ${ageYears} years old. Ask again.`;
