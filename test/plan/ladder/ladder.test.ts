import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { widthsOf } from '../../../src/home/build-home';
import { startingOf } from '../../../src/plan/electrical/starting';
import { ladderOf } from '../../../src/plan/ladder/ladder';
import { standbyGenerator } from '../../../src/routes/kinds/standby-generator';
import { houseWith } from '../electrical/electrical-home';

/** An invented home by itself in the hills: oxygen day and night, a deep well, one cool room in summer. */
const answers = {
  'medical-devices': ['oxygen-concentrator', 'suction'],
  'people-risk': ['over-65'],
  'heat-cold': 'both',
  'goal-season': 'summer',
  'water-source': 'well',
  'well-hp': 2,
  'cool-main': 'central',
  'one-room': 'yes',
  'gas-supply': 'propane-tank',
  'fridge-count': 1,
  'must-run': ['well', 'fridge', 'lights', 'phones'],
  'nice-run': ['cool'],
};
const home = houseWith(answers);
const route = standbyGenerator(home, widthsOf(interview));
const devices = home.loads.filter((load) => load.restsOn.includes('medical-devices'));

describe('the order of switching off', () => {
  test('never names a health device, carried or not', () => {
    expect(devices.length).toBe(2);
    for (const carries of [[], ['fridge'] as const, route.carries]) {
      const off = ladderOf(home, { ...route, carries }).flatMap((step) => step.switchOff);
      for (const device of devices) expect(off).not.toContain(device.id);
    }
  });

  test('names a thing once, and only things the home has', () => {
    const off = ladderOf(home, route).flatMap((step) => step.switchOff);
    expect(new Set(off).size).toBe(off.length);
    const cooler = home.loads.find((load) => load.onlyInOutage)!.id;
    const without = route.carries.filter((id) => id !== cooler);
    const withoutCooler = ladderOf(home, { ...route, carries: without });
    expect(withoutCooler.flatMap((step) => step.switchOff)).not.toContain(cooler);
  });

  test('has no level where nothing gives power, and leaves on what must run', () => {
    const [only, ...more] = ladderOf(home, { ...route, carries: [] });
    expect(more).toEqual([]);
    expect(only!.switchOff).not.toContain('fridge');
    expect(only!.switchOff.length).toBeGreaterThan(0);
  });
});

test('health devices are switched on first, before the hardest motor', () => {
  const { order } = startingOf(home, [route])[0]!;
  const motors = devices.map((load) => load.id).filter((id) => order.includes(id));
  expect(motors.length).toBeGreaterThan(0);
  expect(order.slice(0, motors.length).sort()).toEqual([...motors].sort());
  expect(order).toContain('well');
});
