import { findFaults } from './check-tariff';
import { shapeFaults } from './shape-faults';
import type { Tariff } from './tariff';
import type { TariffFault, TariffPath } from './tariff-fault';
import { TARIFF_KEY, TARIFF_VERSION } from './tariff-key';
import { tariffSchema } from './tariff-schema';

export type ReadTariff =
  | { readonly tariff: Tariff<string>; readonly faults: readonly [] }
  | { readonly tariff: null; readonly faults: readonly TariffFault[] };

/** From this price on somebody wrote cents, $/kWh. No tariff for a household is near it: our judgement. */
const SURELY_CENTS = 3;

/** A tariff from data, or every fault in it with its place. */
export function readTariff(data: unknown): ReadTariff {
  const read = tariffSchema.safeParse(data);
  if (!read.success) {
    return { tariff: null, faults: read.error.issues.flatMap((issue) => shapeFaults(issue, data)) };
  }
  const faults = [...sameHour(read.data), ...inCents(read.data), ...findFaults(read.data)];
  return faults.length > 0 ? { tariff: null, faults } : { tariff: read.data, faults: [] };
}

/** The same from a file of its own, which starts with the version of its form. */
export function readTariffFile(data: unknown): ReadTariff {
  const first = `${TARIFF_KEY}: ${TARIFF_VERSION}`;
  if (typeof data !== 'object' || data === null || Array.isArray(data)) {
    return one([], { code: 'no-tariff-file', firstLine: first });
  }
  const { [TARIFF_KEY]: version, ...rest } = data as Record<string, unknown>;
  if (version === undefined) return one([], { code: 'first-line-missing', firstLine: first });
  if (version !== TARIFF_VERSION) {
    return one([TARIFF_KEY], { code: 'other-form', found: String(version), reads: TARIFF_VERSION });
  }
  return readTariff(rest);
}

function one(path: TariffPath, problem: TariffFault['problem']): ReadTariff {
  return { tariff: null, faults: [{ path, problem }] };
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
    const problem = {
      code: 'period-of-no-hours',
      season: season.name,
      period: period.name,
      hour: same[0],
    } as const;
    return [{ path: [...path, 'hours'], problem }];
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
      problem: { code: 'price-in-cents', price },
    }));
}
