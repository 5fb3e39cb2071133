import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { widthsOf } from '../../src/home/build-home';
import { siteShare } from '../../src/routes/generator-size';
import { ownGenerator } from '../../src/routes/kinds/own-generator';
import { ownStandby } from '../../src/routes/kinds/own-standby';
import { standbyGenerator } from '../../src/routes/kinds/standby-generator';
import { sayIf } from '../../src/words/en/routes/say-if';
import { houseWith } from '../plan/electrical/electrical-home';

const widths = widthsOf(interview);
const own = {
  'own-sources': ['engine-standby'],
  'engine-watts': 14_000,
  'engine-volts': 'v240',
  'engine-fuel': 'natural-gas',
  'engine-connect': 'inlet',
  'transfer-existing': 'automatic',
  'gas-supply': 'town-gas',
  'must-run': ['fridge', 'lights'],
  'fridge-count': 1,
  operators: 'none',
};
const routeOf = (changed = {}) => standbyGenerator(houseWith({ ...own, ...changed }), widths);

describe('a standby generator they own', () => {
  test('is a route at no price, as strong as its label at this site, and starts by itself', () => {
    const route = routeOf();
    const share = siteShare(houseWith(own));
    expect(route.costUsd.value).toBe(0);
    expect(route.parts.map((part) => part.equipmentClass)).toContain('standby-engine');
    expect(route.power!.continuousWatts).toBe(14_000);
    expect(route.generator!.siteKw).toBeCloseTo(14 * share, 6);
    expect(route.transferTime.code).toBe('starts-itself');
    expect(route.carries).toContain('fridge');
  });

  test('works if it was tested, and its switch was looked at', () => {
    expect(routeOf().verdict).toBe('works-if');
    expect(routeOf().ifs.map(sayIf).join('\n')).toMatch(
      /carried the house in a test[\s\S]*transfer switch that is there/,
    );
  });

  test('without a switch that was seen, the switch and its permit are bought', () => {
    const classes = (changed: object) =>
      routeOf(changed)
        .parts.filter((part) => part.costUsd.value > 0)
        .map((part) => part.equipmentClass);
    expect(classes({ 'transfer-existing': 'none' })).toEqual(['automatic-transfer', 'permit']);
    expect(classes({ 'transfer-existing': 'not sure' })).toEqual(['automatic-transfer', 'permit']);
    expect(classes({ 'engine-connect': 'not-connected' })).toEqual([
      'automatic-transfer',
      'permit',
    ]);
  });

  test('with a switch worked by hand somebody must be there, and nothing goes by itself', () => {
    expect(routeOf({ 'transfer-existing': 'manual-switch' }).verdict).toBe('cannot');
    const two = routeOf({ 'transfer-existing': 'manual-switch', operators: 'two' });
    expect(two.transferTime.code).toBe('switched-over-by-hand');
  });

  test('burns its own fuel: propane ends with the tank, gas from the street does not', () => {
    expect(routeOf().lasting.hours).toBeNull();
    const tank = { 'engine-fuel': 'propane', 'gas-supply': 'propane-tank', 'propane-gallons': 200 };
    const hours = routeOf(tank).lasting.hours!.value;
    expect(hours).toBeGreaterThan(0);
    expect(routeOf({ ...tank, 'propane-gallons': 100 }).lasting.hours!.value).toBeCloseTo(
      hours / 2,
      6,
    );
    const oil = routeOf({ 'engine-fuel': 'diesel', 'gas-supply': 'none', 'diesel-gallons': 10 });
    expect(oil.fuel!.fuel).toBe('diesel');
    expect(oil.fuel!.atHand!.value).toBe(10);
  });

  test('its place is held to the same 20 feet', () => {
    expect(routeOf({ 'engine-place': 'open-closer' }).verdict).toBe('cannot');
    expect(routeOf({ 'engine-place': 'not sure' }).verdict).toBe('cannot');
  });

  test('one too weak for anything does not hide the one to buy', () => {
    const weak = routeOf({ 'engine-watts': 500, 'must-run': ['heat'], 'heat-main': 'heat-pump' });
    expect(weak.parts.every((part) => part.costUsd.value > 0)).toBe(true);
  });

  test('of two generators the label read may be of either: the fixed one is not counted', () => {
    const both = routeOf({ 'own-sources': ['engine-standby', 'engine-portable'] });
    expect(both.costUsd.value).toBeGreaterThan(1000);
  });
});

describe('fuel and label are those of the generator that would be used', () => {
  const diesel = { 'engine-fuel': 'diesel', 'gasoline-gallons': 5, 'goal-hours': 24 };

  test('a diesel one burns the diesel told, not the gasoline', () => {
    const route = routeOf({ ...diesel, 'diesel-gallons': 120 });
    expect(route.fuel).toMatchObject({ fuel: 'diesel' });
    expect(route.fuel!.atHand!.value).toBe(120);
    const { hours } = route.lasting;
    expect(hours!.value).toBeCloseTo((24 * 120) / route.fuel!.perDay.value, 6);
    const unread = routeOf({ ...diesel, 'diesel-gallons': 'not sure' }).fuel!.atHand!;
    expect([unread.low, unread.value, unread.high]).toEqual([0, 5, 20]);
  });

  test('of two the one told counts; nobody knows which: the one that needs a person', () => {
    const two = { 'own-sources': ['engine-portable', 'engine-standby'] };
    const counts = (which: string) => {
      const home = houseWith({ ...own, ...two, 'engine-which': which });
      return [ownStandby(home) !== null, ownGenerator(home) !== null];
    };
    expect(counts('standby')).toEqual([true, false]);
    expect(counts('portable')).toEqual([false, true]);
    expect(counts('not sure')).toEqual([false, true]);
  });
});
