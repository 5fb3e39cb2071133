import type { ChoiceId } from '#compiled/question-ids.js';
import type { BillReading, MoreLines } from '../../bill/tariff/bill-reading';
import { flatPrice } from '../../bill/tariff/flat-price';
import type { Home } from '../../home/home';
import { hoursTold } from './clock-hours-told';
import { clockPrices } from './clock-prices';
import { moreLinesOf } from './more-lines';
import { toldDollars, toldNumber } from './told-price';

/** What the household told of its bill; null when it told no price. */
export function billReadingOf(home: Home): BillReading | null {
  const more = moreLinesOf(home);
  const rest = { demand: demandOf(home), export: exportOf(home) };
  const energy = clockPrices(home) ?? tiered(home);
  const fixedPerMonth = home.facts.number('bill-fixed');
  if (energy !== null) return { fixedPerMonth, energy, more, ...rest };
  const average = toldDollars(home, 'bill-price');
  return average === null ? null : { ...flat(home, average, more), ...rest };
}

function tiered(home: Home): BillReading['energy'] | null {
  const limit = toldNumber(home, 'tier-limit');
  const [first, rest] = [toldDollars(home, 'tier-first'), toldDollars(home, 'tier-price')];
  if (!home.facts.is('bill-plan', 'tiers') || limit === null || first === null || rest === null) {
    return null;
  }
  return { kind: 'tiers', tiers: [{ upToKwh: limit, price: first }, { price: rest }] };
}

/**
 * The average price told holds every line of the bill: what is the same each month, the other charges and the tax are
 * taken out of it. Where they come to more than it, the average is counted alone.
 */
function flat(
  home: Home,
  average: number,
  more: MoreLines,
): Pick<BillReading, 'fixedPerMonth' | 'energy' | 'more'> {
  const fixedPerMonth = home.facts.number('bill-fixed');
  const price = flatPrice({
    average,
    kwh: toldNumber(home, 'bill-kwh'),
    monthly: (fixedPerMonth ?? 0) + (more.riderPerMonth ?? 0),
    riderPerKwh: more.riderPerKwh ?? 0,
    taxShare: more.taxShare ?? 0,
  });
  if (price === null) return { fixedPerMonth: null, energy: { kind: 'flat', price: average } };
  return { fixedPerMonth, energy: { kind: 'flat', price }, more };
}

function demandOf(home: Home): BillReading['demand'] {
  const { facts } = home;
  const perKw = toldNumber(home, 'demand-price');
  if (!facts.is('bill-plan', 'demand') || perKw === null) return null;
  const share = toldNumber(home, 'ratchet-share');
  const months = Number(/^m(\d+)$/.exec(String(facts.value('ratchet-months')))?.[1] ?? 11);
  const ratchet = share === null ? {} : { ratchet: { share: share / 100, months } };
  const hours = hoursTold(facts.value('demand-hours'));
  return { perKw, hours, ...windowTold(facts.choice('demand-window')), ...ratchet };
}

/** Not known is a quarter of an hour, the shortest usual window, so that no peak is counted too low. */
function windowTold(choice: ChoiceId<'demand-window'> | null): {
  windowMinutes: 15 | 30 | 60;
  rolling?: true;
} {
  switch (choice) {
    case 'm60':
      return { windowMinutes: 60 };
    case 'm30':
      return { windowMinutes: 30 };
    case 'rolling15':
      return { windowMinutes: 15, rolling: true };
    default:
      return { windowMinutes: 15 };
  }
}

function exportOf(home: Home): BillReading['export'] {
  const { facts } = home;
  const rule = facts.told('export-rule') ? facts.value('export-rule') : null;
  if (rule === 'none') return { kind: 'none', price: null };
  if (rule === 'net-metering') {
    const trueUpMonth = Number(/^m(\d+)$/.exec(String(facts.value('true-up-month')))?.[1] ?? 12);
    return { kind: 'net-metering', price: toldDollars(home, 'true-up-price'), trueUpMonth };
  }
  if (rule === 'by-hour') {
    const [price, eveningPrice] = [
      toldDollars(home, 'export-day'),
      toldDollars(home, 'export-evening'),
    ];
    return price === null
      ? { kind: 'not-sure', price: null }
      : { kind: 'by-hour', price, eveningPrice };
  }
  const price = toldDollars(home, 'export-price');
  return { kind: price === null ? 'not-sure' : 'credit', price };
}
