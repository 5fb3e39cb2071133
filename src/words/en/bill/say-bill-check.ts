import type { BillCheck } from '../../../home/home';
import { shownRange } from '../../../quantity/shown';
import { months } from '../months';

type Held = Exclude<BillCheck, { verdict: 'not-possible' }>;

const notPossible: Readonly<
  Record<Extract<BillCheck, { verdict: 'not-possible' }>['because'], string>
> = {
  'no-bill': 'no bill was given, so the loads could not be held against one',
  'own-solar-not-known':
    'there is solar and we do not know how much of it the home used, so the bill does not show the real use',
};

const findings: Readonly<Record<Held['code'], string>> = {
  fits: 'They fit together.',
  'bill-above-loads':
    'The bill is above even the high end: something was not named, or runs longer than we count. What must run does not hang on it.',
  'loads-over-bill':
    'Even the low end is over the bill. One of them is wrong: the hours, the watts, or the month of the bill. Check those before you buy.',
  'loads-likely-high':
    'That is more than 1.15 times the bill. Check the hours and the watts of the largest loads, and the month of the bill.',
};

/** The loads named against the bill, or why they could not be held against one. */
export function sayBillCheck(check: BillCheck): string {
  if (check.verdict === 'not-possible') return notPossible[check.because];
  const { billKwhPerDay: bill, loadsKwhPerDay: loads, months: of } = check;
  const named =
    of === null ? 'the bill' : `your bills of ${of.map((month) => months[month]).join(' and ')}`;
  return `The loads come to ${shownRange(loads, 'kWh')} a day, ${named} to ${bill.value.toFixed(1)} kWh a day. ${findings[check.code]}`;
}
