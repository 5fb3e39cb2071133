import { type PaperBill, paperBill } from '../../bill/tariff/paper-bill';
import type { RouteKind } from '../../kinds/route-kind';
import type { RouteTitle } from '../../kinds/route-title';
import type { MoneyOfRoute } from './plan-money';

/** The bill of July as a paper bill prints it, without a route and with it. */
export interface JulyBills {
  readonly called: RouteTitle;
  readonly before: PaperBill;
  readonly after: PaperBill;
}

const JULY = 6;

/** A bill that differs by less is the same bill, $ a year. */
const SAME_BILL_USD = 1;

/** Of the route advised where it does something on the bill, else of the battery looked at; null where the bill stays the same. */
export function julyBills(
  routes: readonly MoneyOfRoute[],
  { advised, battery }: { advised: RouteKind; battery: RouteKind | null },
): JulyBills | null {
  const ofKind = (kind: RouteKind | null) => routes.find((route) => route.kind === kind);
  const own = ofKind(advised);
  const shown = own?.between ? own : ofKind(battery);
  const between = shown?.between;
  if (!shown || !between) return null;
  const { before, after } = between;
  if (Math.abs(before.total - after.total) < SAME_BILL_USD) return null;
  return {
    called: shown.called,
    before: paperBill(before.months[JULY]!),
    after: paperBill(after.months[JULY]!),
  };
}
