import { practiceRange } from '../tables/practice-figures';
/** How power comes back when the grid fails. */
export type GapCode =
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
export interface Gap {
  readonly code: GapCode;
  /** Seconds, from the shortest to the longest to be reckoned with; null where no power comes back. */
  readonly seconds: { readonly low: number; readonly high: number } | null;
}

/** Seconds by how power comes back; the makers' figures decide. */
const seconds: Readonly<Record<GapCode, Gap['seconds']>> = {
  'by-itself': practiceRange('gap-by-itself'),
  'by-itself-then-generator': practiceRange('gap-by-itself'),
  'ready-at-device': practiceRange('gap-by-itself'),
  'starts-itself': practiceRange('gap-starts-itself'),
  'plugged-in': practiceRange('gap-plugged-in'),
  'started-by-hand': practiceRange('gap-started-by-hand'),
  'switched-over-by-hand': practiceRange('gap-started-by-hand'),
  'vehicle-by-hand': practiceRange('gap-vehicle-by-hand'),
  'stays-dark': null,
  'not-worked-out': null,
};

export function gapOf(code: GapCode): Gap {
  const range = seconds[code];
  return { code, seconds: range && { low: range.low, high: range.high } };
}

/** A gap of at most half a minute counts as bridged for whoever asked for no long one. Our judgement. */
const BRIDGED_SECONDS = 30;

export function bridges({ seconds }: Gap): boolean {
  return seconds !== null && seconds.high <= BRIDGED_SECONDS;
}
