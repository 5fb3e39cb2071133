import type { Answer, Answers } from '../interview/answers';
import type { Question } from '../interview/questions/question';
import { changeBetween, samePurchase } from './change';
import { DRAWS, drawnAnswers } from './drawn-answers';
import type { Bank, Effect, Tried } from './effect-of-answers';
import { byTheList } from './listed-effect';
import { liveAdvice } from './live-advice';
import { sameMakings } from './makings';
import type { Steps } from './steps';
import type { Trial } from './trial';

/** A question at which what to buy turned, others being answered with it. */
export interface Turned {
  readonly question: Question;
  readonly effect: Effect;
}

/** In how many draws another thing must be bought before something is asked: the longer the talk, the more. Our judgement. */
const patience = [
  { answersBelow: 24, draws: 1 },
  { answersBelow: 36, draws: 2 },
];
/** A home that pumps its own water has more to tell, and is asked so many more. Our judgement. */
const OWN_WATER = 8;

/** In so many draws; null where the talk is long enough, and only what changes the purchase by itself is still asked. */
export function drawsThatCount(answers: Answers, { home }: Trial): number | null {
  const told = Object.keys(answers).length;
  const more = home.facts.is('water-source', 'well', 'shallow-pump') ? OWN_WATER : 0;
  return patience.find(({ answersBelow }) => told < answersBelow + more)?.draws ?? null;
}

/**
 * Answers that change what to buy only together, found by whole files. In the order handed in they are put in one by one,
 * and one at which the purchase turns is the one to ask, that of most draws, of equals the first handed in; null where
 * fewer than `enough` draws buy another thing.
 */
export function* foundTogether(
  answers: Answers,
  bank: Bank,
  open: readonly Question[],
  enough: number,
): Steps<Turned | null> {
  const found: { question: Question; tried: Tried }[] = [];
  for (let k = 0; k < DRAWS && found.length < enough; k++) {
    const tried = yield* turnedAt(answers, bank, inOrder(drawnAnswers(answers, bank, k), open));
    const question = tried === null ? undefined : askable(tried.id, bank, open);
    if (tried !== null && question !== undefined) found.push({ question, tried });
  }
  if (found.length < enough) return null;
  const at = (one: Question) => found.filter(({ question }) => question === one);
  const question = open.reduce((most, one) => (at(one).length > at(most).length ? one : most));
  const tried = at(question).map((one) => one.tried);
  const expected = tried.reduce((sum, { share, change }) => sum + share * change.weight, 0);
  return { question, effect: { question: question.id, ifTold: expected, expected, tried } };
}

type Given = readonly [string, Answer];

/** What can be asked now goes first, what it brings up behind. */
function inOrder(drawn: Answers, open: readonly Question[]): Given[] {
  const now = open.flatMap(({ id }): Given[] => (drawn[id] === undefined ? [] : [[id, drawn[id]]]));
  const ids = new Set(now.map(([id]) => id));
  return [...now, ...Object.entries(drawn).filter(([id]) => !ids.has(id))];
}

/** The first answer with which another thing is bought, by halving; null where it is the same with all of them. */
function* turnedAt(
  answers: Answers,
  bank: Bank,
  given: readonly Given[],
): Steps<(Tried & { readonly id: string }) | null> {
  const now = bank.trialOf(answers);
  const after = (count: number) =>
    bank.trialOf({ ...answers, ...Object.fromEntries(given.slice(0, count)) });
  let [same, turned] = [0, given.length];
  let trial = after(turned);
  const alike = buysTheSame(now, trial);
  yield;
  if (alike) return null;
  while (turned - same > 1) {
    const middle = Math.floor((same + turned) / 2);
    const tried = after(middle);
    if (buysTheSame(now, tried)) same = middle;
    else [turned, trial] = [middle, tried];
    yield;
  }
  const [id, answer] = given[turned - 1]!;
  return { id, answer, share: 1 / DRAWS, change: changeBetween(now, trial, byTheList), trial };
}

const buysTheSame = (now: Trial, then: Trial): boolean =>
  sameMakings(now, then) || samePurchase(liveAdvice(now).route, liveAdvice(then).route);

/** The question itself where it applies by now, else one that brings it up. */
function askable(id: string, { broughtBy }: Bank, open: readonly Question[]): Question | undefined {
  const brings = (one: string): boolean =>
    (broughtBy.get(one) ?? []).some((next) => next.id === id || brings(next.id));
  return open.find((one) => one.id === id) ?? open.find((one) => brings(one.id));
}
