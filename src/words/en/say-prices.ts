import type { QuestionId } from '#compiled/question-ids.js';
import type { BillReading, ClockPrices } from '../../bill/tariff/bill-reading';
import type { Home } from '../../home/home';
import type { LineLeftOut } from '../../plan/money/more-lines';
import type { TariffFrom } from '../../plan/money/tariff-of';
import { listOf } from './list-of';
import { months } from './months';

/** The prices counted, in a sentence or two: what was told, what was left out, and what is not known. */
export function sayPrices(
  home: Home,
  { reading, leftOut }: Extract<TariffFrom, { code: 'prices-told' }>,
): string {
  const { energy, demand } = reading;
  const peak =
    demand === null ? '' : `, and $${demand.perKw} for each kW of the month's highest use`;
  const ratchet =
    demand?.ratchet === undefined
      ? ''
      : `, at least ${percent(demand.ratchet.share)} of the highest of the last ${demand.ratchet.months} months`;
  return [
    `Counted with the prices you told us: ${sayEnergy(energy)}${peak}${ratchet}.`,
    ...beside(home, reading),
    ...goingOut(home, reading),
    ...sayLeftOut(home, reading, leftOut),
  ].join(' ');
}

const cents = (price: number) => `${Number((100 * price).toFixed(2)).toFixed(1)} cents`;
const percent = (share: number) => `${Number((100 * share).toFixed(2))} %`;
const usd = (dollars: number) => `$${Number.isInteger(dollars) ? dollars : dollars.toFixed(2)}`;

function sayEnergy(energy: BillReading['energy']): string {
  if (energy.kind === 'flat') return `one price at all hours, ${cents(energy.price)} a kWh`;
  if (energy.kind === 'by-clock') return sayClock(energy);
  const [first, last] = [energy.tiers[0]!, energy.tiers.at(-1)!];
  return `${cents(first.price)} a kWh up to ${first.upToKwh} kWh a month and ${cents(last.price)} above`;
}

function sayClock({ periods, otherPrice, months, rest, holidaysOff }: ClockPrices): string {
  const low = Math.min(otherPrice, ...periods.map((p) => p.price));
  const peak = `${cents(periods[0]!.price)} a kWh at the peak`;
  const holidays = holidaysOff === true ? ' (none on holidays)' : '';
  const cheap = `${cents(low)} in the cheapest hours`;
  if (months === undefined) return `${peak}${holidays} and ${cheap}`;
  const span = months === 'summer' ? 'from June to September' : 'from December to March';
  if (rest === undefined) return `${peak}${holidays} ${span} and ${cheap}`;
  return `${peak}${holidays} and ${cheap} ${span}, ${cents(rest.peak)} and ${cents(rest.low)} in the rest of the year`;
}

function beside({ facts }: Home, { fixedPerMonth, more, energy }: BillReading): string[] {
  const assumed = (id: QuestionId) => (facts.told(id) ? '' : ' (assumed)');
  const lines = [
    ...(fixedPerMonth === null || fixedPerMonth === 0
      ? []
      : [`${usd(fixedPerMonth)} fixed charge a month${assumed('bill-fixed')}`]),
    ...(more?.riderPerKwh == null ? [] : [`${cents(more.riderPerKwh)} more for each kWh`]),
    ...(more?.riderPerMonth == null ? [] : [`${usd(more.riderPerMonth)} more a month`]),
    ...(more?.baseline == null
      ? []
      : [
          `${cents(more.baseline.creditPerKwh)} baseline credit on up to ${more.baseline.kwhPerDay} kWh a day`,
        ]),
    ...(more?.blockDays == null || energy.kind !== 'tiers'
      ? []
      : [`a first block that grows with the days (read off a bill of ${more.blockDays})`]),
    ...(more?.taxShare == null ? [] : [`${percent(more.taxShare)} tax on all charges`]),
    ...(more?.leastBill == null
      ? []
      : [`a least bill of ${usd(more.leastBill)} a month before tax${assumed('least-bill')}`]),
  ];
  return lines.length === 0 ? [] : [`Beside it: ${listOf(lines)}.`];
}

/** Where the household said how solar sent out is paid. */
function goingOut({ facts }: Home, reading: BillReading): string[] {
  if (!facts.applies('export-rule')) return [];
  const { kind, price, eveningPrice, trueUpMonth } = reading.export;
  switch (kind) {
    case 'none':
      return ['Nothing is paid for solar sent out.'];
    case 'net-metering':
      return [
        `Each kWh sent out takes one off the bill; what is left over in ${months[(trueUpMonth ?? 12) - 1]} is paid ${price === null ? 'nothing' : `${cents(price)} a kWh`}.`,
      ];
    case 'by-hour':
      return [
        `Solar sent out is paid ${cents(price ?? 0)} a kWh, and ${cents(eveningPrice ?? price ?? 0)} from 4 pm to 9 pm.`,
      ];
    case 'credit':
      return [`Solar sent out is paid ${cents(price ?? 0)} a kWh.`];
    case 'not-sure':
      return ['Solar sent out is taken to be paid a quarter of your lowest price.'];
  }
}

const lines: Readonly<Record<LineLeftOut, string>> = {
  'rider-kwh': 'the other charge for each kWh',
  'rider-month': 'the other charge each month',
  tax: 'the tax',
  baseline: 'the baseline credit',
  ratchet: 'that the demand charge goes by the highest of several months',
};

function sayLeftOut(
  home: Home,
  { energy, more }: BillReading,
  open: readonly LineLeftOut[],
): string[] {
  const clocked = home.facts.is('bill-plan', 'time-of-use', 'demand');
  const unknown = open.map((line) => lines[line]);
  return [
    ...(clocked && energy.kind === 'flat'
      ? ['The prices by the hour are not known, so nothing is counted for using them.']
      : []),
    ...(unknown.length > 0 ? [`Left out, because it is not known: ${listOf(unknown)}.`] : []),
    ...(more === undefined
      ? [
          'The other lines told come to more than the price of a kWh, so the price is counted alone. Look at them again.',
        ]
      : []),
  ];
}
