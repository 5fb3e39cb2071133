import type { Load } from '../../../home/home';
import type { Plan } from '../../../plan/plan';
import type { Words } from '../../../words/words';
import { table } from '../../markdown/table';

/** The table of what must keep running, with the check against the bill beneath it. */
export function sayLoads(plan: Plan, words: Words): string[] {
  const say = words.household.loads;
  const { season } = plan.rideThrough;
  const row = (load: Load) => [
    words.loadName(plan.home, load.id),
    words.figure(load.runningWatts),
    load.startVa === null ? say.noMotor : words.figure(load.startVa),
    words.figure(load.kwhPerDay[season], 'kWh'),
  ];
  if (plan.mustRun.length === 0) return [`## ${say.title}`, say.none];
  return [
    `## ${say.title}`,
    table(say.columns(season), plan.mustRun.map(row)),
    say.billCheck(plan.billCheck),
    ...(plan.home.calibration === null ? [] : [words.calibration(plan.home.calibration)]),
  ];
}
