import type { BetweenOutages } from '../../../plan/money/between-outages';
import type { MoneyOfRoute } from '../../../plan/money/plan-money';
import { formatQuantity } from '../../../quantity/format-quantity';
import { inSentence } from '../list-of';
import { sayCeilingNote } from '../money/say-ceiling-note';
import { usd } from '../say-dollars';
import { sentenceCase } from '../sentence-case';

const doing = {
  'self-use': 'Storing spare sun for the evening',
  'time-shift': 'Charging in the cheapest hours and working in the dearest',
  both: 'Storing spare sun, and charging and working by the price of the hour',
  'peak-limit': 'Holding down the highest use of the month',
  wait: 'Full and waiting',
} as const;

type Life = MoneyOfRoute['batteryLife'];

/** What batteries and solar do between outages. */
export const between = {
  title: 'What batteries and solar do between outages:',
  doing: (what: keyof typeof doing) => doing[what],
  kept: (route: string, keptKwh: number) =>
    `${inSentence(route)} (up to ${formatQuantity(keptKwh, 'kWh')} kept for outages)`,
  line: (does: string, routes: readonly string[], gains: string) =>
    `${does}: ${routes.join('; ')}. ${gains}`,
  /** What comes off the bill, and how long the battery lasts at that; `wearPerKwh` in $. */
  gains(one: BetweenOutages, life: Life, wearPerKwh: number): string {
    const battery = one.savings - one.solarSavings;
    const solar =
      one.solarSavings > 0 ? `solar takes off about ${usd(one.solarSavings)} a year; ` : '';
    const gain = one.worthRunning
      ? `the battery takes off about ${usd(battery)} a year`
      : `the battery takes nothing off the bill, because ${whyNothing(one)}`;
    return `${sentenceCase(`${solar}${gain}.`)}${sayLife(one, life)}${sayCeiling(one, wearPerKwh)}`;
  },
  july: (route: string) => `The bill of July as it would stand without it (${inSentence(route)}):`,
  andWith: 'And with it:',
};

/** What working wears is in the life, and so in the cost a year; it is not taken off a second time. */
function sayLife({ worthRunning }: BetweenOutages, life: Life): string {
  if (!worthRunning || life === null) return '';
  const years = formatQuantity(Math.round(life.years), 'years');
  return life.byUse
    ? ` At that pace the battery is used up after about ${years}, sooner than by age, and is bought again then; no wear is counted beside that.`
    : ` It will be ${years} old before it is used up, so its age sets when it is bought again; no wear is counted beside that.`;
}

function whyNothing({ strategy, keptKwh, input, ceilingNote }: BetweenOutages): string {
  if (strategy === 'wait') return said(ceilingNote);
  const all = input !== null && Math.min(...keptKwh) > 0.95 * input.battery.usableKwh;
  return all
    ? 'all of it is kept for outages'
    : 'what is not kept for outages would earn less than it wears';
}

const said = (note: BetweenOutages['ceilingNote']) => (note === null ? '' : sayCeilingNote(note));

/** Held against the wear of each kWh, which decides when the battery works, as the most that could be is too. */
function sayCeiling(one: BetweenOutages, wearPerKwh: number): string {
  const { ceiling, ceilingNote, savings, wear, worthRunning } = one;
  if (!worthRunning) return '';
  if (ceiling === null) return ` ${sentenceCase(said(ceilingNote))}.`;
  const net = savings - wear;
  const short =
    ceiling > 1 && net / ceiling < 0.9
      ? '; the rule falls short because it knows the past only'
      : '';
  const note = ceilingNote === null ? '' : ` (${said(ceilingNote)})`;
  return ` Less ${(100 * wearPerKwh).toFixed(1)} cents of wear for each kWh the battery gives, that is ${usd(net)} a year in all; with every hour known beforehand it could be ${usd(ceiling)}${note}${short}.`;
}
