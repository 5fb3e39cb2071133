import type { Home } from '../../home/home';
import type { Cite } from '../../quantity/cite';
import type { Figure } from '../../quantity/figure';
import type { Route } from '../../routes/route';
import type { Finding } from '../../rules/rule';
import { moneySources } from '../money/money-sources';
import type { PlanMoney } from '../money/plan-money';

const WEATHER_CITE: Cite = [
  {
    of: 'weather',
    ref: 'TMY3 station statistics, Wilcox and Marion 2008, NREL/TP-581-43156',
  },
];

/** Every published source, table or practice the plan leans on; one may stand twice. */
export function sourcesOf(
  home: Home,
  routes: readonly Route[],
  cautions: readonly Finding[],
  money: PlanMoney,
): Cite[] {
  const cites = new Set<Cite>();
  const add = (figure: Figure | null) => {
    if (figure === null) return;
    if (figure.source.cite !== undefined) cites.add(figure.source.cite);
    for (const part of figure.source.from ?? []) add(part);
  };
  for (const load of home.loads) {
    add(load.runningWatts);
    add(load.startVa);
    add(load.kwhPerDay.winter);
  }
  for (const route of routes) {
    for (const part of route.parts) add(part.costUsd);
    add(route.lasting.hours);
    add(route.fuel?.perDay ?? null);
  }
  for (const caution of cautions) cites.add(caution.cite);
  for (const cite of moneySources(home, money)) cites.add(cite);
  cites.add(WEATHER_CITE);
  return [...cites];
}
