/** Inside and outside balance at 65 F, the base of degree days. */
export const BALANCE_C = 18.33;

/** Heat a home needs at an outdoor temperature, over that at the design temperature; 0 above the balance. */
export function heatNeed(airC: number, designC: number): number {
  return Math.max(0, (BALANCE_C - airC) / Math.max(BALANCE_C - designC, 3));
}
