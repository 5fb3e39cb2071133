import interview from '#compiled/questions.js';
import { planPapers } from '../../src/commands/plan-papers';
import type { Answers } from '../../src/interview/answers';
import { planMarkdown } from '../../src/papers/household/to-markdown';
import { planData } from '../../src/papers/plan-file/plan-data';
import type { PlanData } from '../../src/papers/plan-file/plan-schema';
import { electricalOf } from '../../src/plan/electrical/electrical';
import { makePlan } from '../../src/plan/make-plan';
import type { Plan } from '../../src/plan/plan';
import { onceMade } from '../../src/quantity/once-made';
import type { Route } from '../../src/routes/route';
import type { Paper } from '../../src/store/write-papers';
import { english } from '../../src/words/en';

/** What is held of every plan does not hang on the odds, so a few drawn years of weather will do. */
const YEARS = 3;
const AS_OF = '2026-11-25';

/** A whole plan and its papers, as a household would get them. */
export interface Seen {
  readonly answers: Answers;
  readonly plan: Plan;
  readonly data: PlanData;
  /** Every paper as written, the plan file first. */
  readonly papers: readonly Paper[];
  /** The plan file as written. */
  readonly file: string;
  /** The summary: its first page, and all of it. */
  readonly front: string;
  readonly text: string;
}

/** What nobody looks at is not written. */
export function seenOf(answers: Answers): Seen {
  const plan = makePlan(interview, answers, AS_OF, YEARS);
  const data = onceMade(() => planData(plan, english));
  const text = onceMade(() => planMarkdown(plan, english));
  const papers = onceMade(() => planPapers(plan, 'oak', english));
  return {
    answers,
    plan,
    get data() {
      return data();
    },
    get text() {
      return text();
    },
    get papers() {
      return papers();
    },
    get file() {
      return papers()[0]!.text;
    },
    get front() {
      return text().split('\n# The details\n')[0]!;
    },
  };
}

/** A home and its routes, as far as the advice. */
export interface Weighed {
  readonly plan: Pick<Plan, 'home' | 'routes'>;
}

/** The routes that could be bought. */
export const openRoutes = ({ plan }: Weighed) =>
  plan.routes.filter((route) => route.verdict !== 'cannot');

/** The electrical half as it would be were this route advised. */
export const electricalFor = ({ plan, answers }: Seen, route: Route) =>
  electricalOf(plan.home, answers, { route, routes: plan.routes });

/**
 * Something that must be so in every plan: gives what is wrong, nothing where all is well, or null where it says nothing
 * about this plan.
 */
export type Held = (seen: Seen) => string[] | null;

/** The same of a home and its routes alone. */
export type HeldOfRoutes = (weighed: Weighed) => string[] | null;

/** The kinds or ids of which something is wrong, as one fault; none where the list is empty. */
export const faultsIf = (list: readonly string[], says: string): string[] =>
  list.length > 0 ? [`${says}: ${list.join(', ')}`] : [];
