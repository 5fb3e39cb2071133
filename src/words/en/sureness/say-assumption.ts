import type { Assumption } from '../../../plan/sureness/assumptions';
import type { WeatherByLoad } from '../../../plan/sureness/weather-assumptions';

/** An assumption in words: of what, what was taken, and why. */
export interface SaidAssumption {
  readonly says: string;
  readonly assumed: string;
  readonly because: string;
}

const byLoad: Readonly<Record<WeatherByLoad, SaidAssumption>> = {
  'well-same-all-year': {
    says: 'Water pump by season',
    assumed: 'the same every day of the year',
    because: 'Water for a garden or animals in hot weather was not told, and comes on top',
  },
  'sump-any-day': {
    says: 'Sump pump by season',
    assumed: 'any day may be a storm',
    because: 'The drawn weather has no rain, so wet weeks cannot be told from dry ones',
  },
  'heat-pump-one-speed': {
    says: 'Heat pump in the cold',
    assumed: 'it gives less heat for a kWh the colder it is, as usual one-speed machines do',
    because: 'A machine made for cold places does better (NREL/TP-5500-56354; frost is left out)',
  },
};

export function sayAssumption(one: Assumption): SaidAssumption {
  switch (one.code) {
    case 'open-answer': {
      const { says, assumed, because } = one;
      return { says, assumed: assumed ?? 'left open', because };
    }
    case 'snow-on-panels':
      return {
        says: 'Snow on the panels',
        assumed: `it keeps out up to ${Math.round(100 * one.mostShare)} % of the sun of a winter month`,
        because:
          'We go by cold and by the slope alone and do not know how much snow falls: after a big snowfall a roof may give nothing for a week, and where it is cold and dry it gives more',
      };
    default:
      return byLoad[one.code];
  }
}
