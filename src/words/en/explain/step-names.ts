import type { LineIs } from '../../../physics/service-load/line-is';
import type { PlainStep, StepName } from '../../../quantity/step-name';
import { sayLoadLine } from '../electrical/say-load-line';

const names: Readonly<Record<PlainStep, string>> = {
  'watts-in-kw': 'watts in a kilowatt',
  'minutes-in-hour': 'minutes in an hour',
  'hours-in-day': 'hours in a day',
  'power-factor': 'power factor: watts over volt-amps while it runs',
  'hours-of-running': 'hours of running that a hard day of this climate asks for',
  'start-above-running': 'what its start asks for above its running',
  'size-of-part': 'size that is bought',
  'least-of-class': 'price of the smallest one sold',
  'most-of-class': 'price of the largest one sold',
  'place-in-class': 'where this size stands between the smallest (0) and the largest (1)',
  'between-least-and-most': 'from the smallest to the largest',
  'at-this-size': 'what this size costs above the smallest',
  'one-kwh': 'one kWh of power',
  'full-load-share': 'share of the heat that becomes power at full load',
  'idle-share': 'fuel for merely running, over what full load adds to it',
  'load-and-idle': 'both together',
  'heat-of-fuel': 'heat in one unit of the fuel',
  'fuel-per-kwh': 'fuel that each kWh adds',
  'idle-burn': 'fuel burned in an hour of merely running',
  rating: 'rating of the generator in this plan',
  'hours-run': 'hours it runs a day',
  'kwh-given': 'energy it gives on a hard day, hour by hour',
  'burned-running': 'burned by merely running',
  'burned-giving': 'burned for the power it gives',
  'outages-counted': 'outages that were counted',
  'outages-carried': 'of them carried through',
  'a-hundred': 'to say it of a hundred',
  'thirsty-day': 'the high end of the fuel a day, since health hangs on power',
  'burned-in-goal': 'burned in as many hours as your goal',
  'gallons-for-goal': 'the same in whole gallons',
  'usual-limit': 'what many places allow a home to keep; ask the fire department',
  'fuel-kept': 'kept today',
  'worth-storing': 'what the goal takes, as far as that limit goes',
  'hours-gained': 'hours that filling the cans adds',
  'nameplate': 'what the label of the battery says',
  'usable-depth': 'share of it that may be taken out',
  'fade-a-year': 'capacity lost each year',
  'planned-age': 'years old it is planned at',
  'faded': 'capacity lost by then',
  'new-capacity': 'all of the capacity, when new',
  'share-left': 'share that is left by then',
  'cold-share': 'share that is left in the cold of its place on a hard day',
  'line-volts': 'volts of the service',
  'service-sum': 'load of the service',
  'trip': 'time to the place you would go to',
  'trip-not-known': 'time to the place you would go to is not known; our judgement',
  'times-the-trip': 'storms slow every trip; our judgement',
  'trip-and-back': 'for the trip',
  'hours-in-hand': 'in hand to pack and set out; our judgement',
  'one-road': 'more, for only one road leads out; our judgement',
  'roads-not-known': 'more, for nobody knows of a second road out; our judgement',
  'costs-today': 'costs over the years, in dollars of today',
  'saved-today': 'off the bill over the years, in dollars of today; counted hour by hour over a year',
  'costs-less-savings': 'costs less what comes off the bill',
  'level-factor': 'spreads it evenly over the years of the study',
  'bill-before': 'power bill of a year without it; counted hour by hour by your rate',
  'bill-after': 'power bill of a year with it; counted hour by hour by your rate',
  'every-year-factor': 'worth today of $1 in each year of the study',
  'upkeep-a-year': 'upkeep a year',
  'fuel-a-year': 'fuel a year, in the outages to expect and a monthly test',
  'worth-today': 'over the years, in dollars of today',
  'all-costs': 'all that is paid',
  'left-at-the-end': 'what is left of things at the end of the study',
  'first-cost': 'what it costs to begin with',
  'money-back': 'money back that was promised to you',
  'bought-again': 'bought again when its life is over, in dollars of today',
  'left-of-its-life': 'left of its life, in dollars of today',
  'careful-day': 'the high end of the fuel a day: a thirsty generator at hungry use',
  'house-careful-day': 'the high end of what the house burns from the same tank a day',
  'gallons-in-goal': 'burned in as many hours as your goal, by the careful count',
  'all-from-tank': 'all that burns from the tank a day',
  'soft-starter-share': 'share of the start that is left behind a soft starter',
  'times-of-row': 'so many of the size in the table',
  'row-size': 'size in the table',
  'bank-size': 'one bank of heating elements',
  'banks': 'banks of heating elements',
  'supply-volts': 'volts it runs on',
  'left-then': 'what it is still worth at the end of the study',
};

/** What a figure is that stands only in the steps of another. */
export function stepName(name: StepName): string {
  if (typeof name === 'string') return names[name];
  switch (name.code) {
    case 'load-line':
      return sayLoadLine(name.line as LineIs);
    case 'dollar-in-years':
      return `worth today of $1 in ${name.years} years`;
    case 'life-left':
      return `share of a life of ${Math.round(10 * name.lifeYears) / 10} years that is left after ${name.years}`;
  }
}
