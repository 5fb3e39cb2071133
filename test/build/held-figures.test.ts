import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { stationRows } from '../../src/build/compile-held-figures';
import { heldFigures } from '../../src/build/held-figures';
import { monthMean } from '../../src/physics/weather/month-curve';
import { skyYear } from '../../src/physics/weather/sky-year';
import { allStations, type Station } from '../../src/tables/place/climate';
import { earthDistanceKm } from '../../src/tables/place/earth-distance';
import { placeOf } from '../../src/tables/place/place';
import { zipCodes } from '../../src/tables/place/zip-middles';

const rows = stationRows(fileURLToPath(new URL('../../src/tables/data/place', import.meta.url)));
const pittsburgh = allStations().find(({ name }) => name.startsWith('Pittsburgh Allegheny'))!;
/** A month is held against stations within 300 km and 3 degrees, so no others are looked at. */
const region = rows.filter(
  (row) =>
    earthDistanceKm(pittsburgh, { latDeg: row.lat as number, lonDeg: row.lon as number }) <= 300,
);

describe('one odd month of one station', () => {
  const figure = (column: string, times: number) => {
    const changed = region.map((row) =>
      row.id === pittsburgh.id ? { ...row, [column]: (row[column] as number) * times } : row,
    );
    const row = changed.find(({ id }) => id === pittsburgh.id)!;
    return heldFigures(changed).get(pittsburgh.id)![column] ?? (row[column] as number);
  };

  test.each(['ghi_jan', 'ghi_may', 'dhi_dec'])(
    '%s half as high again or a third lower moves what is used by no more than 15 %%',
    (column) => {
      const [usual, high, low] = [1, 1.5, 0.67].map((times) => figure(column, times));
      expect(high! / usual!).toBeLessThan(1.15);
      expect(low! / usual!).toBeGreaterThan(0.85);
    },
  );

  test('the published February that is 38 % brighter than around it is drawn in, most months are not', () => {
    expect(pittsburgh.held.ghiKwhPerM2Day[1]! / pittsburgh.climate.ghiKwhPerM2Day[1]!).toBeLessThan(
      0.8,
    );
    const kept = pittsburgh.climate.ghiKwhPerM2Day.filter(
      (ghi, m) => Math.abs(pittsburgh.held.ghiKwhPerM2Day[m]! / ghi - 1) < 0.1,
    );
    expect(kept.length).toBeGreaterThan(6);
  });
});

// A station's own typical year (TMY3, NREL/TP-581-43156) is one real month after another; nine of them tell more than one.
test('of winter months over 160 ZIP codes, under 1 in 100 is over 20 % off the median of the nine nearest stations', () => {
  const clearness = (latDeg: number, ghi: readonly number[]) => {
    const sky = skyYear(latDeg);
    return ghi.map((kwh, m) => kwh / monthMean(sky.extraterrestrialKwh, m));
  };
  const known = new Map<Station, readonly number[]>();
  const clearnessAt = (station: Station) => {
    const k = known.get(station) ?? clearness(station.latDeg, station.climate.ghiKwhPerM2Day);
    known.set(station, k);
    return k;
  };
  const stations = allStations();
  let [months, off] = [0, 0];
  for (let i = 0; i < zipCodes().length; i += 205) {
    const place = placeOf({ zip: String(zipCodes()[i]).padStart(5, '0') });
    if (place.state === 'AK' || place.state === 'PR') continue;
    const k = clearness(place.latDeg, place.climate.ghiKwhPerM2Day);
    const km = stations.map((station) => earthDistanceKm(place, station));
    const ninth = Float64Array.from(km).sort()[8]!;
    const nine = stations.filter((_, at) => km[at]! <= ninth).map(clearnessAt);
    expect(nine).toHaveLength(9);
    for (const m of [10, 11, 0, 1]) {
      const middle = nine.map((one) => one[m]!).sort((a, b) => a - b)[4]!;
      months++;
      if (Math.abs(k[m]! / middle - 1) > 0.2) off++;
    }
  }
  console.log(`${off} of ${months} winter months over 20 % off`);
  expect(months).toBeGreaterThan(600);
  expect(off / months).toBeLessThan(0.01);
});
