import { describe, expect, test } from 'vitest';
import { allStations } from '../../../src/tables/place/climate';
import { earthDistanceKm } from '../../../src/tables/place/earth-distance';
import { whereZip } from '../../../src/tables/place/where-zip';
import { zipCodes, zipMiddle } from '../../../src/tables/place/zip-middles';
import { readZip, stateOfCode, stateOfZip, zipStates } from '../../../src/tables/place/zip-state';

test('every code of the list belongs to a state or territory', () => {
  expect(zipCodes().length).toBeGreaterThan(33_000);
  const without = zipCodes().filter((code) => !/^[A-Z]{2}$/.test(stateOfCode(code) ?? ''));
  expect([...without]).toEqual([]);
});

// Outside check: states of weather stations (TMY3, NREL/TP-581-43156) and middles of ZIP codes (Census gazetteer)
// know nothing of each other. A station within 15 km can lie over a state line, so not all agree.
test('of ZIP codes with a station within 15 km, nineteen in twenty are in its state', () => {
  let [near, same] = [0, 0];
  for (let i = 0; i < zipCodes().length; i += 10) {
    const code = zipCodes()[i]!;
    const middle = zipMiddle(code)!;
    const station = allStations().find(
      (one) => Math.abs(one.latDeg - middle.latDeg) < 0.2 && earthDistanceKm(one, middle) < 15,
    );
    if (station === undefined) continue;
    near++;
    if (station.state === stateOfCode(code)) same++;
  }
  expect(near).toBeGreaterThan(500);
  expect(same / near).toBeGreaterThan(0.95);
});

describe('reading a code', () => {
  test.each([
    ['02134', '02134'],
    [' 02134 ', '02134'],
    ['02134-1000', '02134'],
    ['021341000', '02134'],
    ['2134', null],
    ['O2134', null],
    ['', null],
  ])('"%s" reads as %s', (text, zip) => {
    expect(readZip(text)).toBe(zip);
  });

  test('prefixes not in use have no state', () => {
    expect(stateOfZip('00000')).toBeNull();
    expect(stateOfZip('nonsense')).toBeNull();
  });
});

test('narrow ranges stand before the wide ones that hold them', () => {
  const rows = zipStates.rows;
  rows.forEach((row, i) => {
    const hidden = rows.slice(0, i).some((one) => one.first <= row.first && one.last >= row.last);
    expect(hidden, `${row.first}`).toBe(false);
  });
});

test('three digits are enough for the state and for the middle of the codes that begin with them', () => {
  expect(stateOfZip('044')).toBe('ME');
  const shared = whereZip('044');
  expect(shared).toMatchObject({ foundBy: 'prefix', state: 'ME' });
  expect(shared.basis).toMatchObject({ problem: { code: 'three-digits-only', prefix: '044' } });
  const full = whereZip('04401');
  expect(Math.abs(shared.latDeg - full.latDeg)).toBeLessThan(1.5);
});
