import type { Highs, ModelData } from 'highs';
import type { DispatchProblem } from '../bill/dispatch-problem';

export interface ProgramOptions {
  readonly startKwh?: number;
  /** End at the charge of the start, which is free unless given. */
  readonly cyclic?: boolean;
  /** Forbid charging and discharging, and import and export, in the same hour: needed when a price is negative. */
  readonly exclusive?: boolean;
  /** $/kW on the highest import of the hours marked. */
  readonly demand?: { readonly perKw: number; readonly counts: ArrayLike<number> };
}

/** Columns of each hour: import, export, solar held back, charge, discharge, charge of the store, two switches. */
const wide = 8;
const [G, X, K, C, D, S, ZC, ZG] = [0, 1, 2, 3, 4, 5, 6, 7];

/**
 * A dispatch problem as a linear (or mixed-integer) program for a general solver, written straight from the balance
 * of the house and of the store and sharing no code with our own optimum:
 * g - x - k + d - c = load - solar, s(h+1) = s(h) + ec c - d / ed, floor <= s <= usable.
 */
export function dispatchProgram(
  highs: Highs,
  problem: DispatchProblem,
  options: ProgramOptions,
): ModelData {
  const hours = problem.loadKwh.length;
  const numCols = hours * wide + 2;
  const peakCol = numCols - 1;
  const rows = new Rows();
  const cost = new Float64Array(numCols);
  const lower = new Float64Array(numCols);
  const upper = new Float64Array(numCols);
  const integrality = new Int32Array(numCols);
  const { battery } = problem;
  for (let h = 0; h < hours; h++) {
    const at = h * wide;
    const net = problem.loadKwh[h]! - problem.solarKwh[h]!;
    const most = 1000;
    cost[at + G] = problem.importPrice[h]!;
    cost[at + X] = -problem.exportPrice[h]!;
    cost[at + D] = battery.wearPerKwh ?? 0;
    upper[at + G] = options.exclusive ? most : highs.infinity;
    upper[at + X] = problem.exportAllowed ? most : 0;
    upper[at + K] = problem.solarKwh[h]!;
    upper[at + C] = problem.gridMayCharge
      ? battery.chargeKw
      : Math.min(battery.chargeKw, Math.max(0, -net));
    const sells = problem.exportAllowed && problem.batteryMayExport;
    upper[at + D] = sells ? battery.dischargeKw : Math.min(battery.dischargeKw, Math.max(0, net));
    lower[at + S] = problem.floorKwh[h]!;
    upper[at + S] = battery.usableKwh;
    rows.add(net, net, [at + G, 1], [at + X, -1], [at + K, -1], [at + D, 1], [at + C, -1]);
    const next = h + 1 < hours ? at + wide + S : hours * wide;
    const { chargeEfficiency: ec, dischargeEfficiency: ed } = battery;
    rows.add(0, 0, [next, 1], [at + S, -1], [at + C, -ec], [at + D, 1 / ed]);
    if (options.demand?.counts[h]) rows.add(-highs.infinity, 0, [at + G, 1], [peakCol, -1]);
    if (!options.exclusive) continue;
    integrality[at + ZC] = integrality[at + ZG] = 1;
    upper[at + ZC] = upper[at + ZG] = 1;
    rows.add(-highs.infinity, 0, [at + C, 1], [at + ZC, -battery.chargeKw]);
    rows.add(-highs.infinity, battery.dischargeKw, [at + D, 1], [at + ZC, battery.dischargeKw]);
    rows.add(-highs.infinity, 0, [at + G, 1], [at + ZG, -100]);
    rows.add(-highs.infinity, 100, [at + X, 1], [at + ZG, 100]);
  }
  lower[hours * wide] = problem.floorKwh[hours]!;
  upper[hours * wide] = battery.usableKwh;
  if (options.startKwh !== undefined) lower[S] = upper[S] = options.startKwh;
  if (options.cyclic) rows.add(0, 0, [hours * wide, 1], [S, -1]);
  cost[peakCol] = options.demand?.perKw ?? 0;
  upper[peakCol] = highs.infinity;
  return {
    numCols,
    numRows: rows.lower.length,
    colCost: cost,
    colLower: lower,
    colUpper: upper,
    rowLower: rows.lower,
    rowUpper: rows.upper,
    matrix: { format: 'csr', numRows: rows.lower.length, numCols, ...rows.packed() },
    ...(options.exclusive && {
      integrality: integrality as unknown as NonNullable<ModelData['integrality']>,
    }),
  };
}

class Rows {
  readonly lower: number[] = [];
  readonly upper: number[] = [];
  private readonly starts = [0];
  private readonly indices: number[] = [];
  private readonly values: number[] = [];

  add(lower: number, upper: number, ...entries: [number, number][]): void {
    this.lower.push(lower);
    this.upper.push(upper);
    for (const [column, value] of entries) {
      this.indices.push(column);
      this.values.push(value);
    }
    this.starts.push(this.indices.length);
  }

  packed() {
    return { starts: this.starts, indices: this.indices, values: this.values };
  }
}

/** Cost of the program's optimum and the seconds the solver ran, reading the model in not counted. */
export function solveProgram(highs: Highs, data: ModelData): { cost: number; seconds: number } {
  const model = highs.createModel(data);
  try {
    model.options.set('output_flag', false);
    if (data.integrality) model.options.set('mip_rel_gap', 1e-9);
    const before = performance.now();
    const { modelStatus } = model.run();
    const seconds = (performance.now() - before) / 1000;
    if (modelStatus !== highs.constants.modelStatus.optimal) {
      throw new Error(`the solver ended with status ${modelStatus}`);
    }
    return { cost: model.getObjectiveValue(), seconds };
  } finally {
    model.dispose();
  }
}
