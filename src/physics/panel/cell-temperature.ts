/**
 * Temperature of a solar cell, C, from the air and the sun on its plane.
 *
 *     Tc = Ta + (NOCT - 20)/800 G
 *
 * `noctC` is the cell temperature at 800 W/m2 and 20 C air, about 45 on a rack or a vented roof.
 * No wind term. Source: Ross 1976, 12th IEEE PVSC, 1062-1067.
 */
export function cellTemperatureC(given: {
  airC: number;
  wattsPerM2: number;
  noctC: number;
}): number {
  return given.airC + ((given.noctC - 20) / 800) * given.wattsPerM2;
}
