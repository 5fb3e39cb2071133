import type { ReadTariff } from '../bill/tariff/read-tariff';
import type { Tariff } from '../bill/tariff/tariff';
import { type Fault, sayFaults } from '../store/home-file';
import type { PlaceIn } from '../store/place-in';
import { readYamlFile } from '../store/read-yaml-file';

export type OwnTariff =
  | { readonly ok: true; readonly tariff: Tariff<string> }
  | { readonly ok: false; readonly says: string; readonly faults: readonly Fault[] };

/** The tariff in a file of its own, or every fault in it as text: place, what is wrong, what to do. */
export async function tariffFromFile(path: string): Promise<OwnTariff> {
  const file = readYamlFile(path);
  if (!file.ok) return { ok: false, says: sayFaults(path, file.faults), faults: file.faults };
  const { readTariffFile } = await import('../bill/tariff/read-tariff');
  return await settle(path, readTariffFile(file.data), file.placeOf);
}

/** The tariff inside a home file, likewise. */
export async function tariffFromHome(
  path: string,
  { data, placeOf }: { data: unknown; placeOf: PlaceIn },
): Promise<OwnTariff> {
  const { readTariff } = await import('../bill/tariff/read-tariff');
  return await settle(path, readTariff(data), (at) => placeOf(['tariff', ...at]));
}

async function settle(path: string, read: ReadTariff, placeOf: PlaceIn): Promise<OwnTariff> {
  if (read.tariff !== null) return { ok: true, tariff: read.tariff };
  const { sayTariffFault } = await import('../words/en/tariff/say-tariff-fault');
  const faults = read.faults.map((fault) => ({
    ...placeOf(fault.path),
    says: sayTariffFault(fault),
  }));
  return { ok: false, says: sayFaults(path, faults), faults };
}
