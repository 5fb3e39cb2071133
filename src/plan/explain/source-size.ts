import { isPack } from '../../kinds/ask-traits';
import { traitsOf } from '../../kinds/route-traits';
import { type Figure, figure } from '../../quantity/figure';
import { operand } from '../../quantity/figure-arithmetic';
import { isOwned } from '../../routes/costs';
import { LOAD_SHARE } from '../../routes/fit-power';
import type { Plan } from '../plan';

/** Power of the generator, inverter or pack planned, and what it must run and start; null without one. */
export function sourceSize({ advice: { route } }: Plan): Figure | null {
  const { power, generator, kind, parts } = route;
  if (power === null) return null;
  const { continuousWatts, startVa, runningWatts, startDemandVa } = power;
  const plain = traitsOf[kind].vehicle || isPack(traitsOf[kind]);
  const alone = generator !== null && route.usableKwh === null;
  return figure({
    value: continuousWatts,
    unit: 'W',
    source: {
      kind: 'formula',
      counted: {
        code: 'size-that-holds',
        isTheirs: parts.some(isOwned),
        givesWatts: alone ? 1000 * generator.siteKw : continuousWatts,
        mostShare: plain ? null : LOAD_SHARE,
        runningWatts: runningWatts.value,
        startVa,
        startDemandVa: startDemandVa.value,
      },
    },
  });
}

/** A size that is bought, or that the household has; null without one. */
export function sizeOf({ advice: { route } }: Plan, size: number | null, unit: 'kWh' | 'kW') {
  if (size === null || size === 0) return null;
  const theirs = route.parts.some(({ called }) => called.code.startsWith('own-'));
  return operand(size, unit, theirs ? 'size-with-own' : 'size-sold');
}
