/** Figures people read in a plan whose arithmetic can be shown, in the order in which they come. */
export const FIGURE_IDS = [
  'running-power',
  'start',
  'energy-a-day',
  'price',
  'hours',
  'hours-once-stored',
  'odds',
  'careful-odds',
  'device-hours',
  'fuel-a-day',
  'fuel-for-goal',
  'source-size',
  'carried-power',
  'carried-start',
  'battery',
  'leave',
  'service-amps',
  'cost-over-years',
  'cost-a-year',
  'savings-a-year',
] as const;

export type FigureId = (typeof FIGURE_IDS)[number];
