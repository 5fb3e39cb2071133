import type { Interview } from '../interview/questions/question';
import type { State } from '../interview/state';
import { tonightFor } from '../interview/tonight';

export const TONIGHT_TITLE = 'What to do tonight';
export const SOURCE = 'Source';

/** A part of the page for tonight, its sentences and who says so. */
export interface TonightText {
  readonly title: string;
  readonly lines: readonly string[];
  readonly source: string;
}

export function tonightTexts(
  { tonight, dangers }: Interview,
  { ticked }: Pick<State, 'ticked'>,
): TonightText[] {
  return tonightFor(tonight, dangers, ticked).map(({ title, lines, source }) => ({
    title,
    lines: lines.map(({ say }) => say),
    source,
  }));
}
