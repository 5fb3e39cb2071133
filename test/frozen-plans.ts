import interview from '#compiled/questions.js';
import { type Bank, bankOf } from '../src/advice/effect-of-answers';
import type { Answers } from '../src/interview/answers';
import type { Interview } from '../src/interview/questions/question';
import { planAsAsked } from '../src/plan/make-plan';
import type { Plan } from '../src/plan/plan';
import { LastUsed } from '../src/quantity/last-used';

/** So many are kept, for a plan holds the weather it was counted in: a process that is full is swept again and again. */
const plans = new LastUsed<Plan>(48);

/**
 * The plan of these answers, made once in a test process, its slowest parts as they are asked for, and frozen through and through: a test that
 * changed it would fail at once instead of spoiling the next file. A test of determinism calls `makePlan` itself.
 * @param asOf the day ages are counted from, YYYY-MM-DD
 * @param years drawn years of weather; fewer where a test does not look at odds
 */
export function frozenPlan(answers: Answers, asOf: string, years = 100): Plan {
  const key = JSON.stringify([Object.entries(answers).sort(), asOf, years]);
  const found = plans.get(key);
  if (found !== undefined) return found;
  const plan = deepFrozen(planAsAsked(interview, answers, asOf, years, null, sharedBank));
  plans.set(key, plan);
  return plan;
}

/**
 * The same value, with every object below it frozen, that of a part worked out when it is asked for then. Typed arrays
 * cannot be frozen and stay as they are.
 */
function deepFrozen<T>(value: T): T {
  if (typeof value !== 'object' || value === null || ArrayBuffer.isView(value)) return value;
  if (Object.isFrozen(value)) return value;
  if (Array.isArray(value)) {
    value.forEach(deepFrozen);
    return Object.freeze(value);
  }
  for (const key of Object.keys(value)) {
    const part = Object.getOwnPropertyDescriptor(value, key)!;
    const { get } = part;
    if (get === undefined) deepFrozen(part.value);
    else Object.defineProperty(value, key, { ...part, get: () => deepFrozen(get.call(value)) });
  }
  return Object.freeze(value);
}

/** A bank serves so many plans, for the same reason. */
const PLANS_A_BANK = 48;

const banks = new Map<string, { readonly bank: Bank; plans: number }>();

/** What single answers are tried with, one for many plans of a day: homes of one test are much alike. */
export function sharedBank(of: Interview, asOf: string): Bank {
  if (of !== interview) return bankOf(of, asOf);
  const known = banks.get(asOf);
  const shared =
    known === undefined || known.plans >= PLANS_A_BANK
      ? { bank: bankOf(of, asOf), plans: 0 }
      : known;
  shared.plans += 1;
  banks.set(asOf, shared);
  return shared.bank;
}
