import { mustBePositive, mustNotBeNegative } from '../quantity/must-be';

/** How a standby source takes over. */
export type StandbyTransfer =
  | { readonly kind: 'manual' /** What will run at one time. */; readonly chosenVa: number }
  | {
      readonly kind: 'automatic' /** The whole transferred load by Article 220. */;
      readonly calculatedVa: number;
    }
  | {
      readonly kind: 'automatic-managed' /** The most the manager lets on. */;
      readonly managedVa: number;
    };

export interface StandbyCapacity {
  readonly neededVa: number;
  readonly enough: boolean;
  readonly section: string;
}

/**
 * Whether an optional standby source is large enough, NEC 702.4: by hand, what is meant to run at one time; automatic,
 * the full transferred load; automatic with load management, the most the manager lets on.
 */
export function standbyCapacity(given: {
  sourceVa: number;
  transfer: StandbyTransfer;
}): StandbyCapacity {
  mustBePositive('sourceVa', given.sourceVa, 'VA');
  const { neededVa, section } = needed(given.transfer);
  mustNotBeNegative('needed VA', neededVa, 'VA');
  return { neededVa, enough: given.sourceVa >= neededVa, section };
}

function needed(transfer: StandbyTransfer): { neededVa: number; section: string } {
  switch (transfer.kind) {
    case 'manual':
      return { neededVa: transfer.chosenVa, section: '702.4(A)(1)' };
    case 'automatic':
      return { neededVa: transfer.calculatedVa, section: '702.4(A)(2)(a)' };
    case 'automatic-managed':
      return { neededVa: transfer.managedVa, section: '702.4(A)(2)(b)' };
  }
}

/**
 * Whether a stand-alone source may feed a panel: it may be smaller than the calculated load, but not smaller than the
 * largest single load connected. Source: NEC 710.15(A), from memory.
 */
export function carriesLargestLoad(given: {
  sourceVa: number;
  loadsVa: readonly number[];
}): boolean {
  mustBePositive('sourceVa', given.sourceVa, 'VA');
  return given.loadsVa.every((va) => va <= given.sourceVa);
}
