import type { Answers } from '../interview/answers';
import type { Question } from '../interview/questions/question';
import { isToAsk } from '../interview/questions/relevant';
import type { Bank } from './effect-of-answers';
import { drawsThatCount, foundTogether } from './found-together';
import { likeliestFirst } from './likeliest-first';
import { liveAdvice } from './live-advice';
import { stayInTopic } from './stay-in-topic';
import { inOnePiece, type Steps } from './steps';
import { type WhyNow, whyNow } from './why-now';
import { type Candidate, decidesPurchase, heldByTheList, tryQuickly, whyOf } from './worth-asking';

/** What to ask next and why, or that nothing left open would change what to buy. */
export type Next =
  | {
      readonly code: 'ask';
      readonly questionId: string;
      readonly whyNow: WhyNow;
      /** How many are left that may change the plan, this one with them, of those looked at. */
      readonly openCount: number;
    }
  | {
      readonly code: 'enough';
      /** How many questions left open would only sharpen figures. */
      readonly sharpen: number;
    };

/** How many of the likeliest are tried before one is asked. */
const TRIED_FIRST = 20;

/**
 * The question to ask next: the opening in its order; a text that belongs to what was told; then the one that could change
 * the advice most. The twenty that usually change most are tried first, by one size of each route, and what that finds is held
 * against the plan's own list. Where none of them alone decides what to buy, whole files are drawn to see whether answers change
 * the purchase together; then, in a talk that is not long, what only does more or less of the job; then the others are tried. The
 * same answers give the same question.
 */
export function askNext(answers: Answers, bank: Bank): Next {
  return inOnePiece(nextInSteps(answers, bank));
}

/** The same step by step, each a few hundredths of a second, for whoever listens between them. */
export function* nextInSteps(answers: Answers, bank: Bank): Steps<Next> {
  const open = openQuestions(answers, bank);
  const opening = bank.interview.opening.find((id) => open.some((one) => one.id === id));
  if (opening !== undefined) {
    const left = open.filter(({ id }) => bank.interview.opening.includes(id)).length;
    return { code: 'ask', questionId: opening, whyNow: { code: 'opening' }, openCount: left };
  }
  // Nothing is read out of a text: it is asked right behind the answer it belongs to, or never.
  const text = open.find(({ kind }) => kind === 'text');
  if (text !== undefined)
    return { code: 'ask', questionId: text.id, whyNow: { code: 'in-its-words' }, openCount: 1 };
  return yield* weightiestNext(answers, bank, likeliestFirst(open));
}

function* weightiestNext(answers: Answers, bank: Bank, ranked: readonly Question[]): Steps<Next> {
  const now = bank.trialOf(answers);
  const ask = ({ one, openCount }: Held): Next => {
    return { code: 'ask', questionId: one.question.id, whyNow: whyOf(now, one), openCount };
  };
  const draws = drawsThatCount(answers, now);
  const all: Candidate[] = [];
  for (const [i, some] of batches(ranked, TRIED_FIRST).entries()) {
    const tried: Candidate[] = [];
    for (const one of some) {
      tried.push(tryQuickly(answers, bank, one));
      yield;
    }
    const { decides, shares } = yield* heaviest(answers, bank, tried);
    if (decides !== null) return ask(decides);
    all.push(...tried);
    const looks = i === 0 && draws !== null;
    const turned = looks ? yield* foundTogether(answers, bank, ranked, draws) : null;
    if (turned !== null) {
      const { question, effect } = turned;
      const why = whyNow(now, effect, liveAdvice(now).route);
      return { code: 'ask', questionId: question.id, whyNow: why, openCount: 1 };
    }
    if (shares !== null && draws !== null) return ask(shares);
  }
  const sharpen = ({ effect }: Candidate) => effect.tried.some((one) => one.change.sharpens);
  return { code: 'enough', sharpen: all.filter(sharpen).length };
}

/** A question that the list holds for worth asking, and how many were left then. */
interface Held {
  readonly one: Candidate;
  readonly openCount: number;
}

/** The weightiest that decides what to buy; where none does, the weightiest that only does more or less of the job. */
function* heaviest(
  answers: Answers,
  bank: Bank,
  tried: readonly Candidate[],
): Steps<{ decides: Held | null; shares: Held | null }> {
  const now = bank.trialOf(answers);
  let shares: Held | null = null;
  let worth = tried.filter(({ weight }) => weight > 0);
  while (worth.length > 0) {
    const next = stayInTopic(bank.interview, answers, worth);
    const one = heldByTheList(now, next);
    yield;
    const held = one === null ? null : { one, openCount: worth.length };
    if (held !== null && decidesPurchase(now, held.one)) return { decides: held, shares };
    shares ??= held;
    worth = worth.filter((other) => other !== next);
  }
  return { decides: null, shares };
}

function batches<T>(all: readonly T[], size: number): T[][] {
  return Array.from({ length: Math.ceil(all.length / size) }, (_, i) =>
    all.slice(i * size, (i + 1) * size),
  );
}

/** Questions that apply and were not put yet, in the order of the interview; what nobody answered counts as "not sure". */
function openQuestions(answers: Answers, { interview, knownOf }: Bank): Question[] {
  const known = knownOf(answers);
  return interview.questions.filter(
    (question) => known.has(question.id) && isToAsk(question, answers),
  );
}
