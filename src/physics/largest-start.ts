import { mustNotBeNegative } from '../quantity/must-be';

/** A load that may be on at the same time as the others. VA running and VA in the moment it starts. */
export interface StartingLoad<Id extends string = string> {
  readonly id: Id;
  readonly runningVa: number;
  /** The whole draw while starting, not the part above running. */
  readonly startingVa: number;
  readonly selfStarting: boolean;
}

export interface LargestStart<Id extends string = string> {
  /** All loads running. */
  readonly runningVa: number;
  /** Everything else running while `starting` start: what the source must stand for a moment. */
  readonly peakVa: number;
  /** Loads counted as starting, the largest step first. */
  readonly starting: readonly Id[];
  /** Every self-starting load at once, as after an automatic transfer without staged restart. */
  readonly allSelfStartingVa: number;
}

/**
 * Momentary demand: sum of running VA + the largest step (start - run) + the next largest step that can fall together with
 * it. A person starts one load at a time, so two loads that wait for a hand never count together; a load that starts by
 * itself can meet any other. `startsKeptApart` (a control or delay prevents two at once) leaves out the second.
 * VA are added as plain numbers, which is never too low.
 */
export function largestStart<Id extends string>(given: {
  loads: readonly StartingLoad<Id>[];
  startsKeptApart: boolean;
}): LargestStart<Id> {
  for (const load of given.loads) {
    mustNotBeNegative(`${load.id} runningVa`, load.runningVa, 'VA');
    mustNotBeNegative(`${load.id} startingVa`, load.startingVa, 'VA');
  }
  const runningVa = given.loads.reduce((sum, load) => sum + load.runningVa, 0);
  const steps = given.loads.filter((l) => step(l) > 0).sort((a, b) => step(b) - step(a));
  const starting = given.startsKeptApart ? steps.slice(0, 1) : hardestTogether(steps);
  const selfStarting = steps.filter((l) => l.selfStarting);
  return {
    runningVa,
    peakVa: runningVa + sumOfSteps(starting),
    starting: starting.map((l) => l.id),
    allSelfStartingVa: runningVa + sumOfSteps(selfStarting),
  };
}

/** The hardest one or two of loads sorted by falling step; of two, at most one waits for a hand. */
function hardestTogether<Id extends string>(
  steps: readonly StartingLoad<Id>[],
): StartingLoad<Id>[] {
  const [first, ...rest] = steps;
  if (first === undefined) return [];
  const second = rest.find((load) => first.selfStarting || load.selfStarting);
  return second === undefined ? [first] : [first, second];
}

const step = (load: StartingLoad) => Math.max(0, load.startingVa - load.runningVa);
const sumOfSteps = (loads: readonly StartingLoad[]) => loads.reduce((sum, l) => sum + step(l), 0);
