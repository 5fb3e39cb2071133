import type { PlanMoney } from '../../../plan/money/plan-money';
import { formatQuantity } from '../../../quantity/format-quantity';
import type { Words } from '../../../words/words';

/** What the reserve costs, for somebody who buys a battery for the first time. */
export function sayReserve({ reserve, reserveOf, routes }: PlanMoney, words: Words): string[] {
  const route = routes.find((one) => one.kind === reserveOf);
  if (reserve.length === 0 || route === undefined) return [];
  const most = Math.max(...reserve.map((r) => Math.round(r.savings)));
  // From the dollars shown, so that the two columns come to one sum on every line.
  const givenUp = (savings: number) => most - Math.round(savings);
  const row = (r: PlanMoney['reserve'][number]) =>
    `| ${Math.round(100 * r.share)} %${r.chosen ? ' (kept in this plan)' : ''} | ${formatQuantity(r.keptKwh, 'kWh')} | ${inHundred(r.odds)} | ${words.usd(r.savings)} | ${words.usd(givenUp(r.savings))} |`;
  const free = reserve.every((r) => givenUp(r.savings) === 0)
    ? ' Here it gives up nothing, because the battery has nothing to earn: keep all of it.'
    : '';
  return [
    `What keeping charge for outages costs (${route.title.toLowerCase()}): a battery can work for the bill or wait for an outage. What is kept for outages is never used for the bill.${free}`,
    [
      '| Kept for outages | That is | Outages of your length carried, if one finds it at this level | Off the bill a year, after wear | Given up a year |',
      '|---|---|---|---|---|',
      ...reserve.map(row),
    ].join('\n'),
  ];
}

function inHundred(odds: number): string {
  if (odds > 0.995) return 'more than 99 in 100';
  if (odds < 0.005) return 'fewer than 1 in 100';
  return `${Math.round(100 * odds)} in 100`;
}
