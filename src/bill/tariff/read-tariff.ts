import { findFaults, type TariffFault } from './check-tariff';
import { sayShape } from './say-shape';
import type { Tariff } from './tariff';
import { TARIFF_KEY, TARIFF_VERSION } from './tariff-key';
import { tariffSchema } from './tariff-schema';

export type ReadTariff =
  | { readonly tariff: Tariff; readonly faults: readonly [] }
  | { readonly tariff: null; readonly faults: readonly TariffFault[] };

/** From this price on somebody wrote cents, $/kWh. No tariff for a household is near it: our judgement. */
const SURELY_CENTS = 3;

/** A tariff from data, or every fault in it with its place and a plain sentence. */
export function readTariff(data: unknown): ReadTariff {
  const read = tariffSchema.safeParse(data);
  if (!read.success) {
    return { tariff: null, faults: read.error.issues.flatMap((issue) => sayShape(issue, data)) };
  }
  const faults = [...sameHour(read.data), ...inCents(read.data), ...findFaults(read.data)];
  return faults.length > 0 ? { tariff: null, faults } : { tariff: read.data, faults: [] };
}

/** The same from a file of its own, which starts with the version of its form. */
export function readTariffFile(data: unknown): ReadTariff {
  const first = `${TARIFF_KEY}: ${TARIFF_VERSION}`;
  if (typeof data !== 'object' || data === null || Array.isArray(data)) {
    return one([], `a tariff file starts with "${first}". Add that line at the top.`);
  }
  const { [TARIFF_KEY]: version, ...rest } = data as Record<string, unknown>;
  if (version === undefined) return one([], `"${first}" is missing. Add it as the first line.`);
  if (version !== TARIFF_VERSION) {
    return one(
      [TARIFF_KEY],
      `this file is of form ${String(version)}; this program reads form ${TARIFF_VERSION}.`,
    );
  }
  return readTariff(rest);
}

function one(path: TariffFault['path'], says: string): ReadTariff {
  return { tariff: null, faults: [{ path, says }] };
}

/** Every list of periods with its place. */
function periodsOf({ seasons, export: sold }: Tariff) {
  const all = (list: Tariff['seasons'], at: readonly (string | number)[]) =>
    list.flatMap((season, s) =>
      season.periods.map((period, p) => ({ season, period, path: [...at, s, 'periods', p] })),
    );
  return [
    ...all(seasons, ['seasons']),
    ...(sold.rule === 'net-billing' ? all(sold.seasons, ['export', 'seasons']) : []),
  ];
}

function sameHour(tariff: Tariff): TariffFault[] {
  return periodsOf(tariff).flatMap(({ season, period, path }) => {
    const same = period.hours?.find(([from, to]) => from === to);
    if (same === undefined) return [];
    const says = `season "${season.name}": period "${period.name}" starts and ends at ${same[0]}:00. Write [0, 24] for the whole day.`;
    return [{ path: [...path, 'hours'], says }];
  });
}

function inCents(tariff: Tariff): TariffFault[] {
  const priced = [
    ...periodsOf(tariff).map(({ period, path }) => ({ price: period.price, path })),
    ...tariff.seasons.flatMap(({ tiers = [] }, s) =>
      tiers.map(({ price }, t) => ({ price, path: ['seasons', s, 'tiers', t] })),
    ),
  ];
  return priced
    .filter(({ price }) => Math.abs(price) >= SURELY_CENTS)
    .map(({ price, path }) => ({
      path: [...path, 'price'],
      says: `a price of ${price} is $${price} for one kWh. Prices stand in dollars: write ${price / 100} for ${price} cents.`,
    }));
}
