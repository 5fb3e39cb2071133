import type { FigureId } from '../../../plan/explain/figure-ids';

const titles: Readonly<Record<FigureId, string>> = {
  'running-power': 'All that must run, running at once',
  start: 'The hardest moment, when motors start',
  'energy-a-day': 'Energy that what must run takes on a hard day',
  price: 'Price of what is advised, installed',
  hours: 'How long what is advised lasts on what is there',
  odds: 'Of 100 outages as long as your goal, those it carries through',
  'careful-odds': 'The same by the careful count',
  'device-hours': 'How long the health devices alone are covered',
  'hours-once-stored': 'The same once the cans are filled',
  'fuel-a-day': 'Fuel burned a day',
};

/** What a figure is, for the list of them. */
export const title = (id: FigureId): string => titles[id];

export const how = 'To see how one was worked out: lampkeeper explain HOME FIGURE';

/** A figure that other plans have. */
export const notInPlan = (id: FigureId, there: readonly FigureId[]): string =>
  `This plan has no figure "${id}". It has: ${there.join(', ')}.`;
