import type { BillMatch, BillMismatch, Expected } from '../../../bill/tariff/match-bill';

/** What to look at on a bill that the prices given do not come to; empty where they do. */
export function sayBillFit(fit: BillMatch): string {
  if (fit.fits) return '';
  const { kwh, dollars, days } = fit.printed;
  if (fit.lookAt.code === 'meter-readings') {
    return `The bill shows ${kwh} kWh over ${days} days. Look at the line with the meter readings.`;
  }
  const both = `At these prices ${kwh} kWh comes to ${sayExpected(fit.expected)}, and the bill says $${dollars.toFixed(0)}.`;
  return `${both} ${lookAt(fit)}`;
}

function lookAt({ lookAt, printed }: BillMismatch): string {
  if (lookAt.code === 'more-lines') {
    const cents = (100 * lookAt.missingDollars) / printed.kwh;
    return `Look for a second energy or delivery line of about ${cents.toFixed(1)} cents a kWh, for adjustments and taxes, and for a balance from the month before.`;
  }
  return lookAt.code === 'fixed-charge'
    ? 'Look at the fixed or customer charge: as given it is more than the whole bill.'
    : 'Look at the line with the kWh and the days, at credit for solar sent out, and at the energy price.';
}

/** "$80 to $120", or one figure where the ends are less than a dollar apart. */
export function sayExpected({ low, high }: Expected): string {
  return high - low < 1 ? `$${low.toFixed(0)}` : `$${low.toFixed(0)} to $${high.toFixed(0)}`;
}
