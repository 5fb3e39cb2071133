import { figure } from '../../quantity/figure';
import { practiceRange } from '../../tables/practice-figures';
import type { Load } from '../home';
import type { LoadContext } from './context';
import { makeLoad } from './make-load';

/** Power of the charger of a lift with its own battery. */
const CHARGER_WATTS = practiceRange('stair-lift-charger-watts');

/** A stair lift: with its own battery it only charges, else its motor starts on the backup. Not known counts as without. */
export function stairLift({ facts }: LoadContext): Load[] {
  if (!facts.has('access-lifts', 'stairlift')) return [];
  const restsOn = ['access-lifts', 'stairlift-battery'] as const;
  if (!facts.is('stairlift-battery', 'yes')) {
    return [makeLoad('stairlift', { rank: 'must', restsOn })];
  }
  const runningWatts = figure({
    value: CHARGER_WATTS.likely,
    low: CHARGER_WATTS.low,
    high: CHARGER_WATTS.high,
    unit: 'W',
    name: 'lift-charger-power',
    source: { kind: 'assumed', is: 'lift-with-battery' },
  });
  const lift = makeLoad('stairlift', {
    called: { code: 'lift-charger' },
    rank: 'must',
    runningWatts,
    restsOn,
  });
  // The energy of the trips is the same; only the motor's start is the lift battery's own affair.
  const asTaken = makeLoad('stairlift', { rank: 'must', restsOn }).kwhPerDay;
  return [{ ...lift, startVa: null, startAmps: null, kwhPerDay: asTaken }];
}
