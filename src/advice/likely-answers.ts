import shares from '#compiled/answer-shares.js';
import type { Answer } from '../interview/answers';
import { holds } from '../interview/questions/holds';
import type { Choice, Question } from '../interview/questions/question';
import type { Resolved } from '../interview/questions/resolve';

/** One answer a question could get, and how likely it is among those who can tell. What is left of 1 changes nothing. */
export interface LikelyAnswer {
  readonly answer: Answer;
  readonly share: number;
}

/** Share of a number that stands for each end of its usual range, taken as its 5th and 95th of a hundred, and of the middle. Source: Keefer and Bodily 1983, extended Pearson-Tukey approximation. */
const END_SHARE = 0.185;
/** How many cannot give a number from the sofa, where nothing is said of it. Our judgement. */
const UNSURE_SHARE = 0.15;

/** Share of households that would answer "not sure", 0 to 1. */
export function unsureShare(question: Question): number {
  return shares[question.id]?.unsure ?? UNSURE_SHARE;
}

/** The answers worth trying, for a home of which this is known; empty for a text and for several numbers in a line. */
export function likelyAnswers(question: Question, known: Resolved): LikelyAnswer[] {
  switch (question.kind) {
    case 'choice':
      return evenly(
        offered(question, known).map(({ id }) => ({ answer: id, share: of(question, id) })),
      );
    case 'choices':
      return evenly(lists(question, offered(question, known)));
    case 'number':
      return numbers(question);
    default:
      return [];
  }
}

function offered({ choices = [] }: Question, known: Resolved): Choice[] {
  return choices.filter(({ when }) => when === undefined || holds(when, known));
}

const of = ({ id }: Question, choice: string): number => shares[id]?.of[choice] ?? 0;

function evenly(answers: readonly LikelyAnswer[]): LikelyAnswer[] {
  const sum = answers.reduce((all, { share }) => all + share, 0);
  return answers.map(({ answer, share }) => ({ answer, share: share / sum }));
}

/** The list of what most homes tick; and that list with each other thing added, or one of its own left out. */
function lists(question: Question, choices: readonly Choice[]): LikelyAnswer[] {
  const alone = choices.filter((choice) => choice.alone === true);
  const ticks = choices.filter((choice) => choice.alone !== true);
  const usual = ticks.filter(({ id }) => of(question, id) >= 0.5).map(({ id }) => id);
  const none = [...alone].sort((a, b) => of(question, b.id) - of(question, a.id))[0]?.id;
  const asList = (ids: readonly string[]) => (ids.length > 0 || none === undefined ? ids : [none]);
  const others = ticks.map(({ id }) => {
    const share = of(question, id);
    const rest = usual.filter((one) => one !== id);
    const inOrder = ticks.map((one) => one.id).filter((one) => one === id || rest.includes(one));
    return share >= 0.5 ? { answer: asList(rest), share: 1 - share } : { answer: inOrder, share };
  });
  const odd = others.reduce((all, { share }) => all + share, 0);
  return [{ answer: asList(usual), share: Math.max(0.1, 1 - odd) }, ...others];
}

/** Both ends of the usual range, and half way by ratio where nothing is assumed: what is assumed changes nothing. */
function numbers({ usual, possible, unsure, decimals, unit }: Question): LikelyAnswer[] {
  const [low, high] = usual ?? possible!;
  const half = low > 0 ? Math.sqrt(low * high) : (low + high) / 2;
  const whole = decimals !== true && ['count', 'people', 'year'].includes(unit ?? '');
  const at = (value: number, share: number) => ({
    answer: whole ? Math.round(value) : value,
    share,
  });
  const middle = unsure.assume === null ? [at(half, 1 - 2 * END_SHARE)] : [];
  return [at(low, END_SHARE), ...middle, at(high, END_SHARE)];
}
