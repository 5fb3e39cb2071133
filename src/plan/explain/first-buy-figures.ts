import { sourceOfAnswer } from '../../home/sources';
import type { Figure } from '../../quantity/figure';
import { addFigures, operand, worked } from '../../quantity/figure-arithmetic';
import type { Plan } from '../plan';
import { thriftCostUsd } from '../thrift-cost';
import type { FigureId } from './figure-ids';
import { likely, withThrift } from './front-money';

type FirstId = Extract<
  FigureId,
  'money-now' | 'short-now' | 'first-price' | 'rest-price' | 'thrift-until'
>;

const USD = { unit: '$' } as const;
const NONE = {
  'money-now': null,
  'short-now': null,
  'first-price': null,
  'rest-price': null,
  'thrift-until': null,
};

/** What the money there now buys first, and what waits; nothing of it where the money of now is enough. */
export function firstBuyFigures(plan: Plan): Readonly<Record<FirstId, Figure | null>> {
  const { advice, home, waysOfLiving } = plan;
  const { firstBuy, route } = advice;
  if (firstBuy === null) return NONE;
  const { nowUsd, part, thriftUsd } = firstBuy;
  const now = operand(nowUsd, '$', 'money-now', sourceOfAnswer(home.facts, 'budget-now'));
  const whole = withThrift(route.costUsd, thriftCostUsd(advice));
  const bought = new Set(part?.parts.map(({ equipmentClass }) => equipmentClass));
  const rest = route.parts.filter(({ equipmentClass }) => !bought.has(equipmentClass));
  const told = waysOfLiving.thriftyUsd;
  return {
    ...NONE,
    'money-now': now,
    ...(part === null
      ? {
          'short-now': likely(worked({ by: 'difference', of: [whole, now] }, USD)),
          'thrift-until': thriftUsd === null ? null : likely(told),
        }
      : {
          'first-price': withThrift(sumOf(part.parts), part.usd - sumOf(part.parts).value),
          'rest-price': likely(sumOf(rest)),
        }),
  };
}

const sumOf = (parts: Plan['advice']['route']['parts']): Figure =>
  addFigures(
    parts.map(({ costUsd }) => costUsd),
    USD,
  );
