import { WEAR_PER_KWH } from '../../../bill/lifecycle/battery-wear';
import { paperBill } from '../../../bill/tariff/paper-bill';
import type { BetweenOutages } from '../../../plan/money/between-outages';
import type { MoneyOfRoute } from '../../../plan/money/plan-money';
import type { Words } from '../../../words/words';
import { bullets } from '../../markdown/bullets';

/** A bill that differs by less is the same bill, $ a year. */
const SAME_BILL_USD = 1;
const JULY = 6;

/** What the routes with a battery or solar do between outages; those that do the same stand together. */
export function sayBetween(routes: readonly MoneyOfRoute[], words: Words): string[] {
  const say = words.household.between;
  const alike = new Map<string, { does: string; gains: string; names: string[] }>();
  for (const { called, between, batteryLife } of routes) {
    if (between === null) continue;
    const does = say.doing(between.worthRunning ? between.strategy : 'wait');
    const gains = say.gains(between, batteryLife, WEAR_PER_KWH);
    const group = alike.get(`${does} ${gains}`) ?? { does, gains, names: [] };
    group.names.push(say.kept(words.routeTitle(called), Math.max(...between.keptKwh)));
    alike.set(`${does} ${gains}`, group);
  }
  if (alike.size === 0) return [];
  const lines = [...alike.values()].map(({ does, names, gains }) => say.line(does, names, gains));
  return [say.title, bullets(lines)];
}

/** The bill of July without and with the route advised, line by line. */
export function sayBillOf(own: MoneyOfRoute | undefined, words: Words): string[] {
  const between = own?.between;
  if (!own || !between) return [];
  if (Math.abs(between.before.total - between.after.total) < SAME_BILL_USD) return [];
  const say = words.household.between;
  const july = (bill: BetweenOutages['before']) =>
    bullets(words.bill(paperBill(bill.months[JULY]!)));
  return [
    say.july(words.routeTitle(own.called)),
    july(between.before),
    say.andWith,
    july(between.after),
  ];
}
