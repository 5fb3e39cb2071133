import { describe, expect, test } from 'vitest';
import { allStations } from '../../../src/tables/place/climate';
import { earthDistanceKm } from '../../../src/tables/place/earth-distance';
import { placeOf } from '../../../src/tables/place/place';
import { sayPlaceBasis, sayPlaceWarning, sayStations } from '../../../src/words/en/place/say-place';

test('1,020 stations are read, each with twelve months', () => {
  expect(allStations()).toHaveLength(1020);
  for (const { climate } of allStations()) {
    expect(climate.ghiKwhPerM2Day.every((kwh) => kwh >= 0 && kwh < 10)).toBe(true);
    expect(climate.meanC.every(Number.isFinite)).toBe(true);
  }
});

test('a Denver ZIP code is placed in Denver, among Denver stations whose shares make one', () => {
  const place = placeOf({ zip: '80202' });
  expect(earthDistanceKm(place, { latDeg: 39.75, lonDeg: -105 })).toBeLessThan(3);
  expect(place.state).toBe('CO');
  expect(place.foundBy).toBe('zip');
  expect(place.utcOffsetH).toBe(-7);
  expect(place.warnings).toEqual([]);
  expect(place.stations.reduce((sum, one) => sum + one.share, 0)).toBeCloseTo(1, 12);
  expect(sayStations(place.stations)).toMatch(/Denver.* miles? away/);
});

test('nine digits count as five', () => {
  expect(placeOf({ zip: ' 80202-1234 ' })).toEqual({ ...placeOf({ zip: '80202' }) });
});

test('each series of the blend lies between those of the stations', () => {
  const place = placeOf({ zip: '97520' });
  const used = place.stations.map((one) => allStations().find(({ id }) => id === one.id)!.climate);
  for (let m = 0; m < 12; m++) {
    const ghi = used.map((climate) => climate.ghiKwhPerM2Day[m]!);
    expect(place.climate.ghiKwhPerM2Day[m]).toBeGreaterThanOrEqual(Math.min(...ghi) - 1e-9);
    expect(place.climate.ghiKwhPerM2Day[m]).toBeLessThanOrEqual(Math.max(...ghi) + 1e-9);
  }
});

describe('height', () => {
  const low = placeOf({ zip: '81435' });
  const high = placeOf({ zip: '81435', elevationM: 2700 });

  test('a home far above every station is warned of and made colder', () => {
    expect(high.warnings.map(sayPlaceWarning).join(' ')).toMatch(/ft lower than your home/);
    expect(high.climate.meanC[0]!).toBeLessThan(low.climate.meanC[0]!);
    expect(high.climate.heatingDegreeDays65F).toBeGreaterThan(low.climate.heatingDegreeDays65F);
  });

  test('told the height of its stations a home keeps their climate', () => {
    const there = placeOf({ zip: '80202', elevationM: placeOf({ zip: '80202' }).elevationM });
    const here = placeOf({ zip: '80202' });
    expect(there.climate.meanC[0]).toBeCloseTo(here.climate.meanC[0]!, 0);
  });

  test('not told, and the stations at odds, it asks for the height', () => {
    const place = placeOf({ zip: '96799' });
    expect(place.warnings.map(sayPlaceWarning).join(' ')).toMatch(/tell us how high your home is/);
  });
});

describe('codes that are not on the list', () => {
  test.each([
    ['10000', 'prefix', 'NY', /begin with 100/],
    ['99999', 'prefix', 'AK', /begin with 999/],
    ['21399', 'state', 'MD', /the middle of Maryland/],
    ['09012', 'country', null, /military post office/],
    ['34001', 'country', null, /military post office/],
    ['00000', 'country', null, /not in our list/],
    ['banana', 'country', null, /"banana" is not a ZIP code/],
    ['', 'country', null, /No ZIP code was given/],
    ['1234', 'country', null, /not a ZIP code/],
  ])('%s falls back to the %s and says so', (zip, foundBy, state, sentence) => {
    const place = placeOf({ zip });
    expect(place.foundBy).toBe(foundBy);
    expect(place.state).toBe(state);
    expect(sayPlaceBasis(place.basis)).toMatch(sentence);
  });

  test('a state told beside an unreadable code is used', () => {
    expect(placeOf({ zip: '?', state: 'vt' })).toMatchObject({ foundBy: 'state', state: 'VT' });
  });
});

describe('territories and the far north', () => {
  test.each([
    ['00901', 'PR'],
    ['00802', 'VI'],
    ['96910', 'GU'],
    ['96799', 'AS'],
    ['96950', 'MP'],
    ['96813', 'HI'],
    ['99723', 'AK'],
  ])('%s belongs to %s and has a finite climate', (zip, state) => {
    const place = placeOf({ zip });
    expect(place.state).toBe(state);
    expect(place.climate.ghiKwhPerM2Day.every(Number.isFinite)).toBe(true);
    expect(place.climate.clearnessSpread.every((s) => s === null || s > 0)).toBe(true);
  });

  test('the nearest station to Samoa is an ocean away, and that is said', () => {
    expect(sayPlaceWarning(placeOf({ zip: '96799' }).warnings[0]!)).toMatch(/\d{4} miles away/);
  });

  test('Utqiagvik has months without a spread of clearness', () => {
    expect(placeOf({ zip: '99723' }).climate.clearnessSpread[11]).toBeNull();
  });
});
