import { type Answer, type Answers, NOT_SURE } from '../answers';
import type { Interview, Question } from '../questions/question';
import { offered, relevant } from '../questions/relevant';
import { sayAnswer } from '../say-answer';
import { mustRunChanges } from './must-run';
import { REFILL, REFILL_DAYS, sayRefill } from './refill';
import type { SizeStep } from './tried';
import { whatIfWords } from './what-if-words';

export type KnobId = 'goal' | 'season' | 'budget' | 'load' | 'size' | 'generator-place' | 'refill';

/** One place of a knob: what it reads, and what it makes of the answers. */
export interface Place {
  readonly said: string;
  readonly changes: Answers;
  readonly size: SizeStep;
  /** Questions that keeping it asks. */
  readonly asks: readonly string[];
}

/** Something that can be moved to see what the plan would be. */
export interface Knob {
  readonly id: KnobId;
  readonly says: string;
  readonly places: readonly Place[];
  /** The place of the answers as they are. */
  readonly now: number;
}

/** Steps that people think in: half a day to two weeks. */
const GOAL_HOURS = [6, 12, 24, 36, 48, 72, 96, 120, 168, 240, 336];
const BUDGET_USD = [
  0, 150, 300, 600, 1000, 1500, 2000, 3000, 5000, 7500, 10000, 15000, 20000, 30000, 50000,
];
const REFILL_AFTER_DAYS = [1, 2, 3, 5, 7];

/** What can be moved in this home, in the order in which it stands on the screen. */
export function knobsOf(interview: Interview, answers: Answers): Knob[] {
  const asked = relevant({ interview, short: false }, answers);
  const withQuestion = (id: string, make: (question: Question) => Knob): Knob[] => {
    const question = asked.find((one) => one.id === id);
    return question === undefined ? [] : [make(question)];
  };
  return [
    ...withQuestion('goal-hours', (one) => numberKnob('goal', one, answers, GOAL_HOURS)),
    ...withQuestion('goal-season', (one) => choiceKnob('season', interview, one, answers)),
    ...withQuestion('budget-now', (one) => numberKnob('budget', one, answers, BUDGET_USD)),
    ...loadKnob(interview, answers),
    sizeKnob(),
    ...withQuestion('engine-place', (one) =>
      choiceKnob('generator-place', interview, one, answers),
    ),
    ...withQuestion(REFILL, () => refillKnob(interview, answers)),
  ];
}

/** Numbers from small to large with the one told among them; behind them "not sure". */
function numberKnob(id: KnobId, question: Question, answers: Answers, steps: number[]): Knob {
  const told = answers[question.id];
  const [low, high] = question.possible!;
  const own = typeof told === 'number' ? [told] : [];
  const numbers = [...new Set([...steps, ...own])]
    .filter((step) => step >= low && step <= high)
    .sort((a, b) => a - b);
  const values: Answer[] = [...numbers, NOT_SURE];
  const now = typeof told === 'number' ? numbers.indexOf(told) : numbers.length;
  return { id, says: question.says, places: places(question, values), now };
}

function choiceKnob(id: KnobId, interview: Interview, question: Question, answers: Answers): Knob {
  const told = answers[question.id];
  const ids = offered({ interview }, { answers }, question).map((choice) => choice.id);
  const known = typeof told === 'string' && ids.includes(told);
  const values: Answer[] = known ? ids : [NOT_SURE, ...ids];
  const now = known ? ids.indexOf(told) : 0;
  return { id, says: question.says, places: places(question, values), now };
}

const places = (question: Question, values: readonly Answer[]): Place[] =>
  values.map((value) => ({
    said: sayAnswer(question, value),
    changes: { [question.id]: value },
    size: 0,
    asks: [question.id],
  }));

/** As it is, then one load less, then one more. */
function loadKnob(interview: Interview, answers: Answers): Knob[] {
  const changes = mustRunChanges(interview, answers);
  if (changes.length === 0) return [];
  const moved = [...changes].sort((a, b) => Number(b.isIn) - Number(a.isIn));
  const now: Place = { said: whatIfWords.asNow, changes: {}, size: 0, asks: [] };
  return [
    {
      id: 'load',
      says: whatIfWords.load,
      now: 0,
      places: [
        now,
        ...moved.map(({ choice, isIn, asks, answers: then }) => ({
          said: isIn ? whatIfWords.without(choice.label) : whatIfWords.with(choice.label),
          changes: { [asks]: then[asks]! },
          size: 0 as const,
          asks: [asks],
        })),
      ],
    },
  ];
}

function sizeKnob(): Knob {
  const at = (size: SizeStep, said: string): Place => ({ said, changes: {}, size, asks: [] });
  const { smaller, asAdvised, larger, size } = whatIfWords;
  return {
    id: 'size',
    says: size,
    now: 1,
    places: [at(-1, smaller), at(0, asAdvised), at(1, larger)],
  };
}

function refillKnob(interview: Interview, answers: Answers): Knob {
  const told = answers[REFILL_DAYS];
  const expects = answers[REFILL] === 'sure' || answers[REFILL] === 'likely';
  const assumed = interview.questions.find(({ id }) => id === REFILL_DAYS)!.unsure.assume as number;
  const taken = typeof told === 'number' ? told : assumed;
  const own = expects ? [taken] : [];
  const days = [...new Set([...REFILL_AFTER_DAYS, ...own])].sort((a, b) => a - b);
  const likely: Answer = answers[REFILL] === 'sure' ? 'sure' : 'likely';
  const changes: Answers[] = [
    { [REFILL]: 'no' },
    ...days.map((one) => ({ [REFILL]: likely, [REFILL_DAYS]: one })),
  ];
  return {
    id: 'refill',
    says: whatIfWords.refill,
    now: expects ? 1 + days.indexOf(taken) : 0,
    places: changes.map((change) => ({
      said: sayRefill(interview, { ...answers, ...change }),
      changes: change,
      size: 0,
      asks: [REFILL, REFILL_DAYS],
    })),
  };
}
