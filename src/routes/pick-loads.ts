import type { Home, Load, Rank } from '../home/home';
import type { LeftOut } from './route';
import type { PlainReason } from './why-left-out';

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
      load: load.id,
      must: load.rank === 'must',
      why: { code: whyNot(load, gives) },
    }));
  return { plugIn: loads.filter((load) => load.plugIn), leftOut };
}

function whyNot(load: Load, gives: 120 | 240): PlainReason {
  if (load.wallOutletOnly) return 'wall-outlet-only';
  if (load.volts === 120) return 'wired-in';
  return gives === 240 ? 'wired-240' : 'needs-240';
}

/** Must-run loads that no backup should carry: electric heat elements and the like. */
export function alwaysOff(home: Home): LeftOut[] {
  return home.loads
    .filter((load) => load.offInOutage && load.rank !== 'wait')
    .map((load) => ({
      load: load.id,
      must: load.rank === 'must',
      why: { code: 'off-in-any-outage' },
    }));
}
