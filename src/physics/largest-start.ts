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
  const { loads, startsKeptApart } = given;
  for (const load of loads) {
    if (isPower(load.runningVa) && isPower(load.startingVa)) continue;
    mustNotBeNegative(`${load.id} runningVa`, load.runningVa, 'VA');
    mustNotBeNegative(`${load.id} startingVa`, load.startingVa, 'VA');
  }
  const runningVa = loads.reduce((sum, load) => sum + load.runningVa, 0);
  const first = hardest(loads, () => true);
  const second =
    first === null || startsKeptApart
      ? null
      : hardest(loads, (l) => l !== first && (first.selfStarting || l.selfStarting));
  const starting = [first, second].filter((one) => one !== null);
  return {
    runningVa,
    peakVa: runningVa + sumOfSteps(starting),
    starting: starting.map((l) => l.id),
    get allSelfStartingVa() {
      const all = loads.filter((l) => l.selfStarting).sort((a, b) => step(b) - step(a));
      return runningVa + sumOfSteps(all);
    },
  };
}

/** The one with the largest step, of equal ones the first; null where none takes more to start than to run. */
function hardest<Id extends string>(
  loads: readonly StartingLoad<Id>[],
  counts: (load: StartingLoad<Id>) => boolean,
): StartingLoad<Id> | null {
  let most: StartingLoad<Id> | null = null;
  for (const load of loads) {
    if (step(load) > (most === null ? 0 : step(most)) && counts(load)) most = load;
  }
  return most;
}

/** Names are put together for a bad one alone: this is asked thousands of times. */
const isPower = (va: number) => va >= 0 && va < Infinity;
const step = (load: StartingLoad) => Math.max(0, load.startingVa - load.runningVa);
const sumOfSteps = (loads: readonly StartingLoad[]) => loads.reduce((sum, l) => sum + step(l), 0);
