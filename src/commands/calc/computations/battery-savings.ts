import { dispatchOfYear } from '../../../bill/calculations';
import { demoTariffs } from '../../../bill/tariff/demo-tariffs';
import { sayNotExact } from '../../../words/en/money/say-ceiling-note';
import { batteryForBills, batteryIn, sayHiddenPeak } from '../battery-for-bills';
import type { Calculation, Outcome } from '../calculation';
import { citedTables } from '../cited-table';
import type { Values } from '../values';

/** What a battery saves on a year's bills. */
export const batterySavings: Calculation = {
  name: 'battery-savings',
  about: "what a battery saves on a year's bills by a rule, and at the very most",
  inputs: batteryForBills,
  source: `exact optimum by a value function, a rule that sees only the past; ${citedTables(demoTariffs)}`,
  example: 'tariff=two-prices kwh-per-year=10791 usable=10 power=5 kept=0',
  run: savingsOf,
};

function savingsOf(values: Values): Outcome {
  const battery = batteryIn(values);
  if (typeof battery === 'string') return { ok: false, says: battery };
  const { rule, ceiling } = dispatchOfYear(battery);
  const [byRule, atMost] = [rule.savings - rule.wear, ceiling.savings - ceiling.wear];
  const parts = (who: string, year: { savings: number; wear: number }) => [
    { label: `off the bills, ${who}`, formula: 'bills before - after', value: year.savings },
    { label: `wear, ${who}`, formula: 'kWh out x wear', value: year.wear },
  ];
  const steps = [...parts('rule', rule), ...parts('ceiling', ceiling)];
  return {
    ok: true,
    steps: steps.map((step) => ({ ...step, unit: '$' })),
    results: [
      { label: 'saved a year by the rule', value: byRule, unit: '$' },
      { label: 'at the very most, every hour known beforehand', value: atMost, unit: '$' },
      ...(atMost > 0.01
        ? [{ label: 'share the rule keeps', value: (100 * byRule) / atMost, unit: '%' }]
        : []),
    ],
    notes: [
      ...(ceiling.notExact === null
        ? []
        : [`The ceiling is not exact: ${sayNotExact[ceiling.notExact]}`]),
      ...sayHiddenPeak(battery.tariff),
      'A first look: an ordinary home without solar, the same losses in and out.',
    ],
  };
}
