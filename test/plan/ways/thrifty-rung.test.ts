import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { livedHome } from '../../../src/home/measures/lived-home';
import { isHealthDevice } from '../../../src/home/people/health-devices';
import { homeFromAnswers } from '../../../src/plan/home-from-answers';
import { ladderOf } from '../../../src/plan/ladder/ladder';
import { powerPack } from '../../../src/routes/kinds/power-pack';
import { answersOf } from '../../households/read-household';

const home = homeFromAnswers(interview, answersOf('tower-six'), '2026-11-25');
const route = powerPack(home);

test('the ladder leads from living as usual to living thriftily, at one rung', () => {
  const rung = ladderOf(home, route).filter((step) => step.lessens.length > 0);
  expect(rung).toHaveLength(1);
  expect(rung[0]).toMatchObject({
    switchOff: ['lights-led'],
    lessens: ['phone-charging', 'modem-router'],
  });
  const watts = (way: 'usual' | 'thrifty') =>
    (livedHome(home, way).demand.must.kwhPerDay.winter.value * 1000) / 24;
  // The refrigerator and the rest are no must here: the rung is worth what the two ways of must-run differ by.
  expect(rung[0]!.savesWatts).toBeCloseTo(watts('usual') - watts('thrifty'), 6);
});

test('no rung lessens a health device, and a route sized for thrift has none left to take', () => {
  const devices = home.loads.filter(isHealthDevice).map(({ id }) => id);
  expect(devices.length).toBeGreaterThan(0);
  for (const step of ladderOf(home, route)) {
    for (const id of devices) expect([...step.lessens, ...step.switchOff]).not.toContain(id);
  }
  const lived = livedHome(home, 'thrifty');
  const thrifty = { ...powerPack(lived), way: 'thrifty' as const };
  const steps = ladderOf(lived, thrifty);
  expect(steps.flatMap((step) => step.lessens)).toEqual([]);
  // What thrift makes needless is off from the start.
  expect(steps[0]!.switchOff).toContain('lights-led');
});
