/**
 * What a run of hours does to a store, in five numbers, for any starting charge x in [0, cap]:
 *
 *   charge at the end   F(x) = min(max(x + A, L), H)
 *   energy not served   U(x) = V + max(0, S - x)      counted inside the battery, kWh
 *
 * U has this form because two walks that start a little apart stay that far apart until one of them
 * meets the full or the empty mark; only meeting the empty mark changes what goes unserved, so U
 * falls with slope 1 up to one threshold and is flat beyond it.
 */
export interface Window {
  /** A: net energy of the run when no mark is met. */
  readonly shift: number;
  /** L: the least it can end with. */
  readonly low: number;
  /** H: the most it can end with. */
  readonly high: number;
  /** S: the charge from which more charge no longer helps. Zero or less: even an empty store will do. */
  readonly threshold: number;
  /** V: unserved whatever the charge. */
  readonly unavoidable: number;
}

/** One hour with net stored energy `netKwh` (charge positive) on a store of `capKwh`. */
export function hourWindow(netKwh: number, capKwh: number): Window {
  return { shift: netKwh, low: 0, high: capKwh, threshold: -netKwh, unavoidable: 0 };
}

/**
 * The run `first` followed by the run `then`, both on the same store. Associative.
 * Two-sided clamps compose to clamps: Kruk, Lehoczky, Ramanan & Shreve, Ann. Probab. 35 (2007) 1740.
 */
export function compose(first: Window, then: Window): Window {
  const shift = first.shift + then.shift;
  const low = clamp(first.low + then.shift, then.low, then.high);
  const high = clamp(first.high + then.shift, then.low, then.high);
  const both = first.unavoidable + then.unavoidable;
  if (then.threshold <= first.low) {
    return { shift, low, high, threshold: first.threshold, unavoidable: both };
  }
  if (then.threshold <= first.high) {
    return { shift, low, high, threshold: then.threshold - first.shift, unavoidable: both };
  }
  // Even the fullest end of the first run is too little for the second: the rest is lost for certain.
  const threshold = first.high > first.low ? first.high - first.shift : first.threshold;
  const unavoidable = both + then.threshold - first.high;
  return { shift, low, high, threshold, unavoidable };
}

/** Charge at the end of the run when it starts with `startKwh`. */
export function endCharge(window: Window, startKwh: number): number {
  return clamp(startKwh + window.shift, window.low, window.high);
}

/** Energy not served in the run when it starts with `startKwh`, counted inside the battery. */
export function unserved(window: Window, startKwh: number): number {
  return window.unavoidable + Math.max(0, window.threshold - startKwh);
}

function clamp(value: number, low: number, high: number): number {
  return Math.min(Math.max(value, low), high);
}
