import { describe, expect, test } from 'vitest';
import { planMarkdown } from '../../src/papers/household/to-markdown';
import { gallonsForGoal, keptGal } from '../../src/routes/fuel/fuel-containers';
import { onceStored } from '../../src/routes/fuel/once-stored';
import type { Part } from '../../src/routes/route';
import { english } from '../../src/words/en';
import { sayHowLong } from '../../src/words/en/routes/say-how-long';
import { planOf } from '../households/read-household';

const birch = planOf('birch-street');
const { route } = birch.advice;
const cans = route.parts.find((part) => part.equipmentClass === 'fuel-storage')!;
const gallonsIn = ({ called }: Part) => (called.code === 'cans' ? called.gallons : 0);

describe('cans bought and fuel counted are one sum', () => {
  test('the cans bought hold what is still to be stored, no more', () => {
    expect(gallonsIn(cans)).toBe(birch.fuelToStore!.moreGallons);
    expect(keptGal(birch.home) + gallonsIn(cans)).toBe(gallonsForGoal(birch.home, route.fuel!));
    expect(onceStored(birch.home, route)!.gallons).toBe(keptGal(birch.home) + gallonsIn(cans));
  });

  test('hours are told on what is here and once the cans are filled, by hand: 24 h x gallons / burn a day', () => {
    const then = onceStored(birch.home, route)!.route.lasting;
    const perDay = route.fuel!.perDay;
    expect(then.hours!.value).toBeCloseTo((24 * 21) / perDay.value, 6);
    expect(then.hours!.low).toBeCloseTo((24 * 21) / perDay.high, 6);
    expect(then.reachesGoal).toBe(true);
    expect(route.lasting.hours!.value).toBeCloseTo((24 * 10) / perDay.value, 6);
    const first = planMarkdown(birch, english).split('\n## ')[0]!;
    expect(first).toMatch(
      /How long: about 35 h, careful count 24 h \(10 gal here\); with 21 gal stored about 3 days 2 h, careful count 2 days 2 h/,
    );
  });

  test('the odds of the goal are printed once stored too, and those of the sizes beside', () => {
    const ride = birch.rideThrough.routes[0]!;
    const today = ride.odds.must!.find((one) => one.hours === 72)!;
    expect(today.season).toBeLessThan(0.01);
    expect(ride.onceStored!.gallons).toBe(21);
    expect(ride.onceStored!.share).toBeGreaterThan(0.5);
    expect(ride.onceStored!.carefulShare).toBeLessThanOrEqual(ride.onceStored!.share);
    const larger = ride.neighbors.find(({ step }) => step.code === 'generator' && step.larger)!;
    // A larger generator burns more of the same cans.
    expect(larger.oddsOnceStored).toBeLessThanOrEqual(ride.onceStored!.share);
    expect(planMarkdown(birch, english)).toContain('3 days, cans filled |');
  });
});

describe('where none is kept', () => {
  test('no more is counted than the cans bought hold', () => {
    const mill = planOf('mill-lane', { 'gasoline-gallons': 0 });
    const bought = mill.advice.route.parts.find((part) => part.equipmentClass === 'fuel-storage')!;
    expect(mill.advice.route.fuel!.atHand!.value).toBeLessThanOrEqual(gallonsIn(bought));
    expect(gallonsIn(bought)).toBe(mill.fuelToStore!.moreGallons);
    expect(sayHowLong(mill.advice.route.lasting)).toContain('not here yet');
  });
});

test('with enough kept no cans are bought', () => {
  const kept = planOf('birch-street', { 'gasoline-gallons': 25 });
  const inlet = kept.routes.find((one) => one.kind === 'engine-inlet')!;
  expect(inlet.parts.map((part) => part.equipmentClass)).not.toContain('fuel-storage');
  expect(onceStored(kept.home, inlet)).toBeNull();
});

test('hours that were walked no further than was counted do not get less likely by more fuel', () => {
  const { hours } = route.lasting;
  const capped = { ...route.lasting, hours: { ...hours!, high: hours!.value } };
  const then = onceStored(birch.home, { ...route, lasting: capped })!.route.lasting.hours!;
  expect(then.high).toBeGreaterThanOrEqual(then.value);
  expect(then.low).toBeLessThanOrEqual(then.value);
});
