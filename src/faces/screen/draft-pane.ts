import type { Draft } from '../../plan/draft';
import { NO_SUMS, NOTHING_NAMED, rankWords, sumWords, widthWords } from '../draft-words';
import { SUMS_FAILED } from '../weigh-safely';
import { flow } from './foot';
import type { Glyphs } from './glyphs';
import { type Line, shorten, styled, wrapText } from './line';

/** Lines a list of load names may take beside the question. */
const MOST_NAME_LINES = 5;

/** The sums beside the question: not made yet, made, or at fault. */
export type Weighed = Draft | null | typeof SUMS_FAILED;

/** What the answers add up to, for a column beside the question. */
export function paneBeside(draft: Weighed, width: number, glyphs: Glyphs): Line[] {
  const title: Line = [{ text: 'Your answers so far add up to', bold: true }];
  if (draft === SUMS_FAILED) return [title, [], ...styled(wrapText(NO_SUMS, width))];
  const sums = draft === null ? [] : sumWords(draft);
  if (draft === null || (sums.length === 0 && draft.loads.length === 0)) {
    return [title, [], ...styled(wrapText(NOTHING_NAMED, width))];
  }
  const unsure = widthWords(draft);
  const groups = [
    ...sums.map((words) => wrapText(words, width)),
    ...(unsure === null ? [] : [['', ...wrapText(unsure, width)]]),
    ...rankWords(draft).map((words) => ['', ...nameLines(words, width, glyphs)]),
    ...draft.lines.map((words) => ['', ...wrapText(words, width)]),
  ];
  return [title, [], ...groups.flatMap((group) => styled(group))];
}

function nameLines(words: string, width: number, glyphs: Glyphs): string[] {
  const lines = wrapText(words, width);
  if (lines.length <= MOST_NAME_LINES) return lines;
  const kept = lines.slice(0, MOST_NAME_LINES);
  return [...kept.slice(0, -1), shorten(`${kept.at(-1)} and more`, width, glyphs.cut)];
}

/** The same in a few lines, for below the question: the sums first, names cut to one line each. */
export function paneBelow(draft: Weighed, width: number, glyphs: Glyphs): Line[] {
  if (draft === null) return [];
  if (draft === SUMS_FAILED) return styled(wrapText(NO_SUMS, width));
  const sums = sumWords(draft);
  if (sums.length === 0 && draft.loads.length === 0)
    return styled(wrapText(`So far: ${NOTHING_NAMED}`, width));
  const unsure = widthWords(draft);
  return [
    ...styled(flow(sums, width, '   ').flatMap((words) => wrapText(words, width))),
    ...draft.lines.flatMap((words) => styled(wrapText(words, width))),
    ...(unsure === null ? [] : styled(wrapText(unsure, width))),
    ...styled(rankWords(draft).map((words) => shorten(words, width, glyphs.cut))),
  ];
}
