import { expect, test } from 'vitest';
import { SyntheticYears } from '../../../src/home/weather/synthetic-years';
import { costPartsOf } from '../../../src/plan/money/cost-parts';
import { isOwned } from '../../../src/routes/costs';
import { ownBatteryRoute } from '../../../src/routes/kinds/own-battery';
import { english } from '../../../src/words/en';
import { houseWith } from '../electrical/electrical-home';

const sayWait = english.household.sideBySide.wait;

const home = houseWith({
  'own-sources': ['home-battery'],
  'battery-kwh': 10,
  'battery-kw': 5,
  'battery-kind': 'lfp',
  'battery-years': 2,
  'battery-backup': 'circuits',
  'battery-reserve': 100,
  'must-run': ['fridge', 'lights'],
  'fridge-count': 1,
});

test('nobody waits for a battery that is there', () => {
  const route = ownBatteryRoute(home, new SyntheticYears(home, 1))!;
  const parts = costPartsOf(home, route);
  const there = parts.filter((_, i) => isOwned(route.parts[i]!));
  expect(there.map((part) => part.equipmentClass)).toContain('battery');
  for (const part of there)
    expect(part.leadWeeks, part.equipmentClass).toEqual({ low: 0, high: 0 });
});

test('a wait of nothing is none, and one figure is no range', () => {
  expect(sayWait({ low: 0, high: 0 })).toBe('none');
  expect(sayWait({ low: 6, high: 26 })).toBe('6 to 26 weeks');
  expect(sayWait({ low: 4, high: 4 })).toBe('4 weeks');
});
