import type { FigureEnd } from '../../../quantity/at-end';
import type { EndRule } from '../../../quantity/end-rule';

const titles: Readonly<Record<FigureEnd, string>> = { low: 'Low end', high: 'High end' };

/** Over the steps of one end. */
export const endTitle = (end: FigureEnd): string => titles[end];

/** Behind the name of a figure that stands at one end of its range. */
export const endOf: Readonly<Record<FigureEnd, string>> = { low: 'low end', high: 'high end' };

const rules: Readonly<Record<EndRule, Readonly<Record<FigureEnd, string>>>> = {
  'use-of-a-day': {
    low: 'counted the same way, with every use at its high end',
    high: 'counted the same way, with every use at its low end',
  },
  'usual-sizing': {
    low: 'counted the same way for a machine of twice the size that the coldest or hottest hours ask for; common practice, no source',
    high: 'counted the same way for a machine of just that size, and no more than 24 hours; common practice, no source',
  },
  'one-start-in-ten': {
    low: 'counted the same way: nine starts in ten last at least so long',
    high: 'counted the same way: one start in ten lasts at least so long',
  },
  'careful-or-lucky': {
    low: 'counted the same way with hungry use, a thirsty generator and the low end of the fuel: nine starts in ten last at least so long',
    high: 'counted the same way at likely use: one start in ten lasts at least so long',
  },
  'careful-count': {
    low: 'counted the same way with every use at its high end, the low end of the fuel and a thirsty generator: nine starts in ten last at least so long',
    high: 'the likely hours: no more is promised where health hangs on power',
  },
  'when-it-is-away': {
    low: 'an outage may begin while the vehicle is away',
    high: 'from the hour of the day from which it stays longest, or until its charge is used',
  },
  'nothing-known': {
    low: 'nothing, since nobody told us what there is',
    high: 'one day, our judgement, since nobody told us what there is',
  },
};

/** How one end of a range is set that no step gives. */
export const sayEnd = (rule: EndRule, end: FigureEnd): string => rules[rule][end];
