import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { trials } from '../../../src/advice/trial';
import { roofYear } from '../../../src/home/solar/roof-year';
import { drawWeather, SyntheticYears } from '../../../src/home/weather/synthetic-years';
import { answersOf } from '../../households/read-household';

const trial = trials(interview, '2026-11-28')(answersOf('ridge-road'));

test('what was counted with the same loads is counted once for all roofs and homes of a place, each roof apart', () => {
  const { home, drawn } = trial;
  let made = 0;
  const count = (of: typeof drawn, loads = home.loads, by = 1) =>
    of.counted(loads, ['hours', by], () => {
      made += 1;
      return made;
    });
  const same = drawn.over(home);
  expect([count(drawn), count(same), count(same, [...home.loads])]).toEqual([1, 1, 1]);
  // Fewer loads, and another number, are other counts.
  expect([count(same, home.loads.slice(1)), count(same, home.loads, 2)]).toEqual([2, 3]);
  const roofed = trials(
    interview,
    '2026-11-28',
  )({ ...answersOf('ridge-road'), 'roof-face': 'north' });
  const other = drawn.over(roofed.home);
  expect(count(other)).toBe(4);
  expect(JSON.stringify(other.roof)).not.toBe(JSON.stringify(drawn.roof));
});

test('the energy of loads is added up where it is looked at, and only once', () => {
  const { must } = trial.home.demand;
  expect(must.kwhPerDay).toBe(must.kwhPerDay);
  expect(Object.keys(must)).toContain('wattsByHour');
  expect(JSON.parse(JSON.stringify(must)).kwhPerDay.winter.value).toBe(must.kwhPerDay.winter.value);
});

test('hours of the first years are those of all years, and not worked out again', () => {
  const { home, drawn } = trial;
  const first = new SyntheticYears(home, drawn.years).loadKw(home.loads, 2);
  const all = drawn.loadKw(home.loads);
  const again = drawn.loadKw(home.loads, 2);
  expect(again.length).toBe(2 * 8760);
  expect(again.buffer).toBe(all.buffer);
  expect(drawn.loadKw(home.loads, 2)).toBe(again);
  expect(again).toEqual(first);
});

test("the sun's course over a roof is worked out once for a place, each roof and place apart", () => {
  const { site } = trial.home;
  const plane = { tiltDeg: 20, facingDeg: 180 };
  const clock = { lonDeg: site.place.lonDeg, utcOffsetH: site.place.utcOffsetH };
  const course = roofYear(drawWeather(site, 1).sky, plane, clock);
  expect(roofYear(drawWeather(site, 2).sky, { ...plane }, { ...clock })).toBe(course);
  const others = [
    roofYear(course.sky, { ...plane, tiltDeg: 21 }, clock),
    roofYear(course.sky, { ...plane, facingDeg: 181 }, clock),
    roofYear(course.sky, plane, { ...clock, lonDeg: clock.lonDeg + 1 }),
    roofYear(course.sky, plane, { ...clock, utcOffsetH: clock.utcOffsetH + 1 }),
    roofYear({ ...course.sky, latDeg: course.sky.latDeg + 1 }, plane, clock),
  ];
  expect(new Set([course, ...others]).size).toBe(6);
});

test('loads that follow the weather otherwise, or are off in an outage, have hours of their own', () => {
  const { home, drawn } = trial;
  const [load, ...others] = home.loads.filter(({ kwhPerDay }) => kwhPerDay.winter.value > 0);
  const sum = (first: typeof load) =>
    drawn.loadKw([first!, ...others], 1).reduce((kwh, kw) => kwh + kw, 0);
  const likely = { ...load!, follows: 'neither', offInOutage: false } as const;
  const sums = [likely, { ...likely, follows: 'cold' } as const, { ...likely, offInOutage: true }];
  expect(new Set(sums.map(sum)).size).toBe(3);
});

test('a place is drawn once for each roof, however many homes are tried there', () => {
  const at = trials(interview, '2026-11-28');
  const homes = Array.from({ length: 30 }, (_, i) =>
    at({ ...answersOf('ridge-road'), 'goal-hours': 24 + i }),
  );
  expect(new Set(homes.map(({ home }) => home)).size).toBe(30);
  expect(new Set(homes.map((one) => one.drawn)).size).toBe(1);
});
