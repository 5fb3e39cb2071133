import { practiceRange } from '../tables/practice-figures';
/** How power comes back when the grid fails. */
export type TransferCode =
  | 'by-itself' // a battery wired in: from no blink to a few seconds
  | 'by-itself-then-generator' // the same, its generator started by hand later
  | 'ready-at-device'
  | 'starts-itself'
  | 'plugged-in'
  | 'started-by-hand'
  | 'switched-over-by-hand'
  | 'vehicle-by-hand'
  | 'stays-dark'
  | 'not-worked-out';

/** Time without power when the grid fails. The sentence is made where it is printed. */
export interface TransferTime {
  readonly code: TransferCode;
  /** Seconds, from the shortest to the longest to be reckoned with; null where no power comes back. */
  readonly seconds: { readonly low: number; readonly high: number } | null;
}

/** Seconds by how power comes back; the makers' figures decide. */
const seconds: Readonly<Record<TransferCode, TransferTime['seconds']>> = {
  'by-itself': practiceRange('transfer-by-itself'),
  'by-itself-then-generator': practiceRange('transfer-by-itself'),
  'ready-at-device': practiceRange('transfer-by-itself'),
  'starts-itself': practiceRange('transfer-starts-itself'),
  'plugged-in': practiceRange('transfer-plugged-in'),
  'started-by-hand': practiceRange('transfer-started-by-hand'),
  'switched-over-by-hand': practiceRange('transfer-started-by-hand'),
  'vehicle-by-hand': practiceRange('transfer-vehicle-by-hand'),
  'stays-dark': null,
  'not-worked-out': null,
};

export function transferTime(code: TransferCode): TransferTime {
  const range = seconds[code];
  return { code, seconds: range && { low: range.low, high: range.high } };
}

/** A transfer of at most half a minute counts as bridged for whoever asked for no long one. Our judgement. */
const BRIDGED_SECONDS = 30;

export function bridges({ seconds }: TransferTime): boolean {
  return seconds !== null && seconds.high <= BRIDGED_SECONDS;
}
