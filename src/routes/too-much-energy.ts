import type { Home, Load, Season } from '../home/home';
import { batteryStepsKwh } from '../tables/generic-steps';
import { IDLE_KW, limitsOf, usableOf } from './battery-hours';
import type { LeftOut } from './route';

/** With sun on the roof, about this much more may be asked of the storage than without. Our judgement. */
const WITH_SUN = 1.5;

/**
 * Leave out what no home battery can carry for the goal: while a hard day's energy times the days asked is more
 * than the largest step holds, the load that takes most, life support last of all. Nothing that must keep running goes
 * while it would be enough to leave out what need not.
 */
export function leaveOutTooMuch(
  home: Home,
  all: readonly Load[],
  hasSun: boolean,
): { loads: Load[]; leftOut: LeftOut[] } {
  const most = usableOf(home, batteryStepsKwh().at(-1)!) * (hasSun ? WITH_SUN : 1);
  let loads = [...all];
  const leftOut: LeftOut[] = [];
  while (loads.length > 1 && needKwh(home, loads) > most) {
    const must = loads.filter((load) => load.life || load.rank === 'must');
    const enough = must.length > 0 && needKwh(home, must) <= most;
    const spare = loads.filter((load) => (enough ? !must.includes(load) : !load.life));
    if (spare.length === 0) break;
    const hungriest = spare.reduce((a, b) => (dayKwh(home, b) > dayKwh(home, a) ? b : a));
    const share = dayKwh(home, hungriest) / loads.reduce((sum, l) => sum + dayKwh(home, l), 0);
    if (!enough && share < 0.4) break;
    loads = loads.filter((load) => load !== hungriest);
    leftOut.push({
      load: hungriest.id,
      must: hungriest.rank === 'must',
      why: { code: 'too-much-energy' },
    });
  }
  return { loads, leftOut };
}

function dayKwh(home: Home, load: Load): number {
  return Math.max(...home.goalSeasons.map((season) => load.kwhPerDay[season].value));
}

function needKwh(home: Home, loads: readonly Load[]): number {
  const day = (season: Season) =>
    loads.reduce((kwh, load) => kwh + load.kwhPerDay[season].value, 0);
  const kwhPerDay = Math.max(...home.goalSeasons.map(day));
  const perHour = kwhPerDay / 24 / limitsOf(1).dischargeEfficiency + IDLE_KW;
  return perHour * home.goalHours.value;
}
