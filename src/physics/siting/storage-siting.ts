import {
  type StorageFinding,
  type StorageLimits,
  type StoragePlace,
  type StorageUnit,
  unitFindings,
} from './storage-unit';

/**
 * What stands against batteries where they are meant to go: each unit by itself, then the sum in each kind of place, then
 * the sum of all. Empty when nothing does. Planning figures after IRC 2021 R328 and NFPA 855 chapter 15; some places cap
 * the whole dwelling, so more than one place filled is flagged. Not-known distances are flagged, not passed.
 */
export function storageFindings(
  units: readonly StorageUnit[],
  limits: StorageLimits,
): StorageFinding[] {
  const each = units.flatMap((unit) => unitFindings(unit, limits));
  const places = [...new Set(units.map((unit) => unit.place))];
  const totals = places.map((place) => ({ place, kwh: kwhIn(units, place) }));
  const overs = totals.filter(({ place, kwh }) => kwh > capOf(place, limits));
  const over = overs.map(({ place, kwh }): StorageFinding => {
    return {
      id: 'place-over-limit',
      verdict: 'fails',
      place,
      amount: kwh,
      limit: capOf(place, limits),
    };
  });
  const allKwh = totals.reduce((sum, total) => sum + total.kwh, 0);
  const mostCap = Math.max(...Object.values(limits.placeKwh));
  const total: StorageFinding[] =
    allKwh > mostCap && over.length === 0
      ? [{ id: 'total-check-local', verdict: 'ask', amount: allKwh, limit: mostCap }]
      : [];
  return [...each, ...over, ...total];
}

const kwhIn = (units: readonly StorageUnit[], place: StoragePlace) =>
  units.reduce((sum, unit) => sum + (unit.place === place ? unit.kwh : 0), 0);

const capOf = (place: StoragePlace, limits: StorageLimits) =>
  place === 'sleeping' || place === 'living' ? Infinity : limits.placeKwh[place];
