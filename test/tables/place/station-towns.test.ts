import { describe, expect, test } from 'vitest';
import { allStations, type Station } from '../../../src/tables/place/climate';
import { earthDistanceKm, type Point } from '../../../src/tables/place/earth-distance';
import { sayStation } from '../../../src/tables/place/say-station';
import { stationTowns } from '../../../src/tables/place/station-towns';
import { zipCodes, zipMiddle } from '../../../src/tables/place/zip-middles';
import { stateOfCode } from '../../../src/tables/place/zip-state';

// Outside check: the positions of stations (TMY3, NREL/TP-581-43156) and of ZIP codes (Census gazetteer) know nothing of
// each other. A ZIP code of the open West or of Alaska is wide, so its middle lies far from its town.
describe('positions', () => {
  const codesOf = new Map<string | null, number[]>();
  for (const code of zipCodes()) {
    const state = stateOfCode(code);
    const codes = codesOf.get(state) ?? [];
    codes.push(code);
    codesOf.set(state, codes);
  }
  const km = (station: Station, code: number) => earthDistanceKm(station, zipMiddle(code) as Point);

  test('a station lies by the ZIP code of its town, and both in one state', () => {
    const byId = new Map(allStations().map((station) => [station.id, station]));
    let unchecked = 0;
    for (const { id, town, zip } of stationTowns.rows) {
      if (zip === null) {
        unchecked++;
        continue;
      }
      const station = byId.get(String(id))!;
      expect(stateOfCode(zip), town).toBe(station.state);
      expect(km(station, zip), `${town}, ${station.state}`).toBeLessThan(
        station.state === 'AK' ? 240 : 75,
      );
    }
    expect(unchecked).toBeLessThan(15);
  });

  test('every station has a ZIP code of its state within 60 km; some islands of Alaska lie farther', () => {
    for (const station of allStations()) {
      const codes = codesOf.get(station.state)!;
      const nearest = Math.min(...codes.map((code) => km(station, code)));
      expect(nearest, sayStation(station)).toBeLessThan(station.state === 'AK' ? 700 : 60);
    }
  });
});

// Outside check: legal time zones, 49 CFR 71, in hours of standard time ahead of UTC.
test.each([
  ['Columbus Metropolitan Arpt', 'GA', -5],
  ['Fort Benning Lawson', 'GA', -5],
  ['Bismarck Municipal Arpt [isis]', 'ND', -6],
  ['Dickinson Municipal AP', 'ND', -7],
  ['Mobridge', 'SD', -6],
  ['Pierre Municipal AP', 'SD', -6],
  ['Rapid City Regional Arpt', 'SD', -7],
  ['Wendover Usaf Auxiliary Field', 'UT', -7],
  ['Antigo\\lang(awos)', 'WI', -6],
  ['Sturgeon Bay', 'WI', -6],
  ['Menominee (awos)', 'MI', -6],
  ['Pensacola Regional AP', 'FL', -6],
  ['EL Paso International AP [ut]', 'TX', -7],
  ['Goodland Renner Field', 'KS', -7],
  ['Evansville Regional AP', 'IN', -6],
])('%s, %s, keeps the clock of its legal zone', (name, state, utcOffsetH) => {
  expect(allStations().find((one) => one.name === name && one.state === state)).toMatchObject({
    utcOffsetH,
  });
});
