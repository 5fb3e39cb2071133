import type { PlanMoney } from '../../../plan/money/plan-money';
import type { Words } from '../../../words/words';
import { bullets } from '../../markdown/bullets';

/** What the routes with a battery or solar do between outages; those that do the same stand together. */
export function sayBetween({ routes, wearPerKwhUsd }: PlanMoney, words: Words): string[] {
  const say = words.household.between;
  const alike = new Map<string, { does: string; gains: string; names: string[] }>();
  for (const { called, between, batteryLife } of routes) {
    if (between === null) continue;
    const does = say.doing(between.worthRunning ? between.strategy : 'wait');
    const gains = say.gains(between, batteryLife, wearPerKwhUsd);
    const group = alike.get(`${does} ${gains}`) ?? { does, gains, names: [] };
    group.names.push(say.kept(words.routeTitle(called), Math.max(...between.keptKwh)));
    alike.set(`${does} ${gains}`, group);
  }
  if (alike.size === 0) return [];
  const lines = [...alike.values()].map(({ does, names, gains }) => say.line(does, names, gains));
  return [say.title, bullets(lines)];
}

/** The bill of July without and with a route, line by line. */
export function sayJulyBills({ julyBills }: PlanMoney, words: Words): string[] {
  if (julyBills === null) return [];
  const say = words.household.between;
  const { called, before, after } = julyBills;
  return [
    say.july(words.routeTitle(called)),
    bullets(words.bill(before)),
    say.andWith,
    bullets(words.bill(after)),
  ];
}
