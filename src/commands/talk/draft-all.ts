import interview from '#compiled/questions.js';
import { askNext } from '../../advice/ask-next';
import { bankOf } from '../../advice/effect-of-answers';
import { likelyAnswers } from '../../advice/likely-answers';
import type { Tariff } from '../../bill/tariff/tariff';
import type { Later } from '../../faces/door';
import type { Answers } from '../../interview/answers';
import { besideTariff } from '../../interview/beside-tariff';
import { questionAt } from '../../interview/questions/relevant';
import { resolve } from '../../interview/questions/resolve';
import { draftMaker } from '../../plan/draft/draft-of';
import { sayWhyNow } from '../../words/en/say-why-now';
import { showDraft } from './show-draft';

export interface DraftAll extends Pick<Required<Later>, 'draftOf' | 'next'> {
  /** The answers as they will most likely be once this question is answered, likeliest first. */
  likelyAfter(answers: Answers, questionId: string): Answers[];
}

/** How many answers are tried while the question is read. */
const TRIED_AHEAD = 3;

/** The sums beside a question and what to ask next, from one memory of what was tried. */
export function draftAll(tariff: Tariff | null, asOf: string): DraftAll {
  const bank = bankOf(besideTariff(interview, tariff !== null), asOf);
  const draftOf = draftMaker(interview, tariff, bank.trialOf);
  return {
    likelyAfter: (answers, questionId) => {
      const question = questionAt(bank, questionId);
      const known = resolve(bank.interview.questions, answers, 'assume');
      return [...likelyAnswers(question, known)]
        .sort((a, b) => b.share - a.share)
        .slice(0, TRIED_AHEAD)
        .map(({ answer }) => ({ ...answers, [questionId]: answer }));
    },
    draftOf: (answers) => showDraft(draftOf(answers)),
    next: (answers) => {
      const next = askNext(answers, bank);
      if (next.code === 'enough') return next;
      const { code, questionId, whyNow, openCount } = next;
      return { code, questionId, why: sayWhyNow(whyNow), left: openCount };
    },
  };
}
