import type { Home } from '../../home/home';
import { panelTraits, roofOf } from '../../home/solar/roof';
import type { Assumption } from './assumptions';

/** What we take for granted of how loads go with the weather, where the home has such a load. */
export function weatherAssumptions(home: Home): Assumption[] {
  const byLoad = lines
    .filter(({ of }) => home.loads.some((load) => of.includes(load.id)))
    .map(({ of: _, ...line }) => ({ ...line, asked: false }));
  return [...byLoad, ...snowOnPanels(home)];
}

/** A winter month that loses less than this share of its sun to snow decides nothing. */
const LITTLE_SNOW_SHARE = 0.05;

/** Snow on the roof goes by temperature and tilt alone; said where a winter is planned for that loses much by it. */
function snowOnPanels({ facts, goalSeasons, site }: Home): Assumption[] {
  const roof = roofOf(facts);
  if (roof === null || !goalSeasons.includes('winter')) return [];
  const byMonth = panelTraits(roof, site.place.climate.meanC).snowLossByMonth ?? [];
  const most = Math.max(0, ...byMonth);
  if (most < LITTLE_SNOW_SHARE) return [];
  return [
    {
      question: 'roof-face',
      says: 'Snow on the panels',
      assumed: `it keeps out up to ${Math.round(100 * most)} % of the sun of a winter month`,
      because:
        'We go by cold and by the slope alone and do not know how much snow falls: after a big snowfall a roof may give nothing for a week, and where it is cold and dry it gives more',
      asked: false,
    },
  ];
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
