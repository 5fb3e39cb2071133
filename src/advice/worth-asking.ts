import type { QuestionId } from '#compiled/question-ids.js';
import type { Home } from '../home/home';
import type { Answers } from '../interview/answers';
import type { Question } from '../interview/questions/question';
import type { RouteKind } from '../kinds/route-kind';
import { onlyUnknown } from '../routes/stops/stop';
import { samePrice } from './change';
import { couldForbid } from './could-forbid';
import { type Bank, CHANGES_NOTHING, type Effect, effectOf, type Tried } from './effect-of-answers';
import { listedEffect } from './listed-effect';
import { liveAdvice } from './live-advice';
import type { Trial } from './trial';
import { type WhyNow, whyNow } from './why-now';

/** An open question with what its answers could change. */
export interface Candidate {
  readonly question: Question;
  readonly effect: Effect;
  readonly forbids: readonly RouteKind[];
  /** It moves the hour at which somebody who lives by a device has to leave. */
  readonly leaving: boolean;
  /** What it finds here can hurt whatever is bought. */
  readonly hurts: boolean;
  /** What a battery that is there can do hangs on it and on others together. */
  readonly owned: boolean;
  /** 0: not worth asking. */
  readonly weight: number;
}

/** A safety question that could forbid a route on the table, moves the hour of leaving, or one of a battery that is there, weighs at least this. Our judgement. */
const MUST_WEIGHT = 0.1;

/** By one size of each route. */
export function tryQuickly(answers: Answers, bank: Bank, question: Question): Candidate {
  const effect = effectOf(answers, bank, question);
  const now = bank.trialOf(answers);
  const forbids = couldForbid(effect, onTheTable(now));
  const leaving = movesLeaving(now.home, question.id);
  const measured = effect.ifTold >= CHANGES_NOTHING ? effect.expected : 0;
  const hurts = canHurt[question.id as QuestionId]?.(now.home) ?? false;
  const owned = (ofOwnBattery as readonly string[]).includes(question.id);
  const weight = mustBeAsked({ forbids, leaving, hurts, owned })
    ? Math.max(MUST_WEIGHT, measured)
    : measured;
  return { question, effect, forbids, leaving, hurts, owned, weight };
}

/** The same by the plan's own list, where the quick weighing found it worth asking: null where the list comes to the same and it need not be asked anyway. */
export function heldByTheList(now: Trial, one: Candidate): Candidate | null {
  const effect = listedEffect(now, one.effect, one.question);
  return mustBeAsked(one) || effect.ifTold >= CHANGES_NOTHING ? { ...one, effect } : null;
}

/** It must be asked anyway, or an answer buys another thing or closes what stands beside; others do a little more or less of the job. */
export function decidesPurchase(now: Trial, one: Candidate): boolean {
  const usd = liveAdvice(now).route.costUsd.value;
  const buysOther = ({ change }: Tried) =>
    change.route || change.closes.length > 0 || !samePrice(usd, change.usd);
  return mustBeAsked(one) || one.effect.tried.some(buysOther);
}

type Must = Pick<Candidate, 'forbids' | 'leaving' | 'hurts' | 'owned'>;

const mustBeAsked = ({ forbids, leaving, hurts, owned }: Must) =>
  forbids.length > 0 || leaving || hurts || owned;

/** Routes advised, laid beside, or closed only for want of an answer. */
function onTheTable(now: Trial): RouteKind[] {
  const { route, beside, wholeJob } = now.advice;
  const possible = now.routes.filter(({ stops }) => onlyUnknown(stops));
  const advised = [liveAdvice(now).route, route];
  return [...advised, ...beside, ...(wholeJob === null ? [] : [wholeJob]), ...possible].map(
    ({ kind }) => kind,
  );
}

export function whyOf(now: Trial, { effect, forbids, leaving, hurts, owned }: Candidate): WhyNow {
  if (leaving && forbids.length === 0) return { code: 'when-to-leave' };
  if (hurts && forbids.length === 0 && effect.ifTold < CHANGES_NOTHING)
    return { code: 'may-hurt-here' };
  if (owned && forbids.length === 0 && effect.ifTold < CHANGES_NOTHING)
    return { code: 'what-is-owned' };
  if (effect.ifTold < CHANGES_NOTHING) return { code: 'could-forbid', routes: forbids };
  return whyNow(now, effect, liveAdvice(now).route);
}

/** Where what a question is about brings cautions of its own, and so is asked before enough is known. */
const canHurt: Partial<Record<QuestionId, (home: Home) => boolean>> = {
  // A battery, a generator, a cord with two plugs, an electric car.
  'own-sources': () => true,
  'big-loads': () => true,
  'engine-connect': () => true,
  // A pump for waste, and waste that comes back in: a home with water of its own mostly has a tank. Our judgement.
  waste: ({ facts }) => facts.is('water-source', 'well', 'shallow-pump', 'tank'),
};

/** What is there costs nothing, and whether it does the job hangs on these together: no answer alone changes what to buy. */
const ofOwnBattery: readonly QuestionId[] = [
  'battery-kind',
  'battery-kwh',
  'battery-kw',
  'battery-backup',
];

/** What the hour of leaving is made of: where to, how long the trip takes, and whether a closed road would stop it. */
const leaving: readonly QuestionId[] = ['leave-place', 'trip-hours', 'road-out'];

/** The question moves the hour at which somebody who lives by a device has to go: asked before enough is known. */
const movesLeaving = (home: Home, question: string): boolean =>
  home.lifeSupport !== 'no' && (leaving as readonly string[]).includes(question);
