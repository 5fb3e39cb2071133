/** A battery as the bill sees it. Energy is what the store holds; power and wear are on the house (AC) side. */
export interface Battery {
  /** Usable capacity, kWh. */
  readonly usableKwh: number;
  readonly chargeKw: number;
  readonly dischargeKw: number;
  /** Share of the charged kWh that is stored, 0 to 1, and share of the stored kWh that comes back out. */
  readonly chargeEfficiency: number;
  readonly dischargeEfficiency: number;
  /** $ a kWh discharged, for wear; 0 when missing. */
  readonly wearPerKwh?: number;
}

/** Throws RangeError when a battery cannot exist. */
export function assertBattery(battery: Battery): void {
  const { usableKwh, chargeKw, dischargeKw, chargeEfficiency, dischargeEfficiency } = battery;
  for (const [name, value] of Object.entries({ usableKwh, chargeKw, dischargeKw })) {
    if (!(value >= 0 && Number.isFinite(value)))
      throw new RangeError(`battery ${name} is ${value}`);
  }
  for (const [name, value] of Object.entries({ chargeEfficiency, dischargeEfficiency })) {
    if (!(value > 0 && value <= 1)) throw new RangeError(`battery ${name} is ${value}, not 0 to 1`);
  }
}
