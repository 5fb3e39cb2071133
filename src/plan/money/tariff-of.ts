import { assumedTariff } from '../../bill/assumed-tariff';
import { checkTariff } from '../../bill/check-tariff';
import type { ClockRange, Tariff } from '../../bill/tariff';
import { type BillReading, tariffFromBill } from '../../bill/tariff-from-bill';
import type { Home } from '../../home/home';
import { inSeason } from './in-season';

/** How the household pays for power, as far as it told us. */
export interface HomeTariff {
  readonly tariff: Tariff;
  /** Read off the bill, or the state's average. */
  readonly told: boolean;
  /** What we took for it, and what was left out. */
  readonly says: string;
}

/** The tariff from what was read off the bill; the average of the state when no price was. Null off the grid. */
export function tariffOf(home: Home): HomeTariff | null {
  const { facts } = home;
  if (facts.is('home-kind', 'off-grid')) return null;
  const energy = byClock(home) ?? tiered(home) ?? flat(home);
  if (energy === null) return averageOf(home);
  const reading: BillReading = {
    fixedPerMonth: facts.number('bill-fixed'),
    energy,
    demand: demandOf(home),
    export: exportOf(home),
  };
  const tariff = inSeason(tariffFromBill(reading), facts.value('peak-season'));
  const problems = checkTariff(tariff);
  if (problems.length > 0) return averageOf(home, problems[0]);
  return { tariff, told: true, says: describe(home, reading) };
}

function averageOf(home: Home, problem?: string): HomeTariff {
  const { tariff, price } = assumedTariff(home.site.state);
  const cents = (100 * price.value).toFixed(1);
  const wrong = problem === undefined ? '' : `The prices told do not fit together: ${problem} `;
  const says = `${wrong}No price was read off a bill, so we count ${cents} cents a kWh at all hours: ${price.source.label}. Your own price may lie a quarter away.`;
  return { tariff, told: false, says };
}

const dollars = (home: Home, id: string) => {
  const cents = home.facts.told(id) ? home.facts.number(id) : null;
  return cents === null ? null : cents / 100;
};

function byClock(home: Home): BillReading['energy'] | null {
  const { facts } = home;
  if (!facts.is('bill-plan', 'time-of-use', 'demand')) return null;
  const [peak, low] = [dollars(home, 'price-peak'), dollars(home, 'price-low')];
  if (peak === null || low === null) return null;
  const days = facts.is('peak-days', 'every') ? 'every' : 'weekdays';
  const hours = hoursOf(facts.value('peak-hours')) ?? [[16, 21]];
  const top = { name: 'peak', price: peak, days, hours } as const;
  const middle = dollars(home, 'price-middle');
  if (middle === null) return { kind: 'by-clock', periods: [top], otherPrice: low };
  // Cheap hours that reach into the peak would price one hour twice: the peak goes first.
  const cheap = without(hoursOf(facts.value('low-hours')) ?? [[0, 6]], hours);
  const bottom = { name: 'night', price: low, days: 'every', hours: cheap } as const;
  return { kind: 'by-clock', periods: [top, bottom], otherPrice: middle };
}

/** "h16-21" is 16:00 to 21:00. */
function hoursOf(choice: unknown): ClockRange[] | null {
  const found = /^h(\d+)-(\d+)$/.exec(String(choice));
  return found === null ? null : [[Number(found[1]), Number(found[2])]];
}

function without(ranges: readonly ClockRange[], taken: readonly ClockRange[]): ClockRange[] {
  const has = (list: readonly ClockRange[], h: number) =>
    list.some(([from, to]) => (from < to ? h >= from && h < to : h >= from || h < to));
  const hours = Array.from({ length: 24 }, (_, h) => h);
  return hours.filter((h) => has(ranges, h) && !has(taken, h)).map((h) => [h, h + 1] as const);
}

function tiered(home: Home): BillReading['energy'] | null {
  const limit = home.facts.told('tier-limit') ? home.facts.number('tier-limit') : null;
  const [first, rest] = [dollars(home, 'tier-first'), dollars(home, 'tier-price')];
  if (!home.facts.is('bill-plan', 'tiers') || limit === null || first === null || rest === null) {
    return null;
  }
  return { kind: 'tiers', tiers: [{ upToKwh: limit, price: first }, { price: rest }] };
}

/** The average price told, less the fixed charge where it was read too: that part nothing takes off. */
function flat(home: Home): BillReading['energy'] | null {
  const average = dollars(home, 'bill-price');
  if (average === null) return null;
  const fixed = home.facts.number('bill-fixed');
  const kwh = home.facts.told('bill-kwh') ? home.facts.number('bill-kwh') : null;
  if (fixed === null) return { kind: 'flat', price: average };
  const price = kwh === null || kwh <= 0 ? average : average - fixed / kwh;
  return { kind: 'flat', price: Math.max(0, price) };
}

function demandOf(home: Home): BillReading['demand'] {
  const { facts } = home;
  const perKw = facts.told('demand-price') ? facts.number('demand-price') : null;
  if (!facts.is('bill-plan', 'demand') || perKw === null) return null;
  return { perKw, hours: hoursOf(facts.value('demand-hours')) };
}

function exportOf(home: Home): BillReading['export'] {
  const rule = home.facts.told('export-rule') ? home.facts.value('export-rule') : null;
  const price = dollars(home, 'export-price');
  if (rule === 'none') return { kind: 'none', price: null };
  if (rule === 'net-metering') return { kind: 'net-metering', price: null };
  return { kind: price === null ? 'not-sure' : 'credit', price };
}

function describe(home: Home, { energy, demand }: BillReading): string {
  const cents = (price: number) => `${(100 * price).toFixed(1)} cents`;
  const kind =
    energy.kind === 'flat'
      ? `one price, ${cents(energy.price)} a kWh`
      : energy.kind === 'tiers'
        ? `${cents(energy.tiers[0]!.price)} a kWh to begin with and ${cents(energy.tiers.at(-1)!.price)} above`
        : `${cents(energy.periods[0]!.price)} a kWh at the peak and ${cents(Math.min(energy.otherPrice, ...energy.periods.map((p) => p.price)))} in the cheapest hours`;
  const clocked = home.facts.is('bill-plan', 'time-of-use', 'demand');
  const missing =
    clocked && energy.kind === 'flat'
      ? ' The prices by the hour are not known, so nothing is counted for using them.'
      : '';
  const peak =
    demand === null ? '' : `, and $${demand.perKw} for each kW of the month's highest use`;
  return `Counted with the prices read off your bill: ${kind}${peak}.${missing}`;
}
