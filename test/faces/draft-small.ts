import type { ShownDraft, ShownLoad } from '../../src/faces/shown-draft';
import type { Answers } from '../../src/interview/answers';
import { figure } from '../../src/quantity/figure';

const source = { kind: 'assumed' } as const;

/** A made-up draft: the pump as told, or a wide guess when not sure. */
export function draftSmall(answers: Answers): ShownDraft {
  const said = answers['well-watts'];
  const unsureCount = Object.values(answers).filter((a) => a === 'not sure').length;
  const runningWatts =
    typeof said === 'number'
      ? figure({ value: said, unit: 'W', source })
      : figure({ value: 1000, low: 600, high: 2000, unit: 'W', source });
  const loads: ShownLoad[] =
    said === undefined
      ? []
      : [{ id: 'well', name: 'well pump', rank: 'must', runningWatts, told: true }];
  const { value, low, high } = runningWatts;
  const named = loads.length > 0;
  return {
    ranked: true,
    loads,
    runningWatts: named ? runningWatts : null,
    startVa: named
      ? figure({ value: value * 4, low: low * 3, high: high * 5, unit: 'VA', source })
      : null,
    kwhPerDay: named
      ? figure({ value: value / 1000, low: low / 1000, high: high / 1000, unit: 'kWh/day', source })
      : null,
    season: 'winter',
    unsureCount,
    glance: {
      possible: null,
      missing: named ? [] : ['must-run'],
      route: named
        ? {
            kind: 'power-pack',
            title: 'A made-up pack',
            isSource: true,
            sourceAboveUsd: null,
            costUsd: runningWatts,
            hours: null,
            reachesGoal: true,
            stored: null,
            leavesOut: [],
            ifs: [],
          }
        : null,
      nearTown: null,
      goalHours: figure({ value: 24, unit: 'h', source }),
      lifeSupport: 'no',
    },
    toSettle: [],
    lines: [],
  };
}
