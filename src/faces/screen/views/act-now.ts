import { questionAt } from '../../../interview/relevant';
import { ACT_NOW_TITLE, ACT_NOW_UNSURE, actNowChoices } from '../../act-now-texts';
import type { Frame, FrameParts } from '../frame';
import { styled, wrapParagraphs, wrapText } from '../line';
import { readingFrame } from './reading';

/** What to do at once about the dangers named, in full. */
export function actNowFrame(parts: FrameParts, width: number): Frame {
  const { context, state } = parts;
  const choices = actNowChoices(questionAt(context, state.at), state.ticked);
  const text = choices.flatMap((choice, i) => [
    ...(i > 0 ? [[]] : []),
    ...styled(wrapText(choice.label, width), { bold: true }),
    ...styled(wrapParagraphs(choice.actNow ?? '', width)),
  ]);
  const title = state.ticked.length === 0 ? ACT_NOW_UNSURE : ACT_NOW_TITLE;
  return readingFrame(parts, width, { title, text });
}
