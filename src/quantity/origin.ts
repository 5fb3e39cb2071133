/** Where a figure comes from, as a code with what it speaks of: `words/en/explain/say-origin.ts` says it. */
export type Origin = PlainOrigin | OriginOf;

/** One that speaks of something else. */
export type OriginOf =
  /** A row of the household-load table, and how well it is known. */
  | { readonly code: 'load-row'; readonly row: unknown; readonly standing: unknown }
  /** Another figure times a factor: the one it is `from`. */
  | { readonly code: 'times'; readonly factor: number }
  /** kWh on one bill, and of own solar beside it, over so many days. */
  | {
      readonly code: 'one-bill';
      readonly kwh: number;
      readonly solarKwh: number;
      readonly days: number;
    }
  /** Months, January 0. */
  | { readonly code: 'bills-of'; readonly months: readonly number[] }
  | { readonly code: 'set-by-bills'; readonly bills: 'two' | 'twelve'; readonly factor: number }
  | { readonly code: 'room-by-bills'; readonly factor: number }
  /** A way to need less: its id. */
  | { readonly code: 'allotment' | 'left-by-measure'; readonly measure: unknown }
  | { readonly code: 'prices' | 'price-range'; readonly year: number }
  | { readonly code: 'start-read'; readonly volts: number }
  | { readonly code: 'pump-amps-read'; readonly volts: number; readonly powerFactor: number }
  /** Times the running current. */
  | { readonly code: 'soft-start'; readonly low: number; readonly high: number }
  | { readonly code: 'start-by-horsepower'; readonly hp: number; readonly volts: number }
  | { readonly code: 'start-usual'; readonly wires: 'two' | 'three' }
  | { readonly code: 'stored-water'; readonly share: number; readonly gallonsAPerson: number }
  /** It was measured and found less; what was counted before stands. */
  | {
      readonly code: 'measured-less';
      readonly counted: Origin | undefined;
      readonly read: number;
      readonly unit: string;
    }
  | {
      readonly code: 'hours-by-climate';
      readonly season: string;
      readonly hours: readonly [low: number, likely: number, high: number];
    }
  | { readonly code: 'hours-of-day'; readonly hours: readonly [number, number, number] }
  | { readonly code: 'warm-kitchen'; readonly factor: number }
  /** All loads running, with these starting: what each is called. */
  | { readonly code: 'all-running'; readonly starting: readonly unknown[] }
  | { readonly code: 'from-same-tank'; readonly use: string }
  /** The average price of a year in a state, and that of April 2025 where it is known, cents a kWh. */
  | {
      readonly code: 'state-average';
      readonly state: string;
      readonly year: number;
      readonly laterCents: number | null;
    }
  /** A record of outages, and the household's own years. */
  | { readonly code: 'outage-record'; readonly record: unknown };

export type PlainOrigin =
  | 'told'
  | 'label-read'
  | 'not-known'
  | 'measured'
  | 'must-run'
  | 'there-already'
  | 'worked-out'
  | 'sum-of-parts'
  | 'sum-of-measures'
  | 'sum-of-usual-day'
  | 'one-at-least'
  | 'height-of-stations'
  | 'lift-with-battery'
  | 'label-times-count'
  | 'heater-label'
  | 'sump-amps-read'
  | 'start-multiple'
  | 'usual-of-size'
  | 'floor-area'
  | 'compressor-amps-read'
  | 'starts-as-it-runs'
  | 'compressor-labels'
  | 'judgement'
  | 'plug-heater'
  | 'element-kilowatts'
  | 'hours-a-day'
  | 'minutes-a-day'
  | 'storm-hour'
  | 'strips-in-the-cold'
  | 'charger-breaker'
  | 'no-power'
  | 'cans-to-fill'
  | 'no-tank'
  | 'hard-day-use'
  | 'until-it-is-away'
  | 'vehicle-fuel'
  | 'every-start'
  | 'fuel-line'
  | 'share-of-tank'
  | 'fuel-over-burn'
  | 'usable-of-tank'
  | 'fuel-for-goal'
  | 'walked'
  | 'bills-fit';
