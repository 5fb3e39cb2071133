import type { Load } from '../../../home/home';
import type { Plan } from '../../../plan/plan';
import type { Words } from '../../../words/words';

/** The table of what must keep running, with the check against the bill beneath it. */
export function sayLoads(plan: Plan, words: Words): string[] {
  const season = plan.rideThrough.season;
  const row = (load: Load) =>
    `| ${load.name} | ${words.figure(load.runningWatts)} | ${load.startVa === null ? 'no motor' : words.figure(load.startVa)} | ${words.figure(load.kwhPerDay[season], 'kWh')} |`;
  if (plan.mustRun.length === 0) return ['## What must keep running', 'Nothing was named.'];
  return [
    '## What must keep running',
    [
      `| Load | While it runs | When it starts | A hard ${season} day |`,
      '|---|---|---|---|',
      ...plan.mustRun.map(row),
    ].join('\n'),
    billLine(plan),
    ...(plan.home.calibration === null ? [] : [plan.home.calibration]),
  ];
}

function billLine({ billCheck }: Plan): string {
  if (billCheck.verdict === 'not-possible')
    return `Check against the bill: not possible, because ${billCheck.because}.`;
  const day = billCheck.season === 'mild' ? 'a usual day' : `a usual ${billCheck.season} day`;
  return `Check against the bill, with everything named in the home on ${day}, not only what must run on a hard one: ${billCheck.says}`;
}
