import { describe, expect, test } from 'vitest';
import { busbarWays } from '../../../src/plan/electrical/panel-fit';
import type { BusbarRouteId } from '../../../src/tables/electrical/busbar-routes';
import { houseWith } from './electrical-home';

const roomOf = (ways: ReturnType<typeof busbarWays>, id: BusbarRouteId) =>
  ways.find(({ way }) => way === id)!;

describe('the bus of a home against NEC 705.12', () => {
  test('leaves 40 A at the far end of a 200 A bus behind a 200 A main, and none elsewhere', () => {
    const ways = busbarWays(houseWith(), 40);
    expect(roomOf(ways, 'opposite-end')).toMatchObject({ roomAmps: 40, fits: 'yes' });
    expect(roomOf(ways, 'any-place')).toMatchObject({ roomAmps: 0, fits: 'no' });
    expect(roomOf(busbarWays(houseWith(), 41), 'opposite-end').fits).toBe('no');
  });

  test('takes off the solar that is there, at 125 % of its current', () => {
    const home = houseWith({ 'own-sources': ['solar'], 'solar-kw': 4.8 });
    // 4.8 kW at 240 V is 20 A; 1.25 x 20 = 25 of the 40.
    expect(roomOf(busbarWays(home, 20), 'opposite-end').roomAmps).toBe(1.2 * 200 - 200 - 25);
  });

  test('gives no number while the main, the bus or the solar there is not known', () => {
    const unknown = [
      { 'main-amps': undefined },
      { 'panel-bus': 'not sure' },
      { 'own-sources': undefined },
      { 'own-sources': ['solar'], 'solar-kw': 'not sure' },
      { 'own-sources': ['home-battery'] },
    ];
    for (const changed of unknown) {
      const ways = busbarWays(houseWith(changed), 20);
      expect(ways.map((way) => way.fits)).toEqual(ways.map(() => 'ask'));
    }
  });
});
