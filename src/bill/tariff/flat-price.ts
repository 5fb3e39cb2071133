/**
 * The price of a kWh alone, $, from the average over the whole bill (all dollars / all kWh):
 *   price = average / (1 + tax) - (fixed + other charge a month) / kWh - other charge for each kWh
 * Null where the other lines come to more than the average leaves. kWh of the bill null: nothing is taken off for what
 * is paid once a month.
 */
export function flatPrice(bill: {
  average: number;
  kwh: number | null;
  monthly: number;
  riderPerKwh: number;
  taxShare: number;
}): number | null {
  const { average, kwh, monthly, riderPerKwh, taxShare } = bill;
  const perKwh = kwh === null || kwh <= 0 ? 0 : monthly / kwh;
  const price = average / (1 + taxShare) - perKwh - riderPerKwh;
  return price > 0 ? price : null;
}
