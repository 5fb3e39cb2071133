import type { Home } from '../../home/home';
import { storageFindings } from '../../physics/siting/storage-siting';
import type { StorageFinding, StoragePlace, StorageUnit } from '../../physics/siting/storage-unit';
import type { Route } from '../../routes/route';
import { batteryType } from '../../tables/battery-types';
import { storageLimits } from '../../tables/storage-limits';
import { isFixedBattery } from './route-traits';
import type { SitingPoint } from './siting';

const cite = 'IRC 2021 R328 (2024: R330), NFPA 855 chapter 15';

const placeOf: Readonly<Record<string, StoragePlace>> = {
  'utility-room': 'utility-space',
  basement: 'utility-space',
  'attached-garage': 'garage',
  detached: 'garage',
  'shed-unheated': 'garage',
  'outside-wall': 'exterior-wall',
  'bedroom-living': 'sleeping',
};

/** What stands against this battery at the place named, and what the place needs. Empty without a fixed battery. */
export function batterySiting(home: Home, route: Route): SitingPoint[] {
  if (!isFixedBattery(route) || route.nameplateKwh === null) return [];
  const told = home.facts.told('battery-place') ? String(home.facts.value('battery-place')) : null;
  const place = told === null ? undefined : placeOf[told];
  if (place === undefined) {
    return [
      {
        verdict: 'ask',
        says: 'No place for the battery is known. The building department agrees to one before anything is bought.',
        cite,
      },
    ];
  }
  const found = storageFindings(unitsOf(route.nameplateKwh, place), storageLimits).map(sayFinding);
  const once = [...new Map(found.map((point) => [point.says, point])).values()];
  return [
    ...once,
    ...alwaysNeeded(place),
    ...floodPoint(home, told!),
    ...temperaturePoints(home, told!),
  ];
}

/** Units of at most 20 kWh; gaps, openings and the height over a car are for the site visit. */
function unitsOf(kwh: number, place: StoragePlace): StorageUnit[] {
  const count = Math.max(1, Math.ceil(kwh / storageLimits.unitKwh));
  const nearCars = place === 'garage';
  return Array.from({ length: count }, () => ({
    kwh: kwh / count,
    place,
    gapIn: count === 1 ? Number.POSITIVE_INFINITY : null,
    testedGapIn: null,
    openingIn: null,
    openingIntoDwelling: null,
    aboveVehicleIn: nearCars ? null : Number.POSITIVE_INFINITY,
    listedForLiving: false,
  }));
}

function sayFinding(found: StorageFinding): SitingPoint {
  const { limit } = found;
  const says = {
    'unit-too-large': `One unit over ${limit} kWh falls under the commercial rules.`,
    'place-not-allowed':
      'No large battery in a bedroom, a closet that opens into one, or a living space.',
    'units-too-close': `Between two units: ${limit} in, unless a fire test (UL 9540A) shows that less is enough.`,
    'too-near-opening': `From doors and windows that open into the home: ${limit} in. Measure it on site.`,
    'needs-vehicle-protection': `Where a car can reach it: underside ${limit} in or more above the floor, or a barrier.`,
    'place-over-limit': `More than the ${limit} kWh allowed in this kind of place.`,
    'total-check-local': 'Some places cap the whole home: ask the fire department.',
  }[found.id];
  return { verdict: found.verdict === 'fails' ? 'no' : 'ask', says, cite };
}

function alwaysNeeded(place: StoragePlace): SitingPoint[] {
  const detector =
    place === 'garage'
      ? 'A heat detector joined to the smoke alarms, for a smoke alarm is seldom listed for a garage.'
      : 'A smoke alarm in the same space, joined to the others.';
  const points: SitingPoint[] = [
    { verdict: 'needed', says: detector, cite: 'IRC 2021 R328.7' },
    {
      verdict: 'needed',
      says: 'Listed to UL 9540; the installer shows the listing and the fire-test report.',
      cite,
    },
  ];
  if (place === 'utility-space') {
    points.push({
      verdict: 'needed',
      says: 'Finished or noncombustible walls and ceiling; bare wood framing gets 5/8 in Type X gypsum (from memory).',
      cite,
    });
  }
  return points;
}

function floodPoint({ facts }: Home, place: string): SitingPoint[] {
  if (facts.told('flood-history') && facts.is('flood-history', 'never')) return [];
  const low = place === 'basement' && facts.is('flood-history', 'inside');
  return low
    ? [
        {
          verdict: 'no',
          says: 'Water has been inside, or it is not known: not in the basement.',
          cite: 'local flood rules',
        },
      ]
    : [
        {
          verdict: 'needed',
          says: 'Above the highest water known and the local flood level.',
          cite: 'local flood rules',
        },
      ];
}

const unheated = ['attached-garage', 'detached', 'outside-wall', 'shed-unheated'];

/** Months by the climate table: an unheated place follows the air, and lithium must not be charged below freezing. */
function temperaturePoints({ site }: Home, place: string): SitingPoint[] {
  if (!unheated.includes(place)) return [];
  const leastF = batteryType('lithium-iron-phosphate').leastChargeC * 1.8 + 32;
  const { meanC, rangeK } = site.place.climate;
  const coldMonths = meanC.filter((mean, m) => (mean - rangeK[m]! / 2) * 1.8 + 32 < leastF).length;
  const air = `The air goes from ${Math.round(site.coldF)} to ${Math.round(site.hotF)} °F over a usual year`;
  if (site.coldF >= leastF)
    return [
      {
        verdict: 'needed',
        says: `${air}; the maker's range must cover it.`,
        cite: 'TMY3 climate of the stations used',
      },
    ];
  return [
    {
      verdict: 'needed',
      says: `${air}, and in ${coldMonths} months a usual night is below ${leastF} °F. A lithium battery must not be charged below ${leastF} °F: a unit with its own heater that holds charging back, or a warmer place.`,
      cite: 'TMY3 climate of the stations used; common practice for lithium iron phosphate',
    },
  ];
}
