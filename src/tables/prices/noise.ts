/**
 * How loud a thing to buy is, by its row: dBA as its makers print it, which is at the distance named. No level is
 * worked with; papers show it.
 */
export type Noise =
  | { readonly code: 'none' }
  /** A battery alone is silent; a vehicle whose engine runs is heard, and its exhaust is there. */
  | { readonly code: 'as-the-vehicle' }
  | { readonly code: 'under' | 'fan-under'; readonly dba: number }
  | { readonly code: 'in-the-room'; readonly lowDba: number; readonly highDba: number }
  /** By size; makers do not say at which distance or by which weighting. */
  | { readonly code: 'close-by'; readonly lowDb: number; readonly highDb: number }
  | {
      readonly code: 'at-distance';
      readonly lowDba: number;
      readonly highDba: number;
      readonly feet: number;
    };
