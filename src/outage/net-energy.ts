import type { HourSeries } from '../quantity/hour-series';
import { mustBeShare, mustNotBeNegative } from '../quantity/must-be';
import { forEachStretch } from './stretches-of-hours';

/** What passes between the house and its store, each limit on the house (alternating-current) side. */
export interface StoreLimits {
  readonly chargeKw: number;
  readonly dischargeKw: number;
  /** From surplus to stored, 0..1. */
  readonly chargeEfficiency: number;
  /** From stored to delivered, 0..1. */
  readonly dischargeEfficiency: number;
  /** What the inverter draws from the cells by being on, kW, every hour. */
  readonly idleKw: number;
}

export interface HourlyEnergy {
  readonly loadKw: HourSeries;
  /** Sun, and a generator whose hours are fixed beforehand, kW at the house. */
  readonly supplyKw: HourSeries;
  /** 0 where the cells are too cold to take charge. Without it: always allowed. */
  readonly mayCharge?: Uint8Array;
  readonly limits: StoreLimits;
}

export interface NetEnergy {
  /** What each hour adds to the store, or takes from it, kWh inside the battery. */
  readonly netKwh: Float64Array;
  /** Wanted beyond the discharge limit, kWh at the house: unserved whatever the charge. */
  readonly overloadKwh: Float64Array;
}

/**
 * Each hour's effect on the store by a fixed rule, so that it depends on no charge:
 *
 *   surplus s = supply - load >= 0:   a = eta_c min(s, P_c) - idle, at most 0 when it may not charge
 *   deficit d = load - supply > 0:    a = -min(d, P_d) / eta_d - idle,  overload = max(0, d - P_d)
 *
 * Arrays of one length; pass `out` to reuse memory. Throws RangeError on unequal lengths or bad limits.
 */
export function netEnergy(hours: HourlyEnergy, out = emptyNetEnergy(hours)): NetEnergy {
  const { loadKw, supplyKw, mayCharge, limits } = hours;
  requireLimits(limits);
  const count = loadKw.length;
  if (supplyKw.length !== count || (mayCharge && mayCharge.length !== count)) {
    throw new RangeError(`load has ${count} h and supply ${supplyKw.length} h: they must be equal`);
  }
  forEachStretch(count, (from, upTo) => fill(hours, out, from, upTo));
  return out;
}

function fill(
  { loadKw, supplyKw, mayCharge, limits }: HourlyEnergy,
  { netKwh, overloadKwh }: NetEnergy,
  from: number,
  upTo: number,
): void {
  const { chargeKw, dischargeKw, chargeEfficiency, dischargeEfficiency, idleKw } = limits;
  for (let t = from; t < upTo; t++) {
    const surplus = supplyKw[t]! - loadKw[t]!;
    if (surplus >= 0) {
      const stored = chargeEfficiency * Math.min(surplus, chargeKw) - idleKw;
      const allowed = mayCharge === undefined || mayCharge[t] !== 0;
      netKwh[t] = allowed ? stored : Math.min(stored, 0);
    } else {
      netKwh[t] = -Math.min(-surplus, dischargeKw) / dischargeEfficiency - idleKw;
    }
    overloadKwh[t] = Math.max(0, -surplus - dischargeKw);
  }
}

function emptyNetEnergy(hours: HourlyEnergy): NetEnergy {
  const count = hours.loadKw.length;
  return { netKwh: new Float64Array(count), overloadKwh: new Float64Array(count) };
}

/** Refuse limits below zero and shares outside 0..1, by RangeError. */
export function requireLimits(limits: StoreLimits): void {
  mustNotBeNegative('chargeKw', limits.chargeKw, 'kW');
  mustNotBeNegative('dischargeKw', limits.dischargeKw, 'kW');
  mustBeShare('chargeEfficiency', limits.chargeEfficiency);
  mustBeShare('dischargeEfficiency', limits.dischargeEfficiency);
  mustNotBeNegative('idleKw', limits.idleKw, 'kW');
}
