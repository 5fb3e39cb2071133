import type { LineIs, PeakFrom, PlainLine } from '../../../bill/tariff/bill-line';
import { sayTariffName } from '../tariff/say-tariff-name';

const plain: Readonly<Record<PlainLine, string>> = {
  'fixed-charge': 'Fixed charge',
  'export-credit': 'Export credit',
  'left-over-in-period': 'Left over in a period',
  'yearly-true-up': 'Yearly true-up',
  'earlier-credit': 'Credit from earlier months',
  'credit-that-ends': 'Credit that ends with the yearly true-up',
  'credit-kept': 'Credit kept for later months',
  'minimum-before-tax': 'Minimum bill, before tax',
  'minimum-with-tax': 'Minimum bill, tax included',
};

/** What stands before the figures of a line of a bill. */
export function sayBillLine(is: LineIs): string {
  switch (is.code) {
    case 'energy-period':
      return `Energy, ${is.season === null ? '' : `${sayTariffName(is.season)} `}${sayTariffName(is.period)}`;
    case 'energy-tier':
      return `Energy, tier ${is.tier}`;
    case 'baseline-credit':
      return `Baseline credit, ${sayTariffName(is.season)}`;
    case 'demand':
      return `Demand, ${sayTariffName(is.charge)}${sayPeak(is.peak)}${is.heldUp ? ' (held up by an earlier month)' : ''}`;
    case 'named':
      return sayTariffName(is.name);
    default:
      return plain[is.code];
  }
}

/** Never silently: how the peak was come by, where an hour does not show it. */
function sayPeak(peak: PeakFrom): string {
  switch (peak.code) {
    case 'highest-hour':
      return '';
    case 'times-factor':
      return ` (highest hour x ${peak.factor.toFixed(2)})`;
    case 'shorter-not-known':
      return ` (highest hour; the peak of ${peak.windowMinutes} minutes is not known and may be higher)`;
  }
}
