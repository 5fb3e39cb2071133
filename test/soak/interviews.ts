import interview from '#compiled/questions.js';
import type { Answers } from '../../src/interview/answers';
import { begin } from '../../src/interview/begin';
import type { Event } from '../../src/interview/event';
import { questionAt } from '../../src/interview/questions/relevant';
import { resolve } from '../../src/interview/questions/resolve';
import { reduce } from '../../src/interview/reduce';
import { rowsOf } from '../../src/interview/rows';
import type { Context, State } from '../../src/interview/state';
import { draftMaker } from '../../src/plan/draft/draft-of';
import { seeded } from '../fixtures/random-problem';
import { answerTo } from '../random-answer';
import { randomHome } from '../random-home';
import { BROKEN } from './never/papers';
import { poolHome } from './pool-home';

const context: Context = {
  interview,
  short: false,
  nameProblem: () => null,
  spareName: () => 'home-1',
};
const draftOf = draftMaker(interview);

/** Steps after which a household would have given up, and after which one that goes on stops again. */
const STEPS = 600;
const FEW = 16;
/** Of so many interviews one is led from the first question to the end; the others go on with a home begun before. */
const WHOLE = 10;
/** Of so many steps one is followed by the sums beside the question. */
const WEIGHED = 60;

/** How an interview by chance went: what it left, in how many steps, and what was wrong on the way. */
export interface Walked {
  readonly answers: Answers;
  readonly steps: number;
  readonly ended: boolean;
  readonly wrong: readonly string[];
}

/**
 * An interview as somebody restless would lead it: mostly answers, now and then not sure, back, help, something typed
 * that is none, the list and a change in it. Now and then the sums beside the question are made.
 */
export function randomInterview(seed: number): Walked {
  const random = seeded(seed ^ 0x5eed);
  const wrong: string[] = [];
  const whole = seed % WHOLE === 0;
  let state = begin(context, whole ? {} : begunHome(seed, random));
  const most = whole ? STEPS : 1 + Math.floor(FEW * random());
  let steps = 0;
  while (state.ending === null && steps < most && wrong.length === 0) {
    const event = eventFor(state, random);
    const next = reduce(context, state, event);
    const faults = wrongWith(state, next);
    if (random() * WEIGHED < 1) faults.push(...wrongSums(next.answers));
    wrong.push(...faults.map((says) => `step ${steps}, ${state.at}: ${says}`));
    state = next;
    steps++;
  }
  return { answers: state.answers, steps, ended: state.ending !== null, wrong };
}

function eventFor(state: State, random: () => number): Event {
  const question = questionAt(context, state.at);
  const chance = random();
  if (state.view !== 'ask') return eventOnRows(state, random);
  if (chance < 0.06) return { type: 'act', act: 'not-sure' };
  if (chance < 0.1) return { type: 'act', act: 'back' };
  if (chance < 0.11) return { type: 'act', act: 'help' };
  if (chance < 0.12 && state.answers['home-name'] !== undefined)
    return { type: 'act', act: 'draft' };
  if (chance < 0.14 && question.choices === undefined) return { type: 'typed', text: '12 apples' };
  const known = resolve(interview.questions, state.answers, 'assume');
  const draw = { random, known: new Map(known), commonShare: 0.5 };
  return { type: 'answer', answer: answerTo(question, draw) };
}

/** One of the lines on the screen but those that end the sitting; the list is left by writing the plan or by a change. */
function eventOnRows(state: State, random: () => number): Event {
  const rows = rowsOf(context, state).filter(
    (row) => row.kind !== 'act' || !['stop', 'stop-now', 'read'].includes(row.act),
  );
  const write = rows.find((row) => row.kind === 'act' && row.act === 'write');
  const row =
    write !== undefined && random() < 0.3 ? write : rows[Math.floor(random() * rows.length)]!;
  if (row.kind === 'act') return { type: 'act', act: row.act };
  return row.kind === 'answer' ? { type: 'open', question: row.id } : { type: 'act', act: 'help' };
}

/** The first answers of a home, as told at an earlier sitting. */
function begunHome(seed: number, random: () => number): Answers {
  const told = Object.entries(seed % 2 === 0 ? poolHome(seed) : randomHome(seed));
  return Object.fromEntries(told.slice(0, 2 + Math.floor(told.length * random())));
}

/** No answer but the one on the screen changes, and none is lost. */
function wrongWith(before: State, after: State): string[] {
  const ids = new Set([...Object.keys(before.answers), ...Object.keys(after.answers)]);
  const moved = [...ids].filter(
    (id) => before.answers[id] !== after.answers[id] && id !== before.at,
  );
  const lost = Object.keys(before.answers).filter((id) => after.answers[id] === undefined);
  const question = interview.questions.some((one) => one.id === after.at);
  return [
    ...moved.map((id) => `${id} changed unasked`),
    ...lost.map((id) => `${id} was lost`),
    ...(question ? [] : [`no question is called ${after.at}`]),
  ];
}

/** The sums beside the question are sound. */
function wrongSums(answers: Answers): string[] {
  const sums = JSON.stringify(draftOf(answers), (key, value) =>
    key !== 'source' && typeof value === 'number' && !Number.isFinite(value) ? 'NaN' : value,
  );
  return BROKEN.test(sums) ? [`broken sums: ${sums.slice(0, 200)}`] : [];
}
