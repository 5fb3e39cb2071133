import type { Widths } from '../home/answer-figure';
import { climateHours } from '../home/climate-hours';
import { demandOf } from '../home/demand';
import { Facts } from '../home/facts';
import type { Home } from '../home/home';
import { allLoads } from '../home/loads/all-loads';
import type { Answers } from '../interview/answers';
import type { Interview, Question } from '../interview/question';
import { resolve } from '../interview/resolve';
import { sayAnswer } from '../interview/say-answer';

/** Something not known, how much knowing it would change the plan, and how to find out. */
export interface ToFindOut {
  readonly question: string;
  readonly says: string;
  readonly how: string;
  /** A safety answer is missing: advice that rests on it is held back. */
  readonly safety: boolean;
  /** Largest change of the day's energy or of the starting demand, as a share of the likely value. */
  readonly changes: number;
}

/** What is worth finding out: missing safety answers first, then by how much the plan would change. */
export function worthFindingOut(
  interview: Interview,
  answers: Answers,
  home: Home,
  widths: Widths,
): ToFindOut[] {
  const unknown = new Set<string>(home.facts.openIds());
  const open = interview.questions.filter((q) => unknown.has(q.id) && q.id !== 'home-name');
  const found = open.map((q) => ({
    question: q.id,
    says: q.says,
    how: q.find,
    safety: q.safety === true,
    changes: changeOf(interview, answers, home, widths, q),
  }));
  return found
    .filter((one) => one.safety || one.changes >= 0.02 || alwaysMatters.includes(one.question))
    .sort((a, b) => Number(b.safety) - Number(a.safety) || b.changes - a.changes);
}

/** Not energy, yet the plan turns on them. */
const alwaysMatters = [
  'home-zip',
  'main-amps',
  'panel-bus',
  'gas-supply',
  'roof-face',
  'roof-area',
  'bill-kwh',
];

function changeOf(
  interview: Interview,
  answers: Answers,
  home: Home,
  widths: Widths,
  question: Question,
): number {
  const { low, high } = question.unsure;
  if (low === undefined || high === undefined || low === high) return 0;
  const at = (value: number) =>
    weigh(interview, { ...answers, [question.id]: value }, home, widths);
  const [a, b, likely] = [at(low), at(high), at(Number(question.unsure.assume))];
  const spread = (x: number, y: number, of: number) => (of > 0 ? Math.abs(x - y) / of : 0);
  return Math.max(spread(a.kwh, b.kwh, likely.kwh), spread(a.va, b.va, likely.va));
}

function weigh(interview: Interview, answers: Answers, home: Home, widths: Widths) {
  const facts = new Facts(resolve(interview.questions, answers, 'assume'));
  const loads = allLoads({ facts, widths, climate: climateHours(home.site.place.climate) });
  const demand = demandOf(
    loads.filter((load) => load.rank === 'must'),
    home.goalSeasons,
  );
  const kwh = Math.max(...home.goalSeasons.map((season) => demand.kwhPerDay[season].value));
  return { kwh, va: demand.startVa.value };
}

/** What was assumed for an open question, in words. */
export function sayAssumed(question: Question): string {
  const { assume } = question.unsure;
  return assume === null ? 'left open' : sayAnswer(question, assume);
}
