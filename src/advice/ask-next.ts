import type { QuestionId } from '#compiled/question-ids.js';
import type { Home } from '../home/home';
import type { Answers } from '../interview/answers';
import type { Question } from '../interview/questions/question';
import type { RouteKind } from '../kinds/route-kind';
import { onlyUnknown } from '../routes/stops/stop';
import { couldForbid } from './could-forbid';
import { type Bank, CHANGES_NOTHING, type Effect, effectOf } from './effect-of-answers';
import { likeliestFirst } from './likeliest-first';
import { stayInTopic } from './stay-in-topic';
import type { Trial } from './trial';
import { type WhyNow, whyNow } from './why-now';

/** What to ask next and why, or that nothing left open would change what to buy. */
export type Next =
  | {
      readonly code: 'ask';
      readonly questionId: string;
      readonly whyNow: WhyNow;
      /** How many are left that would change the plan, this one with them, of those looked at. */
      readonly openCount: number;
    }
  | {
      readonly code: 'enough';
      /** How many questions left open would only sharpen figures. */
      readonly sharpen: number;
    };

/** A safety question that could forbid a route on the table, or moves the hour of leaving, weighs at least this. Our judgement. */
const SAFETY_WEIGHT = 0.1;
/** How many of the likeliest are tried before one is asked. */
const TRIED_FIRST = 20;

/** One question that is still worth asking. */
interface Candidate {
  readonly question: Question;
  readonly effect: Effect;
  readonly forbids: readonly RouteKind[];
  /** It moves the hour at which somebody who lives by a device has to leave. */
  readonly leaving: boolean;
  readonly weight: number;
}

/**
 * The question to ask next: the opening in its order; a text that belongs to what was told; then the one that could change the advice most. The twenty that
 * usually change most are tried first, the others only where none of those does. The same answers give the same question.
 */
export function askNext(answers: Answers, bank: Bank): Next {
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
  const now = bank.trialOf(answers);
  const ranked = likeliestFirst(open);
  let sharpen = 0;
  for (let from = 0; from < ranked.length; from += TRIED_FIRST) {
    const tried = ranked.slice(from, from + TRIED_FIRST).map((one) => tryOne(answers, bank, one));
    const worth = tried.filter(({ weight }) => weight > 0);
    if (worth.length > 0) {
      const next = stayInTopic(bank.interview, answers, worth);
      return {
        code: 'ask',
        questionId: next.question.id,
        whyNow: whyOf(now, next),
        openCount: worth.length,
      };
    }
    sharpen += tried.filter(({ effect }) => effect.tried.some((one) => one.change.sharpens)).length;
  }
  return { code: 'enough', sharpen };
}

/** How many answers would still change the plan: every open question tried. Slower than asking; the same answers give the same count. */
export function countWorthAsking(answers: Answers, bank: Bank): number {
  return openQuestions(answers, bank).filter((one) => tryOne(answers, bank, one).weight > 0).length;
}

/** Questions that apply and were not put yet, in the order of the interview; what nobody answered counts as "not sure". */
function openQuestions(answers: Answers, { interview, knownOf }: Bank): Question[] {
  const known = knownOf(answers);
  return interview.questions.filter(({ id }) => known.has(id) && answers[id] === undefined);
}

function tryOne(answers: Answers, bank: Bank, question: Question): Candidate {
  const effect = effectOf(answers, bank, question);
  const now = bank.trialOf(answers);
  const forbids = couldForbid(effect, onTheTable(now));
  const leaving = movesLeaving(now.home, question.id);
  const measured = effect.ifTold >= CHANGES_NOTHING ? effect.expected : 0;
  const safety = forbids.length > 0 || leaving;
  const weight = safety ? Math.max(SAFETY_WEIGHT, measured) : measured;
  return { question, effect, forbids, leaving, weight };
}

/** Routes advised, laid beside, or closed only for want of an answer. */
function onTheTable({ advice, routes }: Trial): RouteKind[] {
  const { route, beside, wholeJob } = advice;
  const possible = routes.filter(({ stops }) => onlyUnknown(stops));
  return [route, ...beside, ...(wholeJob === null ? [] : [wholeJob]), ...possible].map(
    ({ kind }) => kind,
  );
}

function whyOf(now: Trial, { effect, forbids, leaving }: Candidate): WhyNow {
  if (leaving && forbids.length === 0) return { code: 'when-to-leave' };
  if (effect.ifTold < CHANGES_NOTHING) return { code: 'could-forbid', routes: forbids };
  return whyNow(now, effect);
}

/** What the hour of leaving is made of: where to, how long the trip takes, and whether a closed road would stop it. */
const leaving: readonly QuestionId[] = ['leave-place', 'trip-hours', 'road-out'];

/** The question moves the hour at which somebody who lives by a device has to go: asked before enough is known. */
const movesLeaving = (home: Home, question: string): boolean =>
  home.lifeSupport !== 'no' && (leaving as readonly string[]).includes(question);
