import type { Home } from '../../home/home';
import { storageFindings } from '../../physics/siting/storage-siting';
import type { StorageFinding, StoragePlace, StorageUnit } from '../../physics/siting/storage-unit';
import { reference } from '../../quantity/cite';
import type { Route } from '../../routes/route';
import { batteryType } from '../../tables/battery-types';
import { storageLimits } from '../../tables/storage-limits';
import { isFixedBattery } from './route-traits';
import type { SitingPoint } from './siting-point';

const cite = reference('IRC 2021 R328 (2024: R330), NFPA 855 chapter 15');

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
    return [{ verdict: 'ask', code: 'battery-place-not-known', cite }];
  }
  const found = storageFindings(unitsOf(route.nameplateKwh, place), storageLimits).map(pointOf);
  const once = [...new Map(found.map((point) => [JSON.stringify(point), point])).values()];
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

function pointOf({ id, verdict, limit }: StorageFinding): SitingPoint {
  return { verdict: verdict === 'fails' ? 'no' : 'ask', code: id, limit: limit ?? null, cite };
}

function alwaysNeeded(place: StoragePlace): SitingPoint[] {
  const detector =
    // A smoke alarm is seldom listed for a garage.
    place === 'garage' ? 'heat-detector' : 'smoke-alarm';
  const points: SitingPoint[] = [
    { verdict: 'needed', code: detector, cite: reference('IRC 2021 R328.7') },
    { verdict: 'needed', code: 'battery-listed', cite },
  ];
  if (place === 'utility-space') {
    points.push({ verdict: 'needed', code: 'finished-walls', cite });
  }
  return points;
}

function floodPoint({ facts }: Home, place: string): SitingPoint[] {
  if (facts.told('flood-history') && facts.is('flood-history', 'never')) return [];
  const low = place === 'basement' && facts.is('flood-history', 'inside');
  return low
    ? [{ verdict: 'no', code: 'flooded-basement', cite: ['local-flood-rules'] }]
    : [{ verdict: 'needed', code: 'above-high-water', cite: ['local-flood-rules'] }];
}

const unheated = ['attached-garage', 'detached', 'outside-wall', 'shed-unheated'];

/** Months by the climate table: an unheated place follows the air, and lithium must not be charged below freezing. */
function temperaturePoints({ site }: Home, place: string): SitingPoint[] {
  if (!unheated.includes(place)) return [];
  const leastF = batteryType('lithium-iron-phosphate').leastChargeC * 1.8 + 32;
  const { meanC, rangeK } = site.place.climate;
  const coldMonths = meanC.filter((mean, m) => (mean - rangeK[m]! / 2) * 1.8 + 32 < leastF).length;
  const { coldF, hotF } = site;
  if (coldF >= leastF)
    return [
      {
        verdict: 'needed',
        code: 'air-range',
        coldF,
        hotF,
        cite: reference('TMY3 climate of the stations used'),
      },
    ];
  return [
    {
      verdict: 'needed',
      code: 'charging-below-freezing',
      coldF,
      hotF,
      coldMonths,
      leastF,
      cite: [{ ref: 'TMY3 climate of the stations used' }, 'lithium-iron-phosphate-practice'],
    },
  ];
}
