/** How the ends of a figure are set where no step gives them, as a code: `words/en/explain/say-end.ts` says it. */
export type EndRule =
  /** A pack: low at the high end of every use, high at the low end. */
  | 'use-of-a-day'
  /** Hours a machine runs: low where it is larger than need be, high where it just suffices. */
  | 'usual-sizing'
  /** A battery: low from all but one start in ten, high from one in ten. */
  | 'one-start-in-ten'
  /** Battery and generator: low by the careful count, high from a lucky start. */
  | 'careful-or-lucky'
  /** Health devices: low by the careful count, high the likely hours. */
  | 'careful-count'
  /** A vehicle: low where it is away, high from the luckiest hour of the day. */
  | 'when-it-is-away'
  /** Nothing is known: from nothing to what is usual. */
  | 'nothing-known';

/** Counted over drawn years of weather: from few of them the figure is rough. */
export const isOverDrawnYears = (rule: EndRule | undefined): boolean =>
  rule === 'one-start-in-ten' || rule === 'careful-or-lucky';
