import interview from '#compiled/questions.js';
import type { Tariff } from '../bill/tariff/tariff';
import type { Answers } from '../interview/answers';
import type { Unfinished } from '../interview/unfinished';
import { type Fault, sayFaults } from '../store/home-file';
import { isDay, readHome } from '../store/read-home';
import { tariffFromHome } from './own-tariff';

/** The day our newest table was checked: what ages are counted from when nothing else says. */
export const TABLES_AS_OF = '2026-11-25';

export type FileHome =
  | {
      readonly ok: true;
      readonly answers: Answers;
      readonly unfinished: Unfinished;
      readonly asOf: string;
      /** The household's own tariff, where the file holds one. */
      readonly tariff: Tariff<string> | null;
      /** What stands in the file and is not read: the first of it. */
      readonly remarks: readonly Fault[];
    }
  | { readonly ok: false; readonly says: string; readonly faults: readonly Fault[] };

/** A home file for a command: its answers, day and own tariff, or every fault in it as text. */
export async function homeFromFile(path: string, asOf: string | null): Promise<FileHome> {
  if (asOf !== null && !isDay(asOf)) {
    return { ok: false, says: '--as-of takes a day such as 2026-11-25.', faults: [] };
  }
  const read = readHome(path, interview);
  if (!read.ok) return { ok: false, says: sayFaults(path, read.faults), faults: read.faults };
  const { answers, unfinished } = read;
  const remarks = (read.remarks ?? []).slice(0, 20);
  const day = asOf ?? read.asOf ?? TABLES_AS_OF;
  if (read.ownTariff === undefined) {
    return { ok: true, answers, unfinished, asOf: day, tariff: null, remarks };
  }
  const own = await tariffFromHome(path, read.ownTariff);
  if (!own.ok) return own;
  return { ok: true, answers, unfinished, asOf: day, tariff: own.tariff, remarks };
}
