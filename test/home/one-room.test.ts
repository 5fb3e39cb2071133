import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { hardDaysC } from '../../src/home/weather/climate-hours';
import { hourlyLoadKw } from '../../src/home/weather/hourly-load';
import type { Answers } from '../../src/interview/answers';
import { homeFromAnswers } from '../../src/plan/home-from-answers';
import { jobOf } from '../../src/plan/job';
import { comfortLost } from '../../src/plan/ladder/comfort-lost';
import { nightWithoutHeat } from '../../src/plan/night-without-heat';
import { english } from '../../src/words/en';
import { answersOf } from '../households/read-household';

const electric: Answers = {
  'home-zip': '13057',
  'home-kind': 'house',
  'home-tenure': 'own',
  'goal-hours': 72,
  'goal-season': 'winter',
  'heat-main': 'heat-pump',
  'heat-pump-tons': 3,
  'heat-second': 'none',
  'cool-main': 'heat-pump',
  'fridge-count': 1,
  'must-run': ['heat', 'fridge', 'lights', 'phones'],
  'nice-run': ['none'],
};
const home = (more: Answers) => homeFromAnswers(interview, { ...electric, ...more }, '2026-11-25');
const whole = home({ 'one-room': 'no' });
const room = home({ 'one-room': 'yes' });
const winterKwh = (of: typeof whole) => of.demand.must.kwhPerDay.winter.value;

describe('one warm or cool room', () => {
  test('takes 8 to 20 kWh a day where the whole heat pump takes 37 or more', () => {
    // The two ranges are a practitioner's, for six homes: common practice, no source.
    expect(winterKwh(whole)).toBeGreaterThan(37);
    expect(winterKwh(room)).toBeGreaterThan(8);
    expect(winterKwh(room)).toBeLessThan(25);
  });

  test('needs no 240 volts and no hard start', () => {
    expect(whole.demand.must.needs240).toBe(true);
    expect(room.demand.must.needs240).toBe(false);
    expect(room.demand.must.startVa.high).toBeLessThan(whole.demand.must.startVa.high / 3);
  });

  test('is told must-run as the heat was, and the heat is not called lost', () => {
    expect(room.loads.find((load) => load.id === 'room-heater')?.rank).toBe('must');
    const carries = room.loads.map((load) => load.id);
    expect(comfortLost(room, { carries }).heat).toEqual([]);
    expect(english.job(jobOf(room), room)[0]).not.toContain('air conditioner');
    expect(english.job(jobOf(room), room)[0]).toContain(
      'one room is enough. Off in an outage: the heat pump and the backup heating strips.',
    );
  });

  test('leaves the bill and the panel of the whole home as they were', () => {
    const bill = { 'bill-kwh': 1500, 'bill-season': 'winter' };
    const asked = (one: string) => home({ ...bill, 'one-room': one }).billCheck;
    expect(asked('yes')).toEqual(asked('no'));
  });

  test('asks for no electric heat beside a stove that needs no power', () => {
    const stove = home({ 'one-room': 'yes', 'heat-second': 'wood-stove' });
    expect(stove.loads.some((load) => load.id === 'room-heater')).toBe(false);
    expect(winterKwh(stove)).toBeLessThan(4);
  });

  test('heats with the mini-split that is there, and keeps a heat pump of room size', () => {
    const split = home({
      'heat-main': 'baseboard',
      'heat-strips': 10,
      'cool-main': 'mini-split',
      'one-room': 'yes',
    });
    expect(split.loads.some((load) => load.id === 'room-heater')).toBe(false);
    expect(split.loads.find((load) => load.id === 'mini-split')?.rank).toBe('must');
    const small = home({ 'heat-pump-tons': 1, 'one-room': 'yes' });
    expect(small.loads.find((load) => load.id === 'heat-pump')?.offInOutage).toBe(false);
  });

  test('puts a room unit for the central air conditioner in summer', () => {
    const summer: Answers = {
      'heat-main': 'gas-furnace',
      'cool-main': 'central',
      'goal-season': 'summer',
      'must-run': ['cool', 'fridge'],
    };
    const central = home({ ...summer, 'one-room': 'no' });
    const cooler = home({ ...summer, 'one-room': 'yes' });
    const kwh = (of: typeof whole) => of.demand.must.kwhPerDay.summer.value;
    expect(kwh(cooler)).toBeLessThan(kwh(central) / 2);
    expect(cooler.demand.must.needs240).toBe(false);
  });
});

describe('a plug-in heater never runs while everybody sleeps', () => {
  const heater = room.loads.find((load) => load.id === 'room-heater')!;

  test('its energy is that of the 16 waking hours, and no hour of the night has any', () => {
    expect(heater.kwhPerDay.winter.high).toBeLessThanOrEqual(16 * 1.5);
    const asleep = [22, 23, 0, 1, 2, 3, 4, 5];
    expect(asleep.map((hour) => heater.shape[hour])).toEqual(asleep.map(() => 0));
    expect(heater.shape.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
  });

  test('drawn hours keep to it too, and a hard day comes to its energy', () => {
    const hardC = hardDaysC(room.site.place.climate).hardCold;
    const air = new Float32Array(8760).fill(hardC);
    const kw = hourlyLoadKw([heater], air, room.site.place.climate);
    const day = [...kw.subarray(0, 24)];
    expect(day.slice(0, 6)).toEqual([0, 0, 0, 0, 0, 0]);
    expect(day.slice(22)).toEqual([0, 0]);
    expect(day.reduce((sum, one) => sum + one, 0)).toBeCloseTo(heater.kwhPerDay.winter.value, 6);
  });

  test('the night is said to be without heat, and when to leave', () => {
    const carries = room.loads.map((load) => load.id);
    const awake = nightWithoutHeat(room, { carries })!;
    expect(english.noHeatAtNight(awake)).toMatch(/no heat at night.*below 60 °F/);
    expect(nightWithoutHeat(whole, { carries: whole.loads.map((load) => load.id) })).toBeNull();
    expect(english.job(jobOf(room), room)[0]).toContain(
      'from 6 in the morning to 10 in the evening',
    );
    const mild = home({ 'one-room': 'yes', 'goal-season': 'summer' });
    expect(nightWithoutHeat(mild, { carries })).toBeNull();
  });
});

test('one room is made of a house only where it was asked, and only for the seasons of the goal', () => {
  const { 'one-room': _, ...unasked } = answersOf('tower-six');
  const must = { 'must-run': ['heat', 'lights'], 'goal-season': 'winter' };
  const ids = (answers: Answers) =>
    homeFromAnswers(interview, answers, '2026-11-25').loads.map((load) => load.id);
  expect(ids({ ...unasked, ...must })).not.toContain('room-heater');
  expect(ids({ ...unasked, ...must, 'one-room': 'not sure' })).toContain('room-heater');
  const cooled = { ...unasked, ...must, 'one-room': 'yes', 'cool-main': 'central' };
  expect(ids(cooled)).not.toContain('room-cooler');
  expect(ids({ ...cooled, 'goal-season': 'summer' })).toContain('room-cooler');
});
