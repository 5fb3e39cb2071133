/** What an outage is met with, of what the figure speaks of. */
export interface Stores {
  readonly usableKwh: number | null;
  readonly solarKw: number | null;
  readonly generatorKw: number | null;
  /** Fuel to begin with, in its unit; null where it is piped, or nothing burns. */
  readonly fuel: { readonly amount: number; readonly unit: string } | null;
}

/** What a counted figure counts, over which starts and by which rule: `words/en/explain/say-counted.ts` says it. */
export type Counted =
  /** Outages that begin at every so manieth hour of some months (0 January) of drawn years. */
  | {
      readonly code: 'starts';
      readonly everyHours: number;
      readonly months: readonly number[];
      readonly years: number;
    }
  /** Of them those whose every hour is fed in full. */
  | {
      readonly code: 'ridden-through';
      readonly outageHours: number;
      readonly careful: boolean;
      readonly stores: Stores;
    }
  /** Hours until the first that is not fed in full, from the middle one of so many starts. */
  | { readonly code: 'middle-start'; readonly starts: number; readonly stores: Stores }
  /** The same from the middle one of the 24 hours of a hard day that is repeated. */
  | { readonly code: 'middle-hour'; readonly stores: Stores }
  /** What a source gives, and what it must run and start. */
  | {
      readonly code: 'size-that-holds';
      /** The household has it already. */
      readonly isTheirs: boolean;
      readonly givesWatts: number;
      /** Of that it is loaded no further than this share for hours; null where all of it may be used. */
      readonly mostShare: number | null;
      readonly runningWatts: number;
      readonly startVa: number;
      readonly startDemandVa: number;
    };
