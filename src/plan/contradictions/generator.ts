import type { Home, Load } from '../../home/home';
import { fuelUse } from '../../routes/generator-size';
import { ownGenerator } from '../../routes/kinds/own-generator';
import { type Check, said, told } from './contradiction';

export const goalBeyondFuel: Check = (home) => {
  const [gallons, goal] = [told(home, 'gasoline-gallons'), told(home, 'goal-hours')];
  if (gallons === null || goal === null || gallons === 0) return null;
  const gasoline =
    said(home, 'own-sources', 'engine-portable') && said(home, 'engine-fuel', 'gasoline');
  if (!gasoline || !said(home, 'fuel-refill', 'no')) return null;
  const perDay = gallonsADay(home);
  const hours = perDay === null ? Infinity : (24 * gallons) / perDay;
  if (hours >= goal) return null;
  return {
    id: 'goal-beyond-fuel',
    goalHours: goal,
    gallons,
    fuelHours: hours,
    questions: ['goal-hours', 'gasoline-gallons', 'fuel-refill'],
  };
};

/** What the household's own generator would burn on the hardest of the goal's days; null where nothing must run yet. */
function gallonsADay(home: Home): number | null {
  const { kwhPerDay, wattsByHour } = home.demand.must;
  const hardest = home.goalSeasons.reduce((a, b) =>
    kwhPerDay[b].value > kwhPerDay[a].value ? b : a,
  );
  const own = ownGenerator(home);
  if (own === null || kwhPerDay[hardest].value <= 0) return null;
  return fuelUse({
    generator: own.type,
    fuel: 'gasoline',
    ratedKw: own.ratedWatts / 1000,
    siteKw: own.step.watts / 1000,
    wattsByHour: wattsByHour[hardest],
    atHand: null,
  }).perDay.value;
}

export const mustRunAt240: Check = (home) => {
  if (!said(home, 'engine-volts', 'v120') || !home.demand.must.needs240) return null;
  const loads = home.loads.filter(
    (load: Load) => load.rank === 'must' && load.volts === 240 && !load.offInOutage,
  );
  if (loads.length === 0) return null;
  return {
    id: 'must-run-at-240',
    loads: loads.map((load) => load.called),
    questions: ['must-run', 'engine-volts'],
  };
};
