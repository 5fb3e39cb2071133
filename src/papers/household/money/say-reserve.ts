import type { PlanMoney } from '../../../plan/money/plan-money';
import type { Words } from '../../../words/words';
import { table } from '../../markdown/table';

/** What the reserve costs, for somebody who buys a battery for the first time. */
export function sayReserve({ reserve, reserveOf, routes }: PlanMoney, words: Words): string[] {
  const route = routes.find((one) => one.kind === reserveOf);
  if (reserve.length === 0 || route === undefined) return [];
  const say = words.household.reserve;
  const most = Math.max(...reserve.map((r) => Math.round(r.savings)));
  // From the dollars shown, so that the two columns come to one sum on every line.
  const givenUp = (savings: number) => most - Math.round(savings);
  const row = (r: PlanMoney['reserve'][number]) => [
    say.share(r.share, r.chosen),
    words.quantity(r.keptKwh, 'kWh'),
    say.inHundred(r.odds),
    words.usd(r.savings),
    words.usd(givenUp(r.savings)),
  ];
  const gainsNothing = reserve.every((r) => givenUp(r.savings) === 0);
  return [
    say.about(words.routeTitle(route.called), gainsNothing),
    table(say.columns, reserve.map(row)),
  ];
}
