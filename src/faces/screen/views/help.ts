import type { Question } from '../../../interview/questions/question';
import { questionAt } from '../../../interview/questions/relevant';
import { unsureWords } from '../../unsure-words';
import type { Frame, FrameParts } from '../frame';
import { type Line, styled, wrapParagraphs } from '../line';
import { readingFrame } from './reading';

/** What a small window may have no room for (hint, keys), why we ask, how to find out, and what "not sure" does. */
export function helpFrame(parts: FrameParts, width: number): Frame {
  const question = questionAt(parts.context, parts.state.at);
  return readingFrame(parts, width, {
    title: question.ask,
    text: helpText(parts, question, width),
  });
}

function helpText({ context, state }: FrameParts, question: Question, width: number): Line[] {
  const sections: [string, string][] = [
    ['Hint', `${question.hint}.`],
    ['Why we ask', question.why],
    ['How to find out', question.find],
    ["If you're not sure", unsureWords(context, state, question)],
    ['Keys', KEYS],
  ];
  return sections.flatMap(([title, text], i) => [
    ...(i > 0 ? [[]] : []),
    ...styled([title], { bold: true }),
    ...styled(wrapParagraphs(text, width)),
  ]);
}

/** What a low window has no room for below each screen. */
const KEYS = [
  'Up and Down move by a line, Page Up and Page Down move far.',
  'In a list a number marks its line. Where you tick, Space ticks.',
  'In your list of answers Left and Right go from section to section, Home and End to its ends.',
  'Enter takes what is marked. Esc goes back. Ctrl+S saves and stops.',
].join(' ');
