import type { Question } from '../../../interview/questions/question';
import { questionAt } from '../../../interview/questions/relevant';
import { unsureWords } from '../../unsure-words';
import type { Frame, FrameParts } from '../frame';
import { type Line, styled, wrapParagraphs } from '../line';
import { readingFrame } from './reading';

/** The hint, which a small window may have no room for, why we ask, how to find out, and what "not sure" does. */
export function helpFrame(parts: FrameParts, width: number): Frame {
  const question = questionAt(parts.context, parts.state.at);
  return readingFrame(parts, width, {
    title: question.ask,
    text: helpText(question, width),
  });
}

function helpText(question: Question, width: number): Line[] {
  const sections: [string, string][] = [
    ['Hint', `${question.hint}.`],
    ['Why we ask', question.why],
    ['How to find out', question.find],
    ["If you're not sure", unsureWords(question)],
  ];
  return sections.flatMap(([title, text], i) => [
    ...(i > 0 ? [[]] : []),
    ...styled([title], { bold: true }),
    ...styled(wrapParagraphs(text, width)),
  ]);
}
