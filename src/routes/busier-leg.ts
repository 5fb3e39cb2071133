import type { Load, Season } from '../home/home';
import { peakOf } from '../home/loads/demand';
import { shareOverLegs } from '../physics/service-load/share-over-legs';

/** What the busier half of a 120/240 V source has to carry. */
export interface BusierLeg {
  /** Running, W, likely. */
  readonly watts: number;
  /** The hardest start of the 120 V loads of that half on top of what runs there, VA. */
  readonly startVa: number;
}

/**
 * The busier half of a 120/240 V source by two ways of sharing the 120 V loads over it, as an electrician may: by what they
 * draw, and by how hard they start. Half of each 240 V load is on each half. In the hardest of these seasons; starts at `end`.
 */
export function busierLegs(
  loads: readonly Load[],
  given: { seasons: readonly Season[]; end: 'value' | 'high' },
): BusierLeg[] {
  const on = loads.filter((load) => !load.offInOutage);
  const both = peakOf(
    on.filter((load) => load.volts === 240),
    given.seasons,
  );
  const running = (load: Load) => load.runningWatts.value;
  const starting = (load: Load) => (load.startVa ?? load.runningVa)[given.end];
  return [running, starting].map((weight) => {
    const legs = shared(on, weight).map((leg) => peakOf(leg, given.seasons));
    return {
      watts: Math.max(...legs.map((leg) => leg.runningWatts.value)) + both.runningWatts.value / 2,
      startVa:
        Math.max(...legs.map((leg) => leg.startVa[given.end])) + both.runningVa[given.end] / 2,
    };
  });
}

function shared(on: readonly Load[], weight: (load: Load) => number): Load[][] {
  const small = on
    .filter((load) => load.volts === 120)
    .map((load) => ({ amps: weight(load) / 120, load }));
  const { legA, legB } = shareOverLegs(small);
  return [legA, legB].map((leg) => leg.map((one) => one.load));
}
