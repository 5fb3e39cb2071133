import type { Home } from '../../home/home';
import type { Figure } from '../../quantity/figure';
import type { Route } from '../../routes/route';
import type { Finding } from '../../rules/rule';
import { moneySources } from '../money/money-sources';
import type { PlanMoney } from '../money/plan-money';

/** Every published source, table or practice the plan leans on, each once, in alphabetical order. */
export function sourcesOf(
  home: Home,
  routes: readonly Route[],
  cautions: readonly Finding[],
  money: PlanMoney,
): string[] {
  const cites = new Set<string>();
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
  cites.add('Weather: TMY3 station statistics, Wilcox and Marion 2008, NREL/TP-581-43156');
  return [...cites].sort((a, b) => a.localeCompare(b, 'en'));
}
