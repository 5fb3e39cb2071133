import type { Home, Load } from '../../home/home';
import { demandOf } from '../../home/loads/demand';
import { cannot, lastsHours, makeRoute } from '../make-route';
import { alwaysOff, loadsOf, splitPlugIn } from '../pick-loads';
import type { LeftOut, Route } from '../route';
import { plugIfs } from '../stops/stops';
import { transferTime } from '../transfer-time';
import { choosePack, type PackSize, packParts, packSizes } from './packs';

/** A battery with outlets, carried to where it is needed: no wiring, no exhaust, no permit. */
export function powerPack(home: Home): Route {
  const { plugIn, leftOut } = splitPlugIn(loadsOf(home, ['must']));
  const chosen = fitPack(home, plugIn);
  if (chosen === null) {
    return cannot('power-pack', [{ code: 'nothing-plugs-in' }]);
  }
  return packRoute(home, chosen.pack, {
    loads: chosen.loads,
    leftOut: [...leftOut, ...chosen.dropped],
  });
}

/** The same at every size that runs what it is sized for, smallest first; empty where there is none. */
export function powerPackSizes(home: Home): Route[] {
  const { plugIn, leftOut } = splitPlugIn(loadsOf(home, ['must']));
  const chosen = fitPack(home, plugIn);
  if (chosen === null) return [];
  const { loads, dropped } = chosen;
  return packSizes(home, loads).map((pack) =>
    packRoute(home, pack, { loads, leftOut: [...leftOut, ...dropped] }),
  );
}

function packRoute(
  home: Home,
  pack: PackSize,
  { loads, leftOut }: { loads: readonly Load[]; leftOut: readonly LeftOut[] },
): Route {
  const demand = demandOf(loads, home.goalSeasons);
  return makeRoute('power-pack', {
    ifs: plugIfs(loads),
    carries: loads.map((load) => load.id),
    leavesOut: [...leftOut, ...alwaysOff(home)],
    power: {
      continuousWatts: pack.watts,
      startVa: pack.startVa,
      runningWatts: demand.runningWatts,
      startDemandVa: demand.startVa,
    },
    nameplateKwh: pack.nameplateKwh,
    usableKwh: pack.usableKwh,
    transferTime: transferTime('plugged-in'),
    lasting: lastsHours(home, pack.hours, { code: 'full-pack', kwh: pack.nameplateKwh }),
    parts: packParts(pack),
    notes: ['charge-before-a-storm', 'ask-for-pure-sine'],
  });
}

/** Leave out the hungriest until a pack runs the rest. */
function fitPack(
  home: Home,
  all: readonly Load[],
): { pack: PackSize; loads: Load[]; dropped: LeftOut[] } | null {
  let loads = [...all];
  const dropped: LeftOut[] = [];
  while (loads.length > 0) {
    const pack = choosePack(home, loads, home.goalHours.value);
    if (pack !== null) return { pack, loads, dropped };
    const spare = loads.filter((load) => !load.life);
    const worst = [...(spare.length > 0 ? spare : loads)].sort(
      (a, b) => (b.startVa ?? b.runningVa).high - (a.startVa ?? a.runningVa).high,
    )[0]!;
    loads = loads.filter((load) => load !== worst);
    dropped.push({
      load: worst.id,
      must: true,
      why: { code: 'too-hard-for-pack' },
    });
  }
  return null;
}
