import type { FigureId } from '../../../plan/explain/figure-ids';
import type { Figure } from '../../../quantity/figure';
import { sayFigure } from '../say-figure';

const titles: Readonly<Record<FigureId, string>> = {
  'running-power': 'All that must run, running at once',
  start: 'The hardest moment, when motors start',
  'energy-a-day': 'Energy that what must run takes on a hard day',
  price: 'Price of what is advised, installed',
  hours: 'How long what is advised lasts on what is there today',
  odds: 'Of 100 outages as long as your goal, those it carries through',
  'careful-odds': 'Of 100 outages as long as your goal, those it carries by the careful count',
  'device-hours': 'How long the health devices alone are covered',
  'hours-once-stored': 'How long what is advised lasts once the cans are filled',
  'fuel-a-day': 'Fuel burned a day',
  'fuel-for-goal': 'Fuel your goal takes, by the careful count',
  'source-size': 'Power of what is advised, by its label',
  'carried-power': 'What is carried, running at once',
  'carried-start': 'The hardest moment of what is carried',
  battery: 'What the battery gives from full to empty',
  leave: 'Hours a device must still be carried for when you leave',
  'service-amps': 'Load of the electric service, by the code',
  'cost-over-years': 'What it costs over the years, in dollars of today',
  'cost-a-year': 'What it costs a year, after what comes off the bill',
  'savings-a-year': 'What it takes off the power bill in a year',
};

/** What a figure is, for the list of them. */
export const title = (id: FigureId): string => titles[id];

export const how = 'To see how one was worked out: lampkeeper explain HOME FIGURE';

/** A figure that other plans have. */
export const notInPlan = (id: FigureId, there: readonly FigureId[]): string =>
  `This plan has no figure "${id}". It has: ${there.join(', ')}.`;

/** A figure with its range, as it stands in the list. */
export const said = (figure: Figure): string =>
  sayFigure(figure, figure.unit.replace('/day', ' a day'));
