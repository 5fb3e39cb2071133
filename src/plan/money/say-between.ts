import { WEAR_PER_KWH } from '../../bill/battery-wear';
import { sayBill } from '../../bill/say-bill';
import { formatQuantity } from '../../quantity/format-quantity';
import { inSentence } from '../list-of';
import type { BetweenOutages } from './between-outages';
import type { MoneyOfRoute } from './plan-money';
import { usd } from './say-dollars';

const doing = {
  'self-use': 'it stores spare sun for the evening',
  'time-shift': 'it charges in the cheapest hours and works in the dearest',
  both: 'it stores spare sun, and charges and works by the price of the hour',
  'peak-limit': 'it holds down the highest use of the month',
  wait: 'it stays full and waits',
} as const;

/** What a route with a battery or solar does between outages, and how long its battery lasts at that. */
export function sayBetween({ title, between, batteryLife }: MoneyOfRoute): string[] {
  if (between === null) return [];
  const does = between.worthRunning ? doing[between.strategy] : doing.wait;
  const battery = between.savings - between.solarSavings;
  const solar =
    between.solarSavings > 0 ? `solar takes off about ${usd(between.solarSavings)} a year; ` : '';
  const gain = between.worthRunning
    ? `the battery takes off about ${usd(battery)} a year`
    : `the battery takes nothing off the bill, because ${whyNothing(between)}`;
  const kept = Math.max(...between.keptKwh);
  return [
    `${title}, between outages: ${does}. ${capital(`${solar}${gain}.`)} Kept for outages: up to ${formatQuantity(kept, 'kWh')}.${sayLife(between, batteryLife)}${sayCeiling(between)}`,
  ];
}

/** What working wears is in the life, and so in the cost a year; it is not taken off a second time. */
function sayLife({ worthRunning }: BetweenOutages, life: MoneyOfRoute['batteryLife']): string {
  if (!worthRunning || life === null) return '';
  const years = formatQuantity(Math.round(life.years), 'years');
  return life.byUse
    ? ` At that pace the battery is used up after about ${years}, sooner than by age, and is bought again then; no wear is counted beside that.`
    : ` It will be ${years} old before it is used up, so its age sets when it is bought again; no wear is counted beside that.`;
}

function whyNothing({ strategy, keptKwh, input, ceilingNote }: BetweenOutages): string {
  if (strategy === 'wait') return ceilingNote;
  const all = input !== null && Math.min(...keptKwh) > 0.95 * input.battery.usableKwh;
  return all
    ? 'all of it is kept for outages'
    : 'what is not kept for outages would earn less than it wears';
}

/** Held against the wear of each kWh, which decides when the battery works, as the most that could be is too. */
function sayCeiling({ ceiling, ceilingNote, savings, wear, worthRunning }: BetweenOutages): string {
  if (!worthRunning) return '';
  if (ceiling === null) return ` ${capital(ceilingNote)}.`;
  const net = savings - wear;
  const short =
    ceiling > 1 && net / ceiling < 0.9
      ? '; the rule falls short because it knows the past only'
      : '';
  const note = ceilingNote === '' ? '' : ` (${ceilingNote})`;
  return ` Less ${(100 * WEAR_PER_KWH).toFixed(1)} cents of wear for each kWh the battery gives, that is ${usd(net)} a year in all; with every hour known beforehand it could be ${usd(ceiling)}${note}${short}.`;
}

/** The bill of July without and with the route advised, line by line. */
export function sayBillOf(own: MoneyOfRoute | undefined): string[] {
  const between = own?.between;
  if (!own || !between || Math.abs(between.before.total - between.after.total) < 1) return [];
  const july = (bill: BetweenOutages['before']) =>
    sayBill(bill.months[6]!).map((line) => `- ${line}`);
  return [
    `The bill of July as it would stand without it (${inSentence(own.title)}):`,
    july(between.before).join('\n'),
    'And with it:',
    july(between.after).join('\n'),
  ];
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
