import { mustBePositive } from '../quantity/must-be';
import type { StartingLoad } from './largest-start';

export interface StartStep<Id extends string = string> {
  readonly id: Id;
  /** What runs already while this one starts, with its start. */
  readonly peakVa: number;
  readonly fits: boolean;
}

export interface StartOrder<Id extends string = string> {
  /** One load after the other, hardest start first. */
  readonly steps: readonly StartStep<Id>[];
  /** The highest moment of the whole order: no other order has a lower one. */
  readonly peakVa: number;
  /** Pairs that each start alone on top of everything else, but not together. */
  readonly keepApart: readonly (readonly [Id, Id])[];
}

/**
 * The order in which to switch loads on, one at a time: by falling step (start - run). Swapping two neighbors that stand
 * the other way never raises the highest moment, so no order is gentler. Needs the surge of the source, VA.
 */
export function startOrder<Id extends string>(given: {
  loads: readonly StartingLoad<Id>[];
  surgeVa: number;
}): StartOrder<Id> {
  mustBePositive('surgeVa', given.surgeVa, 'VA');
  const sorted = [...given.loads].sort((a, b) => step(b) - step(a));
  let runningVa = 0;
  const steps = sorted.map((load): StartStep<Id> => {
    const peakVa = runningVa + Math.max(load.startingVa, load.runningVa);
    runningVa += load.runningVa;
    return { id: load.id, peakVa, fits: peakVa <= given.surgeVa };
  });
  const peakVa = Math.max(0, ...steps.map((s) => s.peakVa));
  return { steps, peakVa, keepApart: pairsApart(sorted, runningVa, given.surgeVa) };
}

function pairsApart<Id extends string>(
  loads: readonly StartingLoad<Id>[],
  runningVa: number,
  surgeVa: number,
): [Id, Id][] {
  const room = surgeVa - runningVa;
  const alone = loads.filter((load) => step(load) > 0 && step(load) <= room);
  return alone.flatMap((a, i) =>
    alone
      .slice(i + 1)
      .filter((b) => step(a) + step(b) > room)
      .map((b): [Id, Id] => [a.id, b.id]),
  );
}

const step = (load: StartingLoad) => Math.max(0, load.startingVa - load.runningVa);
