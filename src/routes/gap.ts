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

const MINUTE = 60;
/** "A few seconds", for transfer by itself, s. Common practice, no source. */
const FEW_SECONDS = 5;
/** "A few minutes", to fetch a pack and plug things in, s. Our judgement. */
const FEW_MINUTES = 5 * MINUTE;

/** Seconds by how power comes back. Common practice, no source; the makers' figures decide. */
const seconds: Readonly<Record<GapCode, Gap['seconds']>> = {
  'by-itself': { low: 0, high: FEW_SECONDS },
  'by-itself-then-generator': { low: 0, high: FEW_SECONDS },
  'ready-at-device': { low: 0, high: FEW_SECONDS },
  'starts-itself': { low: 10, high: 30 },
  'plugged-in': { low: MINUTE, high: FEW_MINUTES },
  'started-by-hand': { low: 5 * MINUTE, high: 30 * MINUTE },
  'switched-over-by-hand': { low: 5 * MINUTE, high: 30 * MINUTE },
  'vehicle-by-hand': { low: 10 * MINUTE, high: 30 * MINUTE },
  'stays-dark': null,
  'not-worked-out': null,
};

export const gapOf = (code: GapCode): Gap => ({ code, seconds: seconds[code] });

/** A gap of at most half a minute counts as bridged for whoever asked for no long one. Our judgement. */
const BRIDGED_SECONDS = 30;

export function bridges({ seconds }: Gap): boolean {
  return seconds !== null && seconds.high <= BRIDGED_SECONDS;
}
