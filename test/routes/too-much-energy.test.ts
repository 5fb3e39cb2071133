import { expect, test } from 'vitest';
import type { Load } from '../../src/home/home';
import { leaveOutTooMuch } from '../../src/routes/too-much-energy';
import { houseWith } from '../plan/electrical/electrical-home';

const home = houseWith({ 'goal-hours': 120, 'goal-season': 'summer', 'fridge-count': 1 });
const fridge = home.loads.find((load) => load.id === 'fridge')!;

const load = (id: Load['id'], rank: Load['rank'], kwh: number): Load => ({
  ...fridge,
  id,
  rank,
  kwhPerDay: {
    ...fridge.kwhPerDay,
    summer: { ...fridge.kwhPerDay.summer, value: kwh, low: kwh, high: kwh },
  },
});
const ids = (of: readonly { id: string }[]) => of.map((one) => one.id);

// The largest battery of the table gives about 31 kWh, 5 days of about 5 kWh a day with its own idle draw.
test('nothing that must keep running goes while it is enough to leave out what need not', () => {
  const all = [
    load('fridge', 'must', 4),
    load('pool-pump', 'wait', 2.5),
    load('washer', 'good', 2),
  ];
  const { loads, leftOut } = leaveOutTooMuch(home, all, false);
  expect(ids(loads)).toEqual(['fridge']);
  expect(leftOut.map((one) => one.load)).toEqual(['pool-pump', 'washer']);
});

test('what no battery carries goes first, and keeps the rest', () => {
  const all = [
    load('central-ac', 'must', 46),
    load('fridge', 'must', 2),
    load('washer', 'good', 1),
  ];
  const { loads, leftOut } = leaveOutTooMuch(home, all, false);
  expect(ids(loads)).toEqual(['fridge', 'washer']);
  expect(leftOut).toMatchObject([{ load: 'central-ac', must: true }]);
});
