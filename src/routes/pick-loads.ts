import type { Home, Load, Rank } from '../home/home';
import type { LeftOut } from './route';

/** Loads of these ranks, life support first, that are not switched off in every outage. */
export function loadsOf(home: Home, ranks: readonly Rank[]): Load[] {
  const chosen = home.loads.filter((load) => ranks.includes(load.rank) && !load.offInOutage);
  return chosen.sort((a, b) => Number(b.life) - Number(a.life));
}

/** Split loads into those an ordinary outlet feeds and those it cannot, with the reason. */
export function splitPlugIn(
  loads: readonly Load[],
  gives: 120 | 240 = 120,
): { plugIn: Load[]; leftOut: LeftOut[] } {
  const leftOut = loads
    .filter((load) => !load.plugIn)
    .map((load) => ({
      name: load.name,
      must: load.rank === 'must',
      why: whyNot(load, gives),
    }));
  return { plugIn: loads.filter((load) => load.plugIn), leftOut };
}

function whyNot(load: Load, gives: 120 | 240): string {
  if (load.wallOutletOnly) {
    return 'must plug straight into a wall outlet, never into a cord or a pack';
  }
  if (load.volts === 120) return 'is wired in, not plugged in';
  return gives === 240
    ? 'needs 240 volts by a wire fixed to the house; a cord does not bring them'
    : 'needs 240 volts; this gives 120';
}

/** Must-run loads that no backup should carry: electric heat elements and the like. */
export function alwaysOff(home: Home): LeftOut[] {
  return home.loads
    .filter((load) => load.offInOutage && load.rank !== 'wait')
    .map((load) => ({
      name: load.name,
      must: load.rank === 'must',
      why: 'draws so much that it stays off in any outage',
    }));
}
