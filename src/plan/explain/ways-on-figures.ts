import { type Figure, figure } from '../../quantity/figure';
import { operand } from '../../quantity/figure-arithmetic';
import type { Plan } from '../plan';
import type { FigureId } from './figure-ids';
import { lineUsd, moreUsd } from './front-money';

type WaysOnId = Extract<
  FigureId,
  | 'whole-job-price'
  | 'more-money'
  | 'more-money-price'
  | 'little-more'
  | 'little-more-price'
  | 'shorter-goal'
  | 'one-room-price'
  | 'one-room-unit'
  | 'one-room-hours'
>;

/** What the ways on come to, as far as the papers name them; nothing of them where the money reaches the goal. */
export function waysOnFigures(plan: Plan): Readonly<Record<WaysOnId, Figure | null>> {
  const { home, advice } = plan;
  const { waysOn, wholeJob } = advice;
  const { moreMoney, littleMore, shorterGoal, oneRoom } = waysOn ?? NONE;
  return {
    'whole-job-price': wholeJob === null || moreMoney !== null ? null : wholeJob.costUsd,
    'more-money': moreMoney && moreUsd(moreMoney.line, moreMoney.moreUsd, home),
    'more-money-price': moreMoney && lineUsd(moreMoney.line),
    'little-more': littleMore && moreUsd(littleMore.line, littleMore.moreUsd, home),
    'little-more-price': littleMore && lineUsd(littleMore.line),
    'shorter-goal': shorterGoal && operand(shorterGoal.hours, 'h', 'nine-in-ten-hours'),
    'one-room-price': oneRoom && lineUsd(oneRoom.line),
    'one-room-unit': oneRoom && operand(oneRoom.unitsUsd, '$', 'unit-of-room', { kind: 'table' }),
    'one-room-hours': oneRoom && hoursOf(oneRoom),
  };
}

const NONE = { moreMoney: null, littleMore: null, shorterGoal: null, oneRoom: null };

function hoursOf({ line }: NonNullable<NonNullable<Plan['advice']['waysOn']>['oneRoom']>) {
  const own = line.route?.lasting.hours ?? null;
  if (line.hours === null || line.reaches) return null;
  const { likely, careful } = line.hours;
  if (own?.value === likely && own.low === careful) return own;
  const source = { kind: 'formula', ends: 'careful-count' } as const;
  return figure({
    value: likely,
    low: Math.min(likely, careful),
    unit: 'h',
    is: 'hours-with-room',
    source,
  });
}
