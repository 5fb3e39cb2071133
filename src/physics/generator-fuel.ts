import { requireWithin } from '../quantity/require-within';

/** Fuel a generator burns against its output: a straight line (Willans). Fuel in gal, ft3 or therm. */
export interface FuelLine {
  /** Burned in an hour at no load. */
  readonly noLoadPerHour: number;
  /** Burned for each further kWh delivered. */
  readonly perKwh: number;
}

export interface FuelLineParts {
  readonly ratedKw: number;
  /** Electric output over fuel energy at full load, on the heating value `kwhPerUnit` is stated on. */
  readonly fullLoadEfficiency: number;
  /** r: no-load burn over the burn that rises with load at full load. 0.15 diesel, 0.35-0.6 small spark engines. */
  readonly noLoadRatio: number;
  /** Heat in a gallon (or ft3, or therm), kWh. Lower or higher: the same one the efficiency is stated on. */
  readonly kwhPerUnit: number;
}

/**
 * The fuel line of a generator from its full-load efficiency and how much of the burn is there at no load.
 *
 *   F1 = 1 / (eta_full (1 + r) H)      F0 = r F1 P_rated
 *
 * Source of the form: the Willans line, e.g. Skarstein & Uhlen, Wind Engineering 13 (1989), where
 * fuel = 0.246 P + 0.08145 P_rated, L/h with P in kW.
 */
export function fuelLine(parts: FuelLineParts): FuelLine {
  const { ratedKw, fullLoadEfficiency, noLoadRatio, kwhPerUnit } = parts;
  requireWithin('ratedKw', ratedKw, { above: 0, unit: 'kW' });
  requireWithin('fullLoadEfficiency', fullLoadEfficiency, {
    above: 0,
    atMost: 0.6,
    unit: '(share)',
  });
  requireWithin('noLoadRatio', noLoadRatio, { atLeast: 0, atMost: 3, unit: '(share)' });
  requireWithin('kwhPerUnit', kwhPerUnit, { above: 0, unit: 'kWh a unit of fuel' });
  const perKwh = 1 / (fullLoadEfficiency * (1 + noLoadRatio) * kwhPerUnit);
  return { noLoadPerHour: noLoadRatio * perKwh * ratedKw, perKwh };
}

/** Fuel burned in an hour of running at `outputKw`. Idling is not free: at 0 kW it is the no-load burn. */
export function fuelPerHour(line: FuelLine, outputKw: number): number {
  requireWithin('outputKw', outputKw, { atLeast: 0, unit: 'kW' });
  return line.noLoadPerHour + line.perKwh * outputKw;
}

/** Electric output over fuel energy at `outputKw`, on the heating value of `kwhPerUnit`; 0 at no load. */
export function generatorEfficiency(line: FuelLine, outputKw: number, kwhPerUnit: number): number {
  return outputKw === 0 ? 0 : outputKw / (fuelPerHour(line, outputKw) * kwhPerUnit);
}
