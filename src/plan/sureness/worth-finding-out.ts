import type { Advice } from '../../advice/advice';
import { couldForbid } from '../../advice/could-forbid';
import { type Bank, CHANGES_NOTHING, type Effect, effectOf } from '../../advice/effect-of-answers';
import { likeliestFirst } from '../../advice/likeliest-first';
import { type WhyNow, whyNow } from '../../advice/why-now';
import type { Home } from '../../home/home';
import type { Answers } from '../../interview/answers';
import type { RouteKind } from '../../kinds/route-kind';
import type { Route } from '../../routes/route';
import { onlyUnknown } from '../../routes/stops/stop';
import type { Finding } from '../../rules/rule';

/** Something not known that touches the route advised or those beside it, what it would decide, and how to find out. */
export interface ToFindOut {
  readonly question: string;
  readonly says: string;
  readonly how: string;
  /** An answer could close one of these routes, or a caution of theirs that can kill or injure stands for want of it. */
  readonly safety: boolean;
  /** Mean change of the advice over the answers it could get, in the one measure of `advice/change.ts`. */
  readonly changes: number;
  /** What the answer would decide, as a code; null: a caution alone hangs on it. */
  readonly decides: WhyNow | null;
}

/** What a plan knows when it looks for what is worth finding out. */
export interface SoFar {
  /** What answers are tried with. */
  readonly bank: Bank;
  readonly answers: Answers;
  readonly home: Home;
  readonly advice: Pick<Advice, 'route' | 'beside'>;
  readonly cautions: readonly Finding[];
}

/** How many questions are tried, the likeliest to change anything first: each costs some runs of the advice. */
const TRIED = 10;
/** A caution this grave that stands for want of an answer makes the answer worth finding. */
const GRAVE = 4;

/**
 * What is worth finding out: first what could close a route on the table, or what a grave caution waits for; then by how
 * much the answer would change the route advised or its neighbors. What touches none of them is left out.
 */
export function worthFindingOut(soFar: SoFar): ToFindOut[] {
  const { bank, answers, home } = soFar;
  const unknown = new Set<string>(home.facts.openIds());
  const open = bank.interview.questions.filter(
    (q) => unknown.has(q.id) && q.id !== 'home-name' && q.optional !== true,
  );
  if (open.length === 0) return [];
  const now = bank.trialOf(answers);
  const table = onTheTable(soFar, now.routes);
  const waits = new Set<string | undefined>(
    soFar.cautions.filter((one) => one.careful && one.severity >= GRAVE).map(({ asks }) => asks),
  );
  const tried = new Set(
    likeliestFirst(open)
      .slice(0, TRIED)
      .map(({ id }) => id),
  );
  const found = open.flatMap((question): ToFindOut[] => {
    const { id, says, find } = question;
    const effect = tried.has(id) ? effectOf(answers, bank, question) : null;
    const forbids = effect === null ? [] : couldForbid(effect, table);
    const safety = forbids.length > 0 || (question.safety === true && waits.has(id));
    const changes = effect === null ? 0 : Math.max(effect.ifTold, besideChange(effect));
    if (!safety && changes < CHANGES_NOTHING) return [];
    const why = effect === null || effect.ifTold < CHANGES_NOTHING ? null : whyNow(now, effect);
    return [
      { question: id, says, how: find, safety, changes, decides: decidesOf(soFar, why, forbids) },
    ];
  });
  return found.sort((a, b) => Number(b.safety) - Number(a.safety) || b.changes - a.changes);
}

/** Advised, beside it, or closed only for want of an answer. */
function onTheTable({ advice }: SoFar, routes: readonly Route[]): RouteKind[] {
  const possible = routes.filter(({ stops }) => onlyUnknown(stops));
  return [advice.route, ...advice.beside, ...possible].map(({ kind }) => kind);
}

/** A neighbor that is closed or opened counts a quarter, as in the measure. */
const besideChange = ({ tried }: Effect): number =>
  tried.reduce(
    (sum, { share, change }) => sum + share * 0.25 * Math.min(1, change.turned.length),
    0,
  );

/** Never of a route that this plan does not advise: the quick weighing of one size may have another in front. */
function decidesOf(
  { advice }: SoFar,
  why: WhyNow | null,
  forbids: readonly RouteKind[],
): WhyNow | null {
  const others = forbids.length > 0 ? ({ code: 'could-forbid', routes: forbids } as const) : null;
  if (why === null) return others;
  if (why.code === 'closes-route' && why.route !== advice.route.kind) return others;
  if (why.code === 'turns-route' && why.from !== advice.route.kind) return others;
  return why;
}
