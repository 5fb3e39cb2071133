import type { Interview } from '../interview/questions/question';
import type { State } from '../interview/state';
import { tonightFor } from '../interview/tonight';

export const TONIGHT_TITLE = 'What to do tonight';
export const SOURCE = 'Source';

/** What a question mark shows over the page, in both faces. */
export const TONIGHT_HELP = [
  'This page is for a home without power right now. It holds what keeps people safe until morning: warmth, food, water, medicine, and the gas that kills without a smell.',
  'It asks nothing and plans nothing. Under each part stands who says so.',
  'Gas, smoke or someone unwell comes before this page: leave first, then call 911.',
  'When all is well, go on to planning.',
] as const;

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
