import { describe, expect, it, test } from 'vitest';
import interview from '#compiled/questions.js';
import { homeFromAnswers } from '../../src/plan/home-from-answers';
import { findings } from '../../src/rules/find';
import { foodSafety } from '../../src/tables/food-safety';
import { fuelStorage } from '../../src/tables/fuel-storage';
import { namedValue } from '../../src/tables/named-values';
import type { RuleId } from '../../src/tables/rules';
import { sitingDistances } from '../../src/tables/siting-distances';
import { english } from '../../src/words/en';

const siting = (id: string) => namedValue(sitingDistances, id).value;
const food = (id: string) => namedValue(foodSafety, id).value;
const says = (id: RuleId) => english.rules[id].says;

describe('figures in the cautions agree with the published tables', () => {
  it('20 ft for a portable engine (CPSC)', () => {
    const feet = `${siting('portable-engine-to-home')} feet`;
    for (const id of ['co-distance', 'engine-too-close', 'hybrid-starts-itself'] as const) {
      expect(says(id)).toContain(feet);
    }
  });

  it('5 ft only ever as a fire rule (NFPA 37)', () => {
    const fire = siting('standby-engine-fire-code');
    expect(says('fixed-engine-exhaust')).toContain(
      `The ${fire} feet in many codes is a fire rule, not a safe distance`,
    );
  });

  it('20, 40 and 80 kWh of storage, 3 ft apart (IRC 2021 R328, NFPA 855)', () => {
    for (const id of ['storage-unit-kwh', 'storage-utility-space-kwh', 'storage-garage-kwh']) {
      expect(says('storage-limits')).toContain(`${siting(id)} kWh`);
    }
    expect(says('spacing')).toContain(`${siting('storage-between-units') / 12} feet apart`);
    expect(says('spacing')).toContain(`${siting('storage-to-opening') / 12} feet from doors`);
  });

  it('4, 48 and 24 h for food, 2 h above 40 F (USDA, FDA)', () => {
    expect(says('food-clock')).toContain(
      `about ${food('closed-fridge')} hours, a full freezer ${food('full-freezer')} and a half-full one ${food('half-full-freezer')}`,
    );
    expect(says('food-clock')).toContain(
      `above ${food('keep-at-or-below')} °F for more than ${food('discard-after-warm')} hours`,
    );
  });

  it('35 ft from a fallen wire, 50 ft for a flooded battery (NHTSA)', () => {
    expect(says('fallen-wire')).toContain(`${siting('fallen-wire')} feet`);
    expect(says('flooded-lithium')).toContain(`${siting('flooded-battery')} feet`);
  });

  it('10 to 25 gallons of gasoline as a common limit', () => {
    const gallons = (id: string) => namedValue(fuelStorage, id).value;
    expect(says('fuel-storage')).toContain(
      `${gallons('gasoline-attached-garage-gal')} to ${gallons('gasoline-total-gal')} gallons`,
    );
  });

  it('a quarter less heat at 208 V than at 240 V', () => {
    expect(1 - (208 / 240) ** 2).toBeCloseTo(0.25, 2);
    expect(says('supply-208')).toContain('about a quarter less');
  });

  it('little more than an hour of a 1,500 W heater from 2 kWh', () => {
    // 85 % of the nominal energy comes out: common practice, no source.
    expect((2 * 0.85) / 1.5).toBeGreaterThan(1);
    expect((2 * 0.85) / 1.5).toBeLessThan(1.25);
    expect(says('heater-on-pack')).toContain('little more than an hour');
  });
});

test('in a 120/208 V building a tank heater shows three quarters of its power: (208 / 240)^2', () => {
  const home = homeFromAnswers(
    interview,
    { 'home-kind': 'apartment', 'supply-volts': 'v120-208', 'water-heater': 'electric-tank' },
    '2026-11-25',
  );
  const { figures = [] } = findings(home, []).find(({ id }) => id === 'supply-208')!;
  const figure = figures.find(({ load }) => load === 'water-heater');
  const tank = home.loads.find(({ id }) => id === 'water-heater')!;
  expect(figure).toMatchObject({ load: 'water-heater', at: 'at-208-volts' });
  expect(figure!.figure.value / tank.runningWatts.value).toBeCloseTo((208 / 240) ** 2, 9);
});
