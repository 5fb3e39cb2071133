import { nearWord } from '../../quantity/near-word';
import type { Answers } from '../answers';
import type { Interview, Question } from '../questions/question';
import { offered, relevant } from '../questions/relevant';
import { sayAnswer } from '../say-answer';
import { mustRunChanges } from './must-run';
import { readAnswer } from './read-answer';
import { REFILL, REFILL_DAYS, sayRefill, withoutRefill, withRefill } from './refill';
import type { SizeStep, Tried, TriedThing } from './tried';
import { type Beside, TRIED_AS, TRIED_BESIDE, TRIED_KEYS } from './tried-keys';
import { whatIfWords } from './what-if-words';

export type ReadTried =
  | { readonly ok: true; readonly tried: Tried; readonly things: readonly TriedThing[] }
  | { readonly ok: false; readonly says: string };

type Step =
  | {
      readonly ok: true;
      readonly answers: Answers;
      readonly size?: SizeStep;
      readonly thing: TriedThing;
    }
  | { readonly ok: false; readonly says: string };

/** What to try, from pairs such as "goal=48"; or a sentence that says what is wrong with one. Each value is checked as an answer is. */
export function readTried(
  interview: Interview,
  answers: Answers,
  pairs: readonly string[],
): ReadTried {
  let tried: Tried = { answers, size: 0 };
  const things: TriedThing[] = [];
  const seen = new Set<string>();
  for (const pair of pairs) {
    const at = pair.indexOf('=');
    if (at <= 0) return no(whatIfWords.noPair(pair));
    const key = pair.slice(0, at).trim().toLowerCase();
    const id = Object.hasOwn(TRIED_AS, key) ? TRIED_AS[key]! : key;
    if (seen.has(id) && id !== 'more' && id !== 'less') return no(whatIfWords.twice(key));
    seen.add(id);
    const step = readOne(interview, tried.answers, id, pair.slice(at + 1).trim());
    if (!step.ok) return step;
    tried = { answers: step.answers, size: step.size ?? tried.size };
    things.push(step.thing);
  }
  return { ok: true, tried, things };
}

function readOne(interview: Interview, answers: Answers, id: string, typed: string): Step {
  if (isBeside(id)) return besides[id](interview, answers, typed);
  const question = interview.questions.find((one) => one.id === id);
  if (question === undefined) {
    const near = nearWord(id, [...TRIED_KEYS, ...interview.questions.map((one) => one.id)]);
    return no(whatIfWords.noKey(id, near, TRIED_KEYS));
  }
  if (question.kind === 'name' || question.id === interview.dangers.question) {
    return no(whatIfWords.fixed(question));
  }
  return answered(interview, answers, question, typed);
}

function answered(interview: Interview, answers: Answers, question: Question, typed: string): Step {
  const { id, says } = question;
  const asked = relevant({ interview, short: false }, answers).some((one) => one.id === id);
  if (!asked) return no(whatIfWords.notAsked(question));
  const read = readAnswer(question, typed, offered({ interview }, { answers }, question));
  if (!read.ok) return read;
  const now = sayAnswer(question, answers[id]);
  const then = sayAnswer(question, read.answer);
  return {
    ok: true,
    answers: { ...answers, [id]: read.answer },
    thing: { asks: [id], says, now, then, unusual: read.unusual === true },
  };
}

const isBeside = (id: string): id is Beside => (TRIED_BESIDE as readonly string[]).includes(id);

const besides: Readonly<
  Record<Beside, (interview: Interview, answers: Answers, typed: string) => Step>
> = {
  more: (interview, answers, typed) => loadChanged(interview, answers, typed, 'more'),
  less: (interview, answers, typed) => loadChanged(interview, answers, typed, 'less'),
  size: (_, answers, typed) => sized(answers, typed),
  refill: (interview, answers, typed) => refilled(interview, answers, typed),
};

function loadChanged(
  interview: Interview,
  answers: Answers,
  typed: string,
  way: 'more' | 'less',
): Step {
  const changes = mustRunChanges(interview, answers);
  const small = typed.toLowerCase();
  const found = changes.find(
    ({ choice }) => choice.id === small || choice.label.toLowerCase() === small,
  );
  const question = interview.questions.find(({ id }) => id === 'must-run')!;
  if (found === undefined) {
    const able = changes.filter(({ isIn }) => isIn === (way === 'less'));
    return no(
      whatIfWords.noChoice(
        typed,
        question,
        able.map(({ choice }) => choice.id),
      ),
    );
  }
  const { choice, isIn, asks } = found;
  if (way === 'more' && isIn) return no(whatIfWords.isThere(choice.label));
  if (way === 'less' && !isIn) return no(whatIfWords.isNotThere(choice.label));
  return { ok: true, answers: found.answers, thing: loadThing(asks, choice.label, isIn) };
}

/** One load more, or one less where it is in. */
export function loadThing(asks: string, label: string, isIn: boolean): TriedThing {
  const then = isIn ? whatIfWords.without(label) : whatIfWords.with(label);
  return { asks: [asks], says: whatIfWords.load, now: whatIfWords.asNow, then };
}

const STEPS: Readonly<Record<string, SizeStep>> = { larger: 1, '+1': 1, smaller: -1, '-1': -1 };

function sized(answers: Answers, typed: string): Step {
  const size = STEPS[typed.toLowerCase()];
  return size === undefined
    ? no(whatIfWords.noSize(typed))
    : { ok: true, answers, size, thing: sizeThing(size) };
}

export function sizeThing(size: SizeStep): TriedThing {
  const then = { [-1]: whatIfWords.smaller, 0: whatIfWords.asAdvised, 1: whatIfWords.larger }[size];
  return { asks: [], says: whatIfWords.size, now: whatIfWords.asAdvised, then };
}

function refilled(interview: Interview, answers: Answers, typed: string): Step {
  const days = interview.questions.find(({ id }) => id === REFILL_DAYS)!;
  const now = sayRefill(interview, answers);
  if (/^(no|none|never)$/i.test(typed)) {
    const then = withoutRefill(answers);
    return { ok: true, answers: then, thing: refillThing(now, sayRefill(interview, then)) };
  }
  const read = readAnswer(days, typed, []);
  if (!read.ok) return no(whatIfWords.noRefill(typed, read.says));
  if (typeof read.answer !== 'number') return answered(interview, answers, days, typed);
  const then = withRefill(answers, read.answer);
  return { ok: true, answers: then, thing: refillThing(now, sayRefill(interview, then)) };
}

export const refillThing = (now: string, then: string): TriedThing => ({
  asks: [REFILL, REFILL_DAYS],
  says: whatIfWords.refill,
  now,
  then,
});

const no = (says: string) => ({ ok: false as const, says });
