import type { QuestionId } from '#compiled/question-ids.js';
import type { Home } from '../../home/home';
import { findings } from '../../rules/find';
import type { Finding } from '../../rules/rule';
import { ruleOf } from '../../tables/rules';
import type { Plan } from '../plan';
import { anyHomeCautions } from './any-home';
import { outOfSeason } from './out-of-season';

/** An open question and the gravest caution that hangs on it. */
export interface ToSettle {
  readonly says: string;
  readonly ask: string;
  readonly gravest: Finding;
}

/** The cautions of a plan in the order in which they matter to this home; each is in one group. */
export interface CautionGroups {
  /** Told by the household, and wrong as it is. */
  readonly wrong: readonly Finding[];
  /** What else follows from the answers. */
  readonly known: readonly Finding[];
  /** The same, of the season the plan is not for. */
  readonly otherSeason: readonly Finding[];
  /** Shown though an answer is missing: deadly ones of the routes laid out and of a device, and those any home needs. */
  readonly unasked: readonly Finding[];
  /** Facts of the house nobody told: each question once. */
  readonly settle: readonly ToSettle[];
  /** For want of something no one open question would settle. */
  readonly unsettled: readonly Finding[];
}

type Of = Pick<Plan, 'cautions' | 'home' | 'advice' | 'assumptions'>;

/** So many cautions at most where hardly anything is told, those of the routes not counted. Our judgement. */
const MOST = 15;

export function cautionGroups(plan: Of): CautionGroups {
  const { cautions, home } = plan;
  const told = cautions.filter((one) => !one.careful);
  const wrong = told.filter((one) => ruleOf(one.id).wrongAsItIs);
  const rest = told.filter((one) => !wrong.includes(one));
  const otherSeason = rest.filter((one) => outOfSeason(home, one.id));
  const brought = deadlyOfRoutes(plan);
  const room = MOST - told.filter((one) => !brought.has(one.id)).length;
  const open = cautions.filter((one) => one.careful);
  const grave = open.filter((one) => brought.has(one.id) || ofDevice(home, one));
  const anyHome = anyHomeCautions
    .flatMap((id) => open.filter((one) => one.id === id && !grave.includes(one)))
    .slice(0, Math.max(0, room));
  const left = open.filter((one) => !grave.includes(one) && !anyHome.includes(one));
  return {
    wrong,
    known: rest.filter((one) => !otherSeason.includes(one)),
    otherSeason,
    unasked: [...grave, ...anyHome],
    ...byQuestion(plan, left),
  };
}

/** What nobody told of a device somebody is known to live by: too grave for a question and its first sentence. */
const ofDevice = ({ lifeSupport }: Home, { severity, asks }: Finding): boolean =>
  lifeSupport === 'yes' && severity === 5 && asks !== undefined && deviceQuestions.has(asks);

const deviceQuestions: ReadonlySet<string> = new Set<QuestionId>([
  'device-safe-hours',
  'device-battery-hours',
  'device-battery-tested',
  'second-source',
]);

/** What can kill on the routes laid out and would not be said without them. */
function deadlyOfRoutes({ home, advice, cautions }: Of): ReadonlySet<string> {
  const without = new Set(findings(home, []).map((one) => one.id));
  const kinds = [advice.route, ...advice.beside].map((route) => route.kind);
  const own = new Set(findings(home, kinds).map((one) => one.id));
  return new Set(
    cautions
      .filter(({ id, severity }) => severity === 5 && own.has(id) && !without.has(id))
      .map((one) => one.id),
  );
}

/** The cautions are gravest first, so the first of a question is the gravest. */
function byQuestion({ assumptions }: Of, cautions: readonly Finding[]) {
  const settle = new Map<string, ToSettle>();
  const unsettled: Finding[] = [];
  for (const caution of cautions) {
    const open = assumptions.find(
      (one) => one.code === 'open-answer' && one.question === caution.asks,
    );
    if (open?.code !== 'open-answer') unsettled.push(caution);
    else if (!settle.has(open.question))
      settle.set(open.question, { says: open.says, ask: open.ask, gravest: caution });
  }
  return { settle: [...settle.values()], unsettled };
}
