import interview from '#compiled/questions.js';
import type { Bank } from '../../../src/advice/effect-of-answers';
import type { PlainAdvice } from '../../../src/advice/plain-advice';
import { TRIAL_YEARS } from '../../../src/advice/trial';
import { type Answers, NOT_SURE } from '../../../src/interview/answers';
import type { RouteKind } from '../../../src/kinds/route-kind';
import type { PlanFacts } from '../../../src/plan/changes/plan-facts';
import { quickPlans } from '../../../src/plan/changes/quick-plan';
import { homeFromAnswers } from '../../../src/plan/home-from-answers';
import { AS_OF, bankForTalks, filled, talk } from '../../bench/talk';
import { completeHome, likelyHome } from '../../complete-home';
import { met, note, type Part, type Tally } from '../part';
import { type Advised as Told, unsafeDifference } from '../unsafe-difference';

/** Price within this share is the same advice. */
const SAME_PRICE = 0.1;
/** So many of a hundred homes may get other advice from what was asked than from all they know. */
const MAY_DIFFER = 0.05;
/** Fewer homes are not held to a share. */
const FEWEST = 20;

const homes = 'homes asked until enough';
const others = 'of them with another route or price';

/** Besides, what the talk itself goes by. */
interface Advised extends Told {
  readonly advice: PlainAdvice;
}

/**
 * What is advised once enough was told, against the advice of all that the home knows: homes made up by chance, each answer as
 * often as households give it. Of these so many may get other advice and no more.
 */
export const enough: Part = partOf(likelyHome, MAY_DIFFER);

/** The same with each answer as often as any other, so that what is rare is common: how many differ is counted, and held to nothing. */
export const enoughEven: Part = partOf(completeHome, null);

function partOf(homeOf: (seed: number) => Answers, mayDiffer: number | null): Part {
  return {
    whole: 200,
    of: 'home',
    try(seed, tally) {
      // A height drawn by chance does not belong to the ZIP code drawn beside it.
      const home = filled({ ...homeOf(seed), 'home-elevation': NOT_SURE });
      const bank = bankForTalks();
      const turns = talk(bank, home);
      const told = advised(bank, turns.at(-1)!.before);
      const whole = advised(bank, home);
      met(tally, homes);
      met(tally, 'answers until enough, in all', turns.length - 1);
      note(tally, `home ${seed}`, 'no unsafe difference', unsafeDifference(told, whole));
      compare(tally, seed, told.facts, whole.facts, mayDiffer);
      if (!sameAdvice(quick(told), quick(whole)))
        met(tally, 'of them by the quick weighing of the talk');
    },
  };
}

function advised(bank: Bank, answers: Answers): Advised {
  const { routes, advice } = bank.trialOf(answers);
  // That of a trial may hold other answers, to questions its advice never asked for.
  const home = homeFromAnswers(interview, answers, AS_OF);
  const facts = quickPlans(interview, AS_OF, false, TRIAL_YEARS)({ answers, size: 0 })!;
  return { home, routes, advice, facts };
}

/** Each home that differs is named; that too many do is a fault of the one that makes them so. */
function compare(
  tally: Tally,
  seed: number,
  told: PlanFacts,
  whole: PlanFacts,
  mayDiffer: number | null,
): void {
  if (!sameAdvice(told, whole)) {
    met(tally, `home ${seed}: ${inShort(told)}, with the whole file ${inShort(whole)}`);
    met(tally, others);
  }
  if (mayDiffer === null) return;
  const [differ, of] = [tally.spoke[others] ?? 0, tally.spoke[homes]!];
  const tooMany = of >= FEWEST && differ > mayDiffer * of && !sameAdvice(told, whole);
  note(tally, `home ${seed}`, 'of a hundred homes 95 get the advice of the whole file', [
    ...(tooMany ? [`${differ} of ${of} get another`] : []),
  ]);
}

function sameAdvice(told: Bought, whole: Bought): boolean {
  const [a, b] = [told.usd.likely, whole.usd.likely];
  return told.route.kind === whole.route.kind && Math.abs(a - b) <= SAME_PRICE * Math.max(a, b);
}

/** What the talk goes by: one size a kind. */
function quick({ advice: { route } }: Advised): Bought {
  return { route, usd: { likely: route.costUsd.value } };
}

interface Bought {
  readonly route: { readonly kind: RouteKind };
  readonly usd: { readonly likely: number };
}

const inShort = ({ route, usd }: PlanFacts) => `${route.kind} $${Math.round(usd.likely)}`;
