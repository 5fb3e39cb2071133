import { mustBePositive } from '../quantity/must-be';
import { largestStart, type StartingLoad } from './largest-start';

export type StartCureKind =
  | 'nothing' // the source carries it as it is
  | 'keep-starts-apart' // a control or delay, so that two never start at once
  | 'soft-starter' // on the hardest start
  | 'both' // soft starter and starts kept apart
  | 'larger-source';

export interface StartCure<Id extends string = string> {
  readonly kind: StartCureKind;
  /** Momentary demand with this cure, VA; for a larger source, what it must carry. */
  readonly peakVa: number;
  readonly enough: boolean;
  /** The load a soft starter goes on. */
  readonly on?: Id;
}

/**
 * What would let a source carry the starts, each with the demand that is left: as it is, starts kept apart, a soft starter on
 * the hardest start (`softStartMultiple` x its running VA, 1.5 to 2.5 as a rule; common practice, no source), both, or a larger
 * source. Which is cheapest is for the reader of the list to say. `softStartable` names the motors that may have one.
 */
export function startCures<Id extends string>(given: {
  loads: readonly StartingLoad<Id>[];
  surgeVa: number;
  softStartMultiple: number;
  softStartable: readonly string[];
}): StartCure<Id>[] {
  mustBePositive('surgeVa', given.surgeVa, 'VA');
  if (!(given.softStartMultiple >= 1)) {
    throw new RangeError(`softStartMultiple must be 1 or more, got ${given.softStartMultiple}`);
  }
  const peak = (loads: readonly StartingLoad<Id>[], startsKeptApart: boolean) =>
    largestStart({ loads, startsKeptApart }).peakVa;
  const asItIs = peak(given.loads, false);
  const cure = (kind: StartCureKind, peakVa: number, on?: Id): StartCure<Id> => {
    const enough = kind === 'larger-source' || peakVa <= given.surgeVa;
    return on === undefined ? { kind, peakVa, enough } : { kind, peakVa, enough, on };
  };
  const cures = [cure('nothing', asItIs), cure('keep-starts-apart', peak(given.loads, true))];
  const hardest = largestStart({ loads: given.loads, startsKeptApart: true }).starting[0];
  if (hardest !== undefined && given.softStartable.includes(hardest)) {
    const softened = given.loads.map((load) => (load.id === hardest ? soften(load, given) : load));
    cures.push(cure('soft-starter', peak(softened, false), hardest));
    cures.push(cure('both', peak(softened, true), hardest));
  }
  return [...cures, cure('larger-source', asItIs)];
}

function soften<Id extends string>(
  load: StartingLoad<Id>,
  given: { softStartMultiple: number },
): StartingLoad<Id> {
  const softVa = load.runningVa * given.softStartMultiple;
  return { ...load, startingVa: Math.min(load.startingVa, softVa) };
}
