import { type Answer, type Answers, NOT_SURE } from '../../src/interview/answers';
import { holds } from '../../src/interview/questions/holds';
import type { Condition, Interview, Question } from '../../src/interview/questions/question';
import { type Known, resolve } from '../../src/interview/questions/resolve';

/** These answers, changed until this question is asked; null where the changes contradict each other. */
export function homeAsked(
  interview: Interview,
  answers: Answers,
  question: Question,
): Answers | null {
  let now = { ...answers };
  for (let round = 0; round < 8; round++) {
    const known = resolve(interview.questions, now, 'assume');
    if (known.has(question.id)) return now;
    const before = JSON.stringify(now);
    now = meet(interview, now, question);
    if (JSON.stringify(now) === before) return null;
  }
  return null;
}

/** Every question on the way to this one, answered as its condition asks. */
function meet(interview: Interview, answers: Answers, question: Question): Answers {
  if (question.when === undefined) return answers;
  return meetCondition(interview, answers, question.when);
}

function meetCondition(interview: Interview, answers: Answers, when: Condition): Answers {
  if ('all' in when) return when.all.reduce((now, c) => meetCondition(interview, now, c), answers);
  if ('any' in when) return meetCondition(interview, answers, when.any[0]!);
  const asked = interview.questions.find((q) => q.id === when.q)!;
  const on = meet(interview, answers, asked);
  const answer = answerThat(asked, when, on[asked.id]);
  return answer === undefined ? on : { ...on, [asked.id]: answer };
}

function answerThat(asked: Question, when: Condition, now: Answer | undefined) {
  const one = (of: string | readonly string[]) => (typeof of === 'string' ? of : of[0]!);
  const others = (not: string | readonly string[]) =>
    (asked.choices ?? []).map((c) => c.id).filter((id) => ![not].flat().includes(id));
  if ('unsure' in when) {
    if (when.unsure) return NOT_SURE;
    return now === undefined || now === NOT_SURE ? middleOf(asked) : now;
  }
  if ('is' in when) return [when.is].flat().includes(now as string) ? now : one(when.is);
  if ('isNot' in when)
    return others(when.isNot).includes(now as string) ? now : others(when.isNot)[0];
  if ('has' in when) {
    const list = Array.isArray(now) ? now : [];
    const alone = (asked.choices ?? []).filter((c) => c.alone).map((c) => c.id);
    const kept = list.filter((id) => !alone.includes(id as string));
    return [...new Set([...kept, one(when.has)])] as string[];
  }
  if ('hasNot' in when) {
    const list = Array.isArray(now)
      ? now.filter((id) => ![when.hasNot].flat().includes(id as string))
      : [];
    return (list.length > 0 ? list : [others(when.hasNot)[0]!]) as string[];
  }
  if ('atLeast' in when) return Math.max(when.atLeast, typeof now === 'number' ? now : 0);
  if ('below' in when) return Math.min(when.below - 1, typeof now === 'number' ? now : 0);
  return now;
}

/** Answers to this question that differ from each other as far as they can. */
export function waysToAnswer(question: Question): Answer[] {
  const ids = (question.choices ?? []).map((c) => c.id);
  if (question.kind === 'choice') return ids;
  if (question.kind === 'choices') return ids.map((id) => [id]);
  if (question.kind === 'zip') return ['94110', '55731'];
  if (question.kind === 'name') return ['one-home', 'another-home'];
  if (question.kind === 'text') return [NOT_SURE, 'No generator may run outdoors.'];
  const [low, high] = question.possible!;
  const [usualLow, usualHigh] = question.usual ?? question.possible!;
  if (question.kind === 'numbers') {
    const even = Math.round((usualLow + usualHigh) / 2);
    const all = (n: number) => Array.from({ length: question.count! }, () => n);
    return [all(even), all(Math.round(usualLow + 1)), all(Math.round(high))].map((list) =>
      list.map((n, i) => n + (i % 2)),
    );
  }
  return [usualLow, usualHigh, (usualLow + usualHigh) / 2, low, high];
}

/** The same home with every other question answered that applies: choices as assumed, numbers in the middle. */
export function filled(interview: Interview, answers: Answers): Answers {
  const now = { ...answers };
  // Questions rest on earlier ones alone, so one walk settles all.
  const known = new Map<string, Known>();
  for (const { id, when, unsure, ...rest } of interview.questions) {
    if (when !== undefined && !holds(when, known)) continue;
    if (now[id] === undefined || now[id] === NOT_SURE) now[id] = middleOf({ id, unsure, ...rest });
    const answer = now[id];
    known.set(
      id,
      answer === NOT_SURE
        ? { value: unsure.assume, how: 'unsure' }
        : { value: answer, how: 'told' },
    );
  }
  return now;
}

function middleOf(question: Question): Answer {
  const { assume } = question.unsure;
  if (assume !== null) return assume;
  const ways = waysToAnswer(question);
  return ways[Math.floor(ways.length / 2)]!;
}
