import type { Way } from '../../home/home';
import { livedHome } from '../../home/measures/lived-home';
import { atEnd } from '../../quantity/at-end';
import { type Figure, figure } from '../../quantity/figure';
import { onceStored } from '../../routes/fuel/once-stored';
import type { Plan } from '../plan';
import { fuelHoursInWay } from '../ways/hours-in-way';
import { inWay } from '../ways/route-in-ways';
import { countedBy } from './counted-hours';
import { countedOdds } from './counted-odds';
import type { FigureId } from './figure-ids';

type OtherWayId = Extract<
  FigureId,
  'usual-hours' | 'usual-odds' | 'careful-usual-odds' | 'thrifty-odds' | 'careful-thrifty-odds'
>;

/** What the route advised does in the way of living that it is not sized for; null where both are alike. */
export function otherWay(plan: Plan): Readonly<Record<OtherWayId, Figure | null>> {
  const sizedFor = plan.advice.route.way;
  const alike = plan.waysOfLiving.measures.every(
    (one) => one.use !== 'thrifty' || one.saves.of !== 'must',
  );
  const odds = (way: Way, careful: boolean) =>
    alike || way === sizedFor ? null : countedOdds(plan, careful, way);
  return {
    'usual-hours': alike || sizedFor === 'usual' ? null : usualHours(plan),
    'usual-odds': odds('usual', false),
    'careful-usual-odds': odds('usual', true),
    'thrifty-odds': odds('thrifty', false),
    'careful-thrifty-odds': odds('thrifty', true),
  };
}

function usualHours(plan: Plan): Figure | null {
  const { route } = plan.advice;
  const hours = plan.waysOfLiving.routes.find(({ kind }) => kind === route.kind)?.usual.hours;
  if (hours === null || hours === undefined) return null;
  const { likely, careful } = hours;
  const counted = countedBy(plan);
  return figure({
    value: likely,
    low: Math.min(likely, careful),
    unit: 'h',
    source: {
      kind: 'formula',
      ends: 'careful-count',
      ...(counted !== null && { counted }),
    },
    ...(route.generator !== null && {
      as: () => byFuel(plan)!,
      endAs: () => atEnd(byFuel(plan)!, 'low'),
    }),
  });
}

/** By the fuel there is, with the cans filled where some are to be. */
function byFuel({ home, advice: { route }, waysOfLiving }: Plan): Figure | null {
  const stored = onceStored(livedHome(home, route.way), route);
  const usual = inWay(home, stored?.route ?? route, 'usual');
  return fuelHoursInWay(home, usual, waysOfLiving.season);
}
