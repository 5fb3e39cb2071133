import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { widthsOf } from '../../../src/home/build-home';
import { standbyGenerator } from '../../../src/routes/kinds/standby-generator';
import { sayNote } from '../../../src/words/en/routes/say-note';
import { houseWith } from '../../plan/electrical/electrical-home';

const widths = widthsOf(interview);
const house = (changed: object = {}) =>
  houseWith({
    'gas-supply': 'propane-tank',
    'propane-gallons': 200,
    'goal-season': 'winter',
    'must-run': ['fridge', 'heat', 'lights'],
    'fridge-count': 1,
    'people-count': 3,
    ...changed,
  });
const fuelOf = (changed: object = {}) => {
  const route = standbyGenerator(house(changed), widths);
  return { ...route.fuel!, hours: route.lasting.hours!, notes: route.notes };
};
const gasHouse = { 'heat-main': 'gas-furnace', 'water-heater': 'gas-pilot', 'cook-main': 'gas' };

describe('propane', () => {
  test('told to be in the tank is contents, not the size of a tank', () => {
    const { atHand } = fuelOf();
    expect(atHand!.value).toBeCloseTo(0.9 * 200, 9);
    expect(atHand!.high).toBe(200);
  });

  test('burned by furnace, water heater and stove comes from the same tank', () => {
    const { perDay, besidePerDay, tank, hours, notes } = fuelOf(gasHouse);
    // Both draw at once: hours = 24 x contents / (generator + house).
    expect(hours.value).toBeCloseTo((24 * tank!.value) / (perDay.value + besidePerDay!.value), 6);
    expect(hours.low).toBeCloseTo((24 * tank!.low) / (perDay.high + besidePerDay!.high), 6);
    expect(notes).toContainEqual(
      expect.objectContaining({ code: 'shared-tank', uses: ['heat', 'hot-water', 'cooking'] }),
    );
    expect(notes.map(sayNote).join(' ')).toMatch(
      /the house burns from it too: .*propane for hot water, propane for cooking\)/,
    );
  });

  // A furnace in a cold state burns 400 to 1,000 gal of a winter of about 6,500 degree days F (common practice, no
  // source): 6 to 15 gal on a day of 60 to 65 degree days, for 1,500 sq ft.
  test('a furnace takes several gallons of a hard winter day, and none without power or in summer', () => {
    const heated = { 'heat-main': 'gas-furnace' };
    const winter = fuelOf(heated).besidePerDay!.value;
    expect(winter).toBeGreaterThan(4);
    expect(winter).toBeLessThan(12);
    expect(fuelOf({ ...heated, 'goal-season': 'summer' }).besidePerDay?.value ?? 0).toBe(0);
    expect(fuelOf({ 'heat-main': 'wood' }).besidePerDay?.value ?? 0).toBe(0);
  });

  test('piped gas has no tank to share', () => {
    const route = standbyGenerator(house({ ...gasHouse, 'gas-supply': 'town-gas' }), widths);
    expect(route.fuel!.atHand).toBeNull();
    expect(route.fuel!.besidePerDay).toBeUndefined();
  });
});

describe('what nobody told of the house shortens the careful hours of its tank, and never lengthens them', () => {
  const lowOf = (changed: object) => fuelOf({ ...gasHouse, ...changed }).hours.low;

  test('the size of the house: a large one is counted', () => {
    const unknown = lowOf({ 'home-area': 'not sure' });
    expect(unknown).toBeCloseTo(lowOf({ 'home-area': 3000 }), 6);
    expect(unknown).toBeLessThan(lowOf({ 'home-area': 1800 }));
    expect(fuelOf({ ...gasHouse, 'home-area': 'not sure' }).hours.value).toBeCloseTo(
      fuelOf({ ...gasHouse, 'home-area': 1800 }).hours.value,
      6,
    );
  });

  test.each([
    ['water-heater', 'gas-pilot', 'electric-tank'],
    ['cook-main', 'gas', 'electric'],
  ])('%s: it is counted to burn', (id, burns, none) => {
    const { hours } = fuelOf({ ...gasHouse, [id]: 'not sure' });
    expect(hours.low).toBeCloseTo(lowOf({ [id]: burns }), 6);
    expect(hours.value).toBeCloseTo(fuelOf({ ...gasHouse, [id]: none }).hours.value, 6);
  });
});
