// Nine dispatch problems of one day, invented, whose optima were worked out apart from this program: hourly linear
// programs solved with HiGHS through scipy, each confirmed by a mixed-integer run that forbids charging and
// discharging, or import and export, in the same hour; six of them also by dynamic programming on a fine grid.
import type { Battery } from '../bill/battery';
import type { DispatchProblem } from '../bill/dispatch-problem';
import { load, solar } from './demo-month';

const by = (price: (hour: number) => number) => Array.from({ length: 24 }, (_, h) => price(h));
const none = by(() => 0);

const priceB = by((h) => (h >= 16 && h < 21 ? 0.36 : 0.15));
const price2 = [
  0.16, 0.16, 0.16, 0.16, 0.16, 0.16, 0.34, 0.34, 0.34, 0.22, 0.22, 0.22, 0.22, 0.22, 0.22, 0.22,
  0.52, 0.52, 0.52, 0.52, 0.52, 0.22, 0.16, 0.16,
];
const load2 = [
  1.2, 1.2, 1.2, 1.2, 1.3, 1.5, 2, 2.2, 1.6, 1.2, 1, 0.9, 0.9, 0.9, 1, 1.2, 1.8, 2.3, 2.5, 2.4, 2.2,
  1.9, 1.5, 1.3,
];
const solar2 = [0, 0, 0, 0, 0, 0, 0, 0, 0.6, 1.8, 3, 3.8, 4, 3.6, 2.6, 1.2, 0, 0, 0, 0, 0, 0, 0, 0];
const price3 = by((h) => (h < 16 ? 0.18 : h < 21 ? 0.42 : 0.25));
const credit3 = by((h) => (h >= 17 && h <= 19 ? 0.3 : 0.05));
const priceD = by((h) => (h >= 15 && h < 20 ? 0.11 : 0.08));

const battery = (kw: number, usableKwh: number, ec = 0.95, ed = 0.95): Battery => ({
  usableKwh,
  chargeKw: kw,
  dischargeKw: kw,
  chargeEfficiency: ec,
  dischargeEfficiency: ed,
});

export interface DispatchRow {
  readonly name: string;
  readonly problem: DispatchProblem;
  readonly noBattery: number;
  readonly optimum: number;
  readonly timeRule: number;
  readonly selfUseRule: number;
  /** Days billed and $/kW on the highest import of hours 15 to 19; one day and no demand charge when missing. */
  readonly demand?: { readonly days: number; readonly perKw: number };
}

function row(
  name: string,
  numbers: readonly [number, number, number, number],
  store: Battery,
  parts: Partial<DispatchProblem> & { floor?: number },
  demand?: DispatchRow['demand'],
): DispatchRow {
  const { floor = 0, ...rest } = parts;
  const [noBattery, optimum, timeRule, selfUseRule] = numbers;
  const problem: DispatchProblem = {
    battery: store,
    loadKwh: load,
    solarKwh: none,
    importPrice: priceB,
    exportPrice: none,
    exportAllowed: false,
    batteryMayExport: true,
    gridMayCharge: true,
    floorKwh: Array(25).fill(floor),
    ...rest,
  };
  return { name, problem, noBattery, optimum, timeRule, selfUseRule, ...(demand && { demand }) };
}

const two = { loadKwh: load2, solarKwh: solar2, importPrice: price2, floor: 1 };
const sell = { exportAllowed: true, exportPrice: by(() => 0.06) };
const three = { solarKwh: solar, importPrice: price3, floor: 1.5 };
const sell3 = { exportAllowed: true, exportPrice: credit3 };
const b2 = battery(4, 10, 0.95, 0.93);
const b3 = battery(7.5, 15);

export const dispatchRows: readonly DispatchRow[] = [
  row('I1a', [6.768, 4.9269, 4.9269, 6.768], battery(5, 10), {}),
  row('I1b', [6.768, 5.3145, 5.3145, 6.768], battery(1.5, 10), {}),
  row('I2a', [9.674, 4.4953, 6.8374, 5.3216], b2, two),
  row('I2b', [8.9, 4.2897, 6.0634, 5.116], b2, { ...two, ...sell }),
  row('I2c', [8.9, 5.116, 6.0634, 5.116], b2, { ...two, ...sell, gridMayCharge: false }),
  row('I3a', [5.177, 0.7335, 3.4787, 0.7335], b3, three),
  row('I3b', [4.242, 0.181, 2.5437, 0.509], b3, { ...three, ...sell3 }),
  row('I3c', [4.242, 0.509, 2.5437, 0.509], b3, { ...three, ...sell3, batteryMayExport: false }),
  row(
    'I4',
    [82.266, 56.1423, 60.7023, 82.266],
    battery(5, 10),
    { importPrice: priceD },
    { days: 22, perKw: 9.5 },
  ),
];
