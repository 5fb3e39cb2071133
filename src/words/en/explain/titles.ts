import type { FigureId } from '../../../plan/explain/figure-ids';
import type { Figure } from '../../../quantity/figure';
import { shown } from '../../../quantity/shown';
import { sayShare } from '../household/share';
import { sayFigure } from '../say-figure';

const titles: Readonly<Record<FigureId, string>> = {
  'running-power': 'All that must run, running at once',
  start: 'The hardest moment, when motors start',
  'energy-a-day': 'Energy that what must run takes on a hard day',
  goal: 'How long an outage you asked to be ready for',
  price: 'Price of what is advised, installed',
  'above-told': 'How far the price is above the money you told us',
  'high-above-told': 'How far the high end of the price is above the money you told us',
  'thrift-price': 'What it takes to get ready for living thriftily',
  'money-now': 'Money you have now',
  'short-now': 'How much more than the money you have now it costs',
  'first-price': 'Price of what the money you have now buys first',
  'rest-price': 'Price of the rest, which can wait for later money',
  'thrift-until': 'What it takes to get ready for living thriftily until then',
  'beside-price': 'What is worth having beside it, all together',
  hours: 'How long what is advised lasts on what is there today',
  'fuel-at-hand': 'Fuel the hours of today are counted on',
  cans: 'Fuel still to be filled into cans',
  'fuel-stored': 'Fuel there is once the cans are filled',
  odds: 'Of 100 outages as long as your goal, those it carries through',
  'careful-odds': 'Of 100 outages as long as your goal, those it carries by the careful count',
  'thrifty-odds': 'Of 100 outages as long as your goal, those it carries if you live thriftily',
  'careful-thrifty-odds':
    'Of 100 outages as long as your goal, those it carries if you live thriftily, by the careful count',
  'usual-odds': 'Of 100 outages as long as your goal, those it carries if you live as usual',
  'careful-usual-odds':
    'Of 100 outages as long as your goal, those it carries if you live as usual, by the careful count',
  'device-hours': 'How long the health devices alone are covered',
  'hours-once-stored': 'How long what is advised lasts once the cans are filled',
  'usual-hours': 'How long what is advised lasts if you live as usual',
  'fuel-a-day': 'Fuel burned a day',
  'fuel-for-goal': 'Fuel your goal takes, by the careful count',
  'fuel-in-tank': 'Fuel to keep in the tank for your goal',
  'gauge-120': 'Gauge to stay above on a tank of 120 gal',
  'gauge-250': 'Gauge to stay above on a tank of 250 gal',
  'gauge-500': 'Gauge to stay above on a tank of 500 gal',
  'gauge-1000': 'Gauge to stay above on a tank of 1,000 gal',
  'source-size': 'Power of what is advised, by its label',
  'carried-power': 'What is carried, running at once',
  'carried-start': 'The hardest moment of what is carried',
  battery: 'What the battery gives from full to empty',
  'battery-size': 'Size of the battery, by its label',
  'solar-size': 'Size of the solar panels, by their label',
  leave: 'Hours a device must still be carried for when you leave',
  'whole-job-price': 'Price of the cheapest that does the whole job',
  'more-money': 'How much more money does the whole job',
  'more-money-price': 'Price, in all, of what does the whole job for more money',
  'little-more': 'How much more money comes nearer to the job',
  'little-more-price': 'Price, in all, of what comes nearer for a little more money',
  'shorter-goal': 'The longest outage that your money prepares for',
  'one-room-price': 'Price of carrying one room in place of the whole home',
  'one-room-unit': 'Price of the heater or air conditioner of that one room',
  'one-room-hours': 'How long one room in place of the whole home is carried',
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

const ODDS: readonly FigureId[] = [
  'odds',
  'careful-odds',
  'thrifty-odds',
  'careful-thrifty-odds',
  'usual-odds',
  'careful-usual-odds',
];

/** A figure with its range, as it stands in the list and wherever else it is shown. */
export const said = (id: FigureId, figure: Figure): string =>
  ODDS.includes(id)
    ? sayShare(figure.value / 100)
    : sayFigure(figure, figure.unit.replace('/day', ' a day'));

/** One value of it as it is shown elsewhere. */
export const shownAs = (id: FigureId, value: number, unit: string): string =>
  ODDS.includes(id) ? sayShare(value / 100) : shown(value, unit.replace('/day', ' a day'));
