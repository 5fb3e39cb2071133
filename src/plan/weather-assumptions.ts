import type { Home } from '../home/home';
import type { Assumption } from './assumptions';

/** What we take for granted of how loads go with the weather, where the home has such a load. */
export function weatherAssumptions({ loads }: Home): Assumption[] {
  return lines
    .filter(({ of }) => loads.some((load) => of.includes(load.id)))
    .map(({ of: _, ...line }) => ({ ...line, asked: false }));
}

const lines = [
  {
    of: ['well'],
    question: 'water-source',
    says: 'Water pump by season',
    assumed: 'the same every day of the year',
    because: 'Water for a garden or animals in hot weather was not told, and comes on top',
  },
  {
    of: ['sump'],
    question: 'sump',
    says: 'Sump pump by season',
    assumed: 'any day may be a storm',
    because: 'The drawn weather has no rain, so wet weeks cannot be told from dry ones',
  },
  {
    of: ['heat-pump', 'mini-split'],
    question: 'heat-main',
    says: 'Heat pump in the cold',
    assumed: 'it gives less heat for a kWh the colder it is, as usual one-speed machines do',
    because: 'A machine made for cold places does better (NREL/TP-5500-56354; frost is left out)',
  },
];
