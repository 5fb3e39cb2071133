import { reserveOfYear } from '../../../bill/calculations';
import { demoTariffs } from '../../../bill/tariff/demo-tariffs';
import { batteryForBills, batteryIn, sayHiddenPeak } from '../battery-for-bills';
import type { Calculation, Outcome } from '../calculation';
import { citedTables } from '../cited-table';
import type { Values } from '../values';

/** What it costs to keep charge for outages. */
export const keptCharge: Calculation = {
  name: 'kept-charge',
  about: 'what keeping charge for outages costs a year in savings given up',
  inputs: batteryForBills,
  source: `a year's bills by a rule that sees only the past, at each level; ${citedTables(demoTariffs)}`,
  example: 'tariff=two-prices kwh-per-year=10791 usable=10 power=5 kept=50',
  run: costOf,
};

function costOf(values: Values): Outcome {
  const battery = batteryIn(values);
  if (typeof battery === 'string') return { ok: false, says: battery };
  const levels = reserveOfYear(battery);
  const chosen = levels.find((level) => level.chosen)!;
  return {
    ok: true,
    steps: levels.map(({ share, savings }) => ({
      label: `saved with ${Number((100 * share).toFixed(2))}% kept`,
      formula: 'bills before - after - wear',
      value: savings,
      unit: '$',
    })),
    results: [
      { label: 'kept', value: chosen.keptKwh, unit: 'kWh' },
      { label: 'still saved a year', value: chosen.savings, unit: '$' },
      { label: 'given up a year against keeping nothing', value: chosen.cost, unit: '$' },
    ],
    notes: [
      ...sayHiddenPeak(battery.tariff),
      'A first look: an ordinary home without solar, the same losses in and out.',
    ],
  };
}
