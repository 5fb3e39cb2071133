import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { leftWords } from '../../src/faces/place-words';
import type { Answer } from '../../src/interview/answers';
import { begin } from '../../src/interview/begin';
import type { NextStep } from '../../src/interview/next-step';
import { questionAt, relevant, stillOpen } from '../../src/interview/questions/relevant';
import { resolve } from '../../src/interview/questions/resolve';
import { reduce } from '../../src/interview/reduce';
import type { Context, State } from '../../src/interview/state';
import { answerTo, type Random } from '../random-answer';

const context: Context = {
  interview,
  short: false,
  guided: true,
  nameProblem: () => null,
  spareName: () => 'my-home',
};

/** Numbers as if by chance, the same in every run. */
function chance(seed: number): Random {
  let now = seed * 2654435761;
  return () => {
    now = (Math.imul(now, 1664525) + 1013904223) >>> 0;
    return now / 2 ** 32;
  };
}

/** How many are left as it is said, and of what; null where no count is said. */
function said(state: State): { of: string; left: number } | null {
  if (state.view !== 'ask') return null;
  const words = leftWords(context, state);
  if (words === 'the last one before a first plan') return { of: 'about to a first plan', left: 0 };
  const read = /^(about|at least) (\d+) more(.*)$/.exec(words);
  return read === null ? null : { of: `${read[1]}${read[3]}`, left: Number(read[2]) };
}

/** The question looked for after the opening: any that is open, and a count that goes up as often as down; now and then enough. */
function found(state: State, random: Random): NextStep {
  const open = stillOpen(context, state.answers);
  if (open.length < 3 || random() < 0.05)
    return { code: 'enough', sharpen: open.length, again: [] };
  const asked = relevant(context, state.answers).find(({ id }) => state.answers[id] === undefined)!;
  const left = 1 + Math.floor(random() * open.length);
  return { code: 'ask', questionId: asked.id, why: '', left };
}

type Move = 'answer' | 'not-sure' | 'back' | 'change';

function moved(state: State, random: Random): { move: Move; after: State } {
  const chosen = random();
  const at = questionAt(context, state.at);
  if (chosen < 0.2 && state.trail.length > 0)
    return { move: 'back', after: reduce(context, state, { type: 'act', act: 'back' }) };
  if (chosen < 0.4 && at.kind !== 'name')
    return { move: 'not-sure', after: reduce(context, state, { type: 'act', act: 'not-sure' }) };
  if (chosen < 0.45) {
    const given = Object.keys(state.answers).filter((id) => id !== 'now-danger');
    const opened = given[Math.floor(random() * given.length)];
    if (opened !== undefined)
      return { move: 'change', after: reduce(context, state, { type: 'open', question: opened }) };
  }
  const known = resolve(interview.questions, state.answers, 'leave');
  const answer: Answer =
    at.id === interview.dangers.question
      ? ['none']
      : answerTo(at, { random, known: new Map(known), commonShare: 0.5 });
  return { move: 'answer', after: reduce(context, state, { type: 'answer', answer }) };
}

/** From any view but a question to one: on, or the first open one of the list of answers. */
function toQuestion(state: State, random: Random): State {
  switch (state.view) {
    case 'wait':
      return reduce(context, state, { type: 'next', next: found(state, random) });
    case 'first-plan':
      return reduce(context, state, { type: 'act', act: 'more' });
    case 'enough':
      return reduce(context, state, { type: 'act', act: 'rest' });
    case 'act-now':
      return reduce(context, state, { type: 'act', act: 'go-on' });
    case 'check': {
      const open = relevant(context, state.answers).find(
        ({ id }) => state.answers[id] === undefined,
      );
      if (open !== undefined) return reduce(context, state, { type: 'open', question: open.id });
      return reduce(context, state, { type: 'key', key: { name: 'escape' } });
    }
    default:
      return reduce(context, state, { type: 'key', key: { name: 'escape' } });
  }
}

/** Every question answered, or open as it is counted. */
function countedIn({ answers }: State): Set<string> {
  return new Set([...stillOpen(context, answers).map(({ id }) => id), ...Object.keys(answers)]);
}

/** A count that was said, the one of its kind said before it, and what was done between. */
interface Pair {
  readonly of: string;
  readonly moves: readonly Move[];
  readonly from: string;
  readonly to: string;
  readonly before: number;
  readonly after: number;
  /** What the answers since then brought, of what this count is of. */
  readonly brought: readonly string[];
  /** The question it was said at was left without an answer, and is ahead again. */
  readonly again: boolean;
}

function pairOf(before: State, after: State, moves: readonly Move[]): Pair | null {
  const [was, now] = [said(before), said(after)];
  if (was === null || now === null || was.of !== now.of) return null;
  const known = countedIn(before);
  const ofOpening = now.of.includes('first plan');
  const brought = [...countedIn(after)].filter(
    (id) => !known.has(id) && (!ofOpening || interview.opening.includes(id)),
  );
  const again = before.at !== after.at && after.answers[before.at] === undefined;
  const { of } = now;
  const counts = { before: was.left, after: now.left };
  return { of, moves, from: before.at, to: after.at, ...counts, brought, again };
}

/** A sitting of so many moves; a count is held against the last that was said, also where none was said between. */
function walk(seed: number): Pair[] {
  const random = chance(seed);
  const pairs: Pair[] = [];
  let state = begin(context, {});
  let last = state;
  let moves: Move[] = [];
  for (let i = 0; i < 120; i++) {
    const { move, after } = moved(state, random);
    state = after;
    moves = [...moves, move];
    for (let tries = 0; state.view !== 'ask' && tries < 4; tries++) {
      state = toQuestion(state, random);
    }
    if (said(state) === null) continue;
    const pair = pairOf(last, state, moves);
    if (pair !== null) pairs.push(pair);
    last = state;
    moves = [];
  }
  return pairs;
}

const pairs = Array.from({ length: 30 }, (_, i) => walk(i + 1)).flat();

test('the walks say every kind of count, and go on, back and into the list', () => {
  const kinds = ['about to a first plan', 'at least', 'about'];
  expect([...new Set(pairs.map(({ of }) => of))].sort()).toEqual(kinds.sort());
  const all: Move[] = ['answer', 'back', 'change', 'not-sure'];
  expect([...new Set(pairs.flatMap(({ moves }) => moves))].sort()).toEqual(all);
});

test('the count rises by no more than answers bring, and after Esc by the one gone back from', () => {
  const allowed = ({ before, brought, again }: Pair) => before + brought.length + (again ? 1 : 0);
  expect(pairs.filter((one) => one.after > allowed(one))).toEqual([]);
});

test('in the opening only a health device told brings more questions to be counted', () => {
  const rose = pairs.filter(
    ({ of, before, after, again }) => of.includes('first plan') && after > before && !again,
  );
  expect(new Set(rose.map(({ from }) => from))).toEqual(new Set(['medical-devices']));
});
