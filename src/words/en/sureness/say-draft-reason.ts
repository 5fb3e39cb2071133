import type { DraftReason, OpenQuestion } from '../../../plan/sureness/why-draft';

/** Why a plan stays a draft, in whole. */
export function sayDraftReason(reason: DraftReason): string {
  switch (reason.id) {
    case 'to-settle':
      return `${pairsSaid(reason.pairs)}, and the plan rests on them: settle this first`;
    case 'life-unknown':
      return 'it is not known whether somebody here depends on a powered medical device';
    case 'no-second-way':
      return 'somebody depends on power to live, and no tested second way is agreed with the clinician and supplier';
    case 'open-answers':
      return `these answers are still open: ${listed(reason.questions)}`;
    case 'never-asked':
      return `questions about safety that apply here were never asked: ${listed(reason.questions)}`;
  }
}

/** The same in short, for a first page. */
export function sayDraftReasonShort(reason: DraftReason): string {
  switch (reason.id) {
    case 'to-settle':
      return pairsSaid(reason.pairs);
    case 'life-unknown':
      return 'not known whether somebody here depends on a powered device';
    case 'no-second-way':
      return 'no tested second way for the device somebody lives by';
    case 'open-answers': {
      const count = reason.questions.length;
      return `${count} of the ${reason.of} main answers ${count === 1 ? 'is' : 'are'} open`;
    }
    case 'never-asked': {
      const count = reason.questions.length;
      return `${count} other ${count === 1 ? 'question, about safety, was' : 'questions, about safety, were'} never asked`;
    }
  }
}

const pairsSaid = (pairs: number) =>
  pairs === 1 ? 'two answers do not fit together' : `${pairs} pairs of answers do not fit together`;

const listed = (questions: readonly OpenQuestion[]) =>
  questions.map(({ says, ask }) => `${says} (${ask})`).join('; ');
