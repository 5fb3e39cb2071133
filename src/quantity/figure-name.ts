/** What a figure is, as a code: `words/en/explain/figure-names.ts` says it. A figure times a factor keeps it. */
export type FigureName = PlainFigureName | FigureNameOf;

/** One that speaks of something else. */
export type FigureNameOf =
  /** Of a load: its `LoadName`. */
  | {
      readonly code:
        | 'running-power'
        | 'apparent-power'
        | 'starting-demand'
        | 'starting-current'
        | 'energy'
        | 'energy-by-hours'
        | 'power-at-208-volts';
      readonly load: unknown;
    }
  /** A thing to buy: its class. */
  | { readonly code: 'equipment'; readonly class: string }
  | { readonly code: 'usual-day' | 'hard-day'; readonly season: string }
  | { readonly code: 'in-warm-room'; readonly day: FigureName | undefined }
  /** A kWh in a state. */
  | { readonly code: 'average-price'; readonly state: string };

export type PlainFigureName =
  | 'elevation'
  | 'well-power'
  | 'well-start'
  | 'pump-energy'
  | 'sump-power'
  | 'sump-start'
  | 'sump-storm-day'
  | 'compressor-size'
  | 'compressor-power'
  | 'compressor-start'
  | 'power-by-size'
  | 'car-charger-power'
  | 'lift-charger-power'
  | 'room-coolers-power'
  | 'heater-power'
  | 'plug-heater-power'
  | 'electric-heat-energy';
