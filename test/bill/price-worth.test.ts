// Riders and taxes on invented tariffs; what is expected is arithmetic on them.
import { describe, expect, test } from 'vitest';
import { ceilingYear } from '../../src/bill/dispatch/ceiling-year';
import { dispatchYear, settingOfYear } from '../../src/bill/dispatch/dispatch-year';
import { demoTariff } from '../../src/bill/tariff/demo-tariffs';
import { priceWorth } from '../../src/bill/tariff/price-worth';
import type { Tariff } from '../../src/bill/tariff/tariff';
import { demoSetting } from '../bench/bench-dispatch';

const more: Pick<Tariff, 'riders' | 'taxes'> = {
  riders: [
    { name: 'fuel', perKwh: 0.03 },
    { name: 'adjustment', shareOfEnergy: 0.1, perMonth: 4 },
  ],
  taxes: [
    { name: 'state', share: 0.2, on: 'charges' },
    { name: 'city', share: 0.05, on: 'bill' },
  ],
};
const settingWith = (letter: 'B' | 'C' | 'D', changed: Partial<Tariff>) =>
  settingOfYear({ ...demoSetting(letter).input, tariff: { ...demoTariff(letter), ...changed } });

test('a kWh at 40 cents, 10 % and 3 cents more, 20 % and then 5 % tax: (0.44 + 0.03) x 1.2 x 1.05', () => {
  const { energyFactor, perKwh, demandFactor, creditFactor } = priceWorth({
    ...demoTariff('B'),
    ...more,
  });
  expect(0.4 * energyFactor + perKwh).toBeCloseTo(0.47 * 1.26, 12);
  expect(demandFactor).toBeCloseTo(1.26, 12);
  expect(creditFactor).toBeCloseTo(1.05, 12);
  expect(priceWorth(demoTariff('B'))).toEqual({
    energyFactor: 1,
    perKwh: 0,
    demandFactor: 1,
    creditFactor: 1,
  });
});

describe('a year with riders and taxes', () => {
  test('is billed what the hours are worth, and what is paid each month with its taxes', () => {
    const { problem, before } = settingWith('B', { ...more, creditFloor: undefined });
    let hours = 0;
    for (let h = 0; h < 8760; h++) {
      const net = problem.loadKwh[h]! - problem.solarKwh[h]!;
      hours += net > 0 ? net * problem.importPrice[h]! : net * problem.exportPrice[h]!;
    }
    expect(before.total).toBeCloseTo(hours + 12 * (14 + 4) * 1.26, 6);
  });

  test.each(['B', 'C', 'D'] as const)(
    'under tariff %s no rule saves more than the ceiling after wear',
    (letter) => {
      const setting = settingWith(letter, more);
      const ceiling = ceilingYear(setting);
      for (const strategy of ['self-use', 'time-shift', 'both'] as const) {
        const ruled = dispatchYear(setting, strategy);
        expect(ruled.savings - ruled.wear, strategy).toBeLessThan(
          ceiling.savings - ceiling.wear + 1e-6,
        );
      }
    },
  );

  test('a flat tax on everything saves just so much more as it is high', () => {
    const taxes = [{ name: 'all', share: 0.2, on: 'bill' as const }];
    const [plain, taxed] = [settingWith('B', {}), settingWith('B', { taxes })];
    expect(ceilingYear(taxed).savings).toBeCloseTo(1.2 * ceilingYear(plain).savings, 4);
  });

  test('a rider of 10 cents turns the choice: sending out at 12 cents no longer beats keeping for a price of 5', () => {
    const { input } = demoSetting('B');
    const cheap: Tariff = {
      ...demoTariff('B'),
      seasons: [
        {
          name: 'all year',
          from: '01-01',
          to: '12-31',
          periods: [{ name: 'all hours', price: 0.05 }],
        },
      ],
      export: {
        rule: 'net-billing',
        seasons: [
          {
            name: 'all year',
            from: '01-01',
            to: '12-31',
            periods: [{ name: 'all hours', price: 0.12 }],
          },
        ],
      },
    };
    const given = (tariff: Tariff) => {
      const setting = settingOfYear({ ...input, tariff, gridMayCharge: false });
      return ceilingYear(setting).dispatch.dischargeKwh.reduce((sum, kwh) => sum + kwh, 0);
    };
    expect(given(cheap)).toBeCloseTo(0, 6);
    expect(given({ ...cheap, riders: [{ name: 'fuel', perKwh: 0.1 }] })).toBeGreaterThan(100);
  });
});

test('a least bill that is reached is said to leave the ceiling open', () => {
  expect(ceilingYear(settingWith('B', { minimumBill: 500 })).notExact).toBe('least-bill');
  expect(ceilingYear(settingWith('B', {})).notExact).toBeNull();
});
