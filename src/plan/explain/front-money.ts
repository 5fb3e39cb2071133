import type { Line } from '../../advice/list/line';
import type { Home } from '../../home/home';
import { sourceOfAnswer } from '../../home/sources';
import { atEnd } from '../../quantity/at-end';
import { type Figure, figure } from '../../quantity/figure';
import { addFigures, operand, worked } from '../../quantity/figure-arithmetic';
import { priceOf } from '../../routes/costs';
import type { Plan } from '../plan';
import { thriftCostUsd } from '../thrift-cost';

const USD = { unit: '$' } as const;

/** What the household can spend, now and later, as it told us. */
function moneyTold({ facts }: Home): Figure {
  const told = (['budget-now', 'budget-later'] as const).filter((id) => facts.told(id));
  const each = told.map((id) =>
    operand(
      facts.number(id) ?? 0,
      '$',
      id === 'budget-now' ? 'money-now' : 'money-later',
      sourceOfAnswer(facts, id),
    ),
  );
  return addFigures(each, { ...USD, is: 'money-told' });
}

const above = (price: Figure, home: Home): Figure =>
  worked({ by: 'difference', of: [price, moneyTold(home)] }, USD);

/** How far the likely price is above the money told, at its likely value alone; null where it is not. */
export function aboveTold({ advice: { route }, counts, home }: Plan): Figure | null {
  return counts[route.kind].aboveTold === null ? null : likely(above(route.costUsd, home));
}

/** How far the high end of the price is above the money told; null where only the likely price is, or neither. */
export function highAboveTold({ advice: { route }, counts, home }: Plan): Figure | null {
  const none = counts[route.kind].highAbove === null;
  return none ? null : above(atEnd(route.costUsd, 'high'), home);
}

/** Of which the papers print no range. */
export function likely(one: Figure): Figure {
  const { value, unit, source } = one;
  return figure({ value, unit, source, as: () => one });
}

/** What the way of living of the route advised takes to get ready for; null where nothing. */
export function thriftPrice({ advice, waysOfLiving }: Plan): Figure | null {
  const usd = thriftCostUsd(advice);
  if (usd === 0) return null;
  const { thriftyUsd } = waysOfLiving;
  return figure({ value: usd, ...USD, source: thriftyUsd.source, as: () => thriftyUsd });
}

/** What is worth having beside the route, all of it together; null without any. */
export function besidePrice({ addOns }: Plan): Figure | null {
  if (addOns.length === 0) return null;
  const each = addOns.map(({ id }) => priceOf(id));
  return addFigures(each, USD);
}

/** The likely price of a line of the list, with what its way of living takes. */
export function lineUsd({ route, usd }: Line): Figure | null {
  return route === null ? null : withThrift(route.costUsd, usd - route.costUsd.value);
}

/** A price with what the way of living takes, likely and without its range. */
export function withThrift(price: Figure, thriftUsd: number): Figure {
  const thrift = thriftUsd > 0 ? [operand(thriftUsd, '$', 'thrift-more')] : [];
  return named(addFigures([price, ...thrift], USD));
}

/** How much more than the money told a line takes; null where no money was told. */
export function moreUsd(line: Line, byUsd: number, home: Home): Figure | null {
  const price = lineUsd(line);
  return byUsd <= 0 || price === null ? null : above(price, home);
}

function named(one: Figure): Figure {
  const { value, unit, source } = one;
  return figure({ value, unit, source, is: 'price-in-all', as: () => one });
}
