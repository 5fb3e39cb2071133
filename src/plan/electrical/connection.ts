/** The ways to connect a source to a home, from plain to large. */
export type ConnectionWay =
  | 'cords'
  | 'interlock-inlet'
  | 'manual-switch'
  | 'automatic-whole-house'
  | 'sub-panel'
  | 'load-management'
  | 'at-the-meter'
  | 'charger-inlet';

/** Whether a source is large enough by NEC 702.4, in this home's numbers, VA. */
export type ConnectionCapacity =
  | {
      readonly code:
        | 'by-the-cord'
        | 'what-runs-at-one-time'
        | 'load-not-worked-out'
        | 'what-the-manager-lets-on'
        | 'held-to-the-generator';
    }
  | {
      readonly code: 'manual';
      readonly sourceVa: number;
      readonly chosenVa: number;
      readonly enough: boolean;
      readonly section: string;
    }
  | { readonly code: 'whole-load'; readonly calculatedVa: number }
  | {
      readonly code: 'automatic';
      readonly sourceVa: number;
      readonly calculatedVa: number;
      readonly enough: boolean;
      readonly section: string;
    }
  | { readonly code: 'managed'; readonly sourceVa: number };

/** One way to connect a source to this home. */
export interface Connection {
  readonly way: ConnectionWay;
  readonly fits: 'possible' | 'ask' | 'no';
  /** What stands against it, or null: then what the way is. */
  readonly against: 'wiring-of-the-building' | 'no-main-breaker' | null;
  readonly capacity: ConnectionCapacity;
}
