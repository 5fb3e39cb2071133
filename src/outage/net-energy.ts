import { requireWithin } from '../quantity/require-within';

/** What passes between the house and its store, each limit on the house (alternating-current) side. */
export interface StoreLimits {
  readonly chargeKw: number;
  readonly dischargeKw: number;
  /** From surplus to stored, 0..1. */
  readonly chargeEfficiency: number;
  /** From stored to delivered, 0..1. */
  readonly dischargeEfficiency: number;
  /** What the inverter draws by being on, kW; added to every hour's load. */
  readonly idleKw: number;
}

export interface HourlyEnergy {
  readonly loadKw: Float64Array;
  /** Sun, and an engine whose hours are fixed beforehand, kW at the house. */
  readonly supplyKw: Float64Array;
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
 *   surplus s = supply - load - idle >= 0:   a = min(eta_c s, eta_c P_c), or 0 when it may not charge
 *   deficit d = load + idle - supply > 0:    a = -min(d, P_d) / eta_d,  overload = max(0, d - P_d)
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
  const { netKwh, overloadKwh } = out;
  const { chargeKw, dischargeKw, chargeEfficiency, dischargeEfficiency, idleKw } = limits;
  for (let t = 0; t < count; t++) {
    const surplus = supplyKw[t]! - loadKw[t]! - idleKw;
    overloadKwh[t] = 0;
    if (surplus >= 0) {
      const allowed = mayCharge === undefined || mayCharge[t] !== 0;
      netKwh[t] = allowed ? chargeEfficiency * Math.min(surplus, chargeKw) : 0;
    } else if (-surplus > dischargeKw) {
      netKwh[t] = -dischargeKw / dischargeEfficiency;
      overloadKwh[t] = -surplus - dischargeKw;
    } else netKwh[t] = surplus / dischargeEfficiency;
  }
  return out;
}

function emptyNetEnergy(hours: HourlyEnergy): NetEnergy {
  const count = hours.loadKw.length;
  return { netKwh: new Float64Array(count), overloadKwh: new Float64Array(count) };
}

/** Refuse limits below zero and shares outside 0..1, by RangeError. */
export function requireLimits(limits: StoreLimits): void {
  requireWithin('chargeKw', limits.chargeKw, { atLeast: 0, unit: 'kW' });
  requireWithin('dischargeKw', limits.dischargeKw, { atLeast: 0, unit: 'kW' });
  const share = { above: 0, atMost: 1, unit: '(share)' };
  requireWithin('chargeEfficiency', limits.chargeEfficiency, share);
  requireWithin('dischargeEfficiency', limits.dischargeEfficiency, share);
  requireWithin('idleKw', limits.idleKw, { atLeast: 0, unit: 'kW' });
}
