import type { StepName } from '../../../quantity/step-name';

const names: Readonly<Record<StepName, string>> = {
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
};

export const stepName = (name: StepName): string => names[name];
