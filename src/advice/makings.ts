import type { Home, Load } from '../home/home';
import type { Figure } from '../quantity/figure';
import { budgetUsd } from '../routes/budget';
import { cansGal } from '../routes/fuel/fuel-containers';
import type { Route } from '../routes/route';
import { thriftily } from './list/living';
import type { Trial } from './trial';

/** Whether two trials have the same loads in both ways of living, the same routes, goal and money, so that the whole list comes to the same. */
export function sameMakings(a: Trial, b: Trial): boolean {
  return a === b || makingsOf(a) === makingsOf(b);
}

const found = new WeakMap<Trial, string>();

function makingsOf(trial: Trial): string {
  const known = found.get(trial);
  if (known !== undefined) return known;
  const { home, routes } = trial;
  const thrifty = thriftily(home);
  const made = [
    budgetUsd(home),
    home.goalHours.value,
    home.lifeSupport,
    JSON.stringify(trial.drawn.roof),
    ...home.loads.filter((one) => !one.offInOutage).map(ofLoad),
    thrifty?.extraUsd,
    ...(thrifty?.home.loads ?? []).filter((one) => !one.offInOutage).map(ofLoad),
    ...routes.map((route) => ofRoute(home, route)),
  ].join('\n');
  found.set(trial, made);
  return made;
}

const ends = (one: Figure | null) => (one === null ? '' : `${one.low}|${one.value}|${one.high}`);

function ofLoad(load: Load): string {
  const { winter, summer, mild } = load.kwhPerDay;
  const figures = [load.runningWatts, load.runningVa, load.startVa, winter, summer, mild];
  const plain = [load.id, load.rank, load.volts, load.plugIn, load.follows, load.life];
  return [...plain, ...figures.map(ends), load.shape].join(' ');
}

function ofRoute(home: Home, route: Route): string {
  const { kind, verdict, costUsd, carries, usableKwh, solarKw, generator, fuel, power } = route;
  if (verdict === 'cannot') return kind;
  return [
    ...[kind, verdict, costUsd.value, carries, usableKwh, solarKw, generator?.ratedKw],
    ...[ends(fuel?.atHand ?? null), fuel?.noMoreThanGal, power?.continuousWatts],
    fuel === null ? '' : cansGal(home, fuel),
  ].join(' ');
}
