import interview from '#compiled/questions.js';
import type { Answers } from '../interview/answers';
import type { Unfinished } from '../interview/unfinished';
import { sayFault } from '../store/home-file';
import { isDay, readHome } from '../store/read-home';

/** The day our newest table was checked: what ages are counted from when nothing else says. */
export const TABLES_AS_OF = '2026-11-25';

export type FileHome =
  | {
      readonly ok: true;
      readonly answers: Answers;
      readonly unfinished: Unfinished;
      readonly asOf: string;
    }
  | { readonly ok: false; readonly says: string };

/** A home file for a command: its answers and day, or every fault in it as text. */
export function homeFromFile(path: string, asOf: string | null): FileHome {
  if (asOf !== null && !isDay(asOf)) {
    return { ok: false, says: '--as-of takes a day such as 2026-11-25.' };
  }
  const read = readHome(path, interview);
  if (!read.ok) return { ok: false, says: read.faults.map((f) => sayFault(path, f)).join('\n') };
  const { answers, unfinished } = read;
  return { ok: true, answers, unfinished, asOf: asOf ?? read.asOf ?? TABLES_AS_OF };
}
