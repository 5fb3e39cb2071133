import { WEAR_PER_KWH } from '../../../bill/lifecycle/battery-wear';
import { sayBill } from '../../../bill/tariff/say-bill';
import type { BetweenOutages } from '../../../plan/money/between-outages';
import type { MoneyOfRoute } from '../../../plan/money/plan-money';
import { formatQuantity } from '../../../quantity/format-quantity';
import type { Words } from '../../../words/words';

const doing = {
  'self-use': 'Storing spare sun for the evening',
  'time-shift': 'Charging in the cheapest hours and working in the dearest',
  both: 'Storing spare sun, and charging and working by the price of the hour',
  'peak-limit': 'Holding down the highest use of the month',
  wait: 'Full and waiting',
} as const;

/** What the routes with a battery or solar do between outages; those that do the same stand together. */
export function sayBetween(routes: readonly MoneyOfRoute[], words: Words): string[] {
  const alike = new Map<string, { does: string; names: string[] }>();
  for (const { title, between, batteryLife } of routes) {
    if (between === null) continue;
    const does = between.worthRunning ? doing[between.strategy] : doing.wait;
    const gains = sayGains(between, batteryLife, words);
    const kept = formatQuantity(Math.max(...between.keptKwh), 'kWh');
    const group = alike.get(`${does} ${gains}`) ?? { does, names: [] };
    group.names.push(`${words.inSentence(title)} (up to ${kept} kept for outages)`);
    alike.set(`${does} ${gains}`, group);
  }
  if (alike.size === 0) return [];
  const lines = [...alike].map(([text, { does, names }]) => {
    const gains = text.slice(does.length + 1);
    return `- ${does}: ${names.join('; ')}. ${gains}`;
  });
  return ['What batteries and solar do between outages:', lines.join('\n')];
}

/** What comes off the bill, and how long the battery lasts at that. */
function sayGains(
  between: BetweenOutages,
  life: MoneyOfRoute['batteryLife'],
  words: Words,
): string {
  const battery = between.savings - between.solarSavings;
  const solar =
    between.solarSavings > 0
      ? `solar takes off about ${words.usd(between.solarSavings)} a year; `
      : '';
  const gain = between.worthRunning
    ? `the battery takes off about ${words.usd(battery)} a year`
    : `the battery takes nothing off the bill, because ${whyNothing(between)}`;
  return `${capital(`${solar}${gain}.`)}${sayLife(between, life)}${sayCeiling(between, words)}`;
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
function sayCeiling(
  { ceiling, ceilingNote, savings, wear, worthRunning }: BetweenOutages,
  words: Words,
): string {
  if (!worthRunning) return '';
  if (ceiling === null) return ` ${capital(ceilingNote)}.`;
  const net = savings - wear;
  const short =
    ceiling > 1 && net / ceiling < 0.9
      ? '; the rule falls short because it knows the past only'
      : '';
  const note = ceilingNote === '' ? '' : ` (${ceilingNote})`;
  return ` Less ${(100 * WEAR_PER_KWH).toFixed(1)} cents of wear for each kWh the battery gives, that is ${words.usd(net)} a year in all; with every hour known beforehand it could be ${words.usd(ceiling)}${note}${short}.`;
}

/** The bill of July without and with the route advised, line by line. */
export function sayBillOf(own: MoneyOfRoute | undefined, words: Words): string[] {
  const between = own?.between;
  if (!own || !between || Math.abs(between.before.total - between.after.total) < 1) return [];
  const july = (bill: BetweenOutages['before']) =>
    sayBill(bill.months[6]!).map((line) => `- ${line}`);
  return [
    `The bill of July as it would stand without it (${words.inSentence(own.title)}):`,
    july(between.before).join('\n'),
    'And with it:',
    july(between.after).join('\n'),
  ];
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
