import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import interview from '#compiled/questions.js';
import { askNext, type Next } from '../../src/advice/ask-next';
import { type Bank, bankOf } from '../../src/advice/effect-of-answers';
import { type Ahead, aheadBy } from '../../src/commands/talk/ahead';
import { draftAll } from '../../src/commands/talk/draft-all';
import { type Answer, type Answers, NOT_SURE } from '../../src/interview/answers';
import type { NextStep } from '../../src/interview/next-step';
import type { Question } from '../../src/interview/questions/question';
import { resolve } from '../../src/interview/questions/resolve';
import { parseHome } from '../../src/store/read-home';

export const AS_OF = '2026-11-25';

const demo = ['birch-street', 'mill-lane', 'ridge-road', 'tower-six'];

/** The four demo homes and six more, each with all it could ever tell. */
export function talkHomes(root: string): ReadonlyMap<string, Answers> {
  const texts = [
    ...demo.map((name) => readFileSync(join(root, 'households', `${name}.home.yaml`), 'utf8')),
    ...readFileSync(join(root, 'bench/talk-homes.yaml'), 'utf8').split(/^---$/m),
  ];
  return new Map(
    texts.map((text) => {
      const home = parseHome(text, interview);
      if (!home.ok) throw new Error(JSON.stringify(home.faults));
      return [String(home.answers['home-name']), filled(home.answers)];
    }),
  );
}

/** The same, with "not sure" wherever a question applies and nothing is told. */
export function filled(home: Answers): Answers {
  const known = resolve(interview.questions, home, 'assume');
  const unsure = [...known.keys()].filter((id) => home[id] === undefined);
  return { ...home, ...Object.fromEntries(unsure.map((id) => [id, NOT_SURE])) };
}

/** One question of a talk, with what was known when it was asked. */
export interface Turn {
  readonly before: Answers;
  readonly next: Next;
  /** Processor time to find it, so that a busy machine does not count. */
  readonly ms: number;
}

/** A whole talk, answered from what a home could tell, else "not sure", until nothing more would change what to buy. */
export function talk(bank: Bank, home: Answers): Turn[] {
  const turns: Turn[] = [];
  let answers: Record<string, Answer> = {};
  for (;;) {
    const start = process.cpuUsage();
    const next = askNext(answers, bank);
    const { user, system } = process.cpuUsage(start);
    turns.push({ before: answers, next, ms: (user + system) / 1000 });
    if (next.code === 'enough') return turns;
    answers = { ...answers, [next.questionId]: home[next.questionId] ?? NOT_SURE };
  }
}

/** How fast a question is read, words a minute: a usual silent reader of plain text. */
const WORDS_A_MINUTE = 230;

/** How long a question is read before it is answered: what it asks, its hint, why it is asked, and its lines, ms. */
export function readingMs({ ask, hint, choices = [] }: Question, why: string): number {
  const text = [ask, hint, why, ...choices.map(({ label }) => label)].join(' ');
  return (60_000 * text.split(/\s+/).filter((word) => word !== '').length) / WORDS_A_MINUTE;
}

/**
 * From the last key of an answer to Enter, ms: one key of somebody who types seldom. What moves or thinks in between takes longer.
 * Source: keystroke-level model of Card, Moran and Newell 1980, from memory.
 */
const LAST_KEY_MS = 280;

/**
 * The same talk beside the thread of the screen, with what it works out ahead while each question is read and from the last key
 * before Enter on, and no longer.
 * Processor time from each answer until the sums beside the question and the next question are found, ms; the opening left out.
 */
export function talkAhead(home: Answers): number[] {
  const all = draftAll(null, AS_OF);
  const found: number[] = [];
  let answers: Record<string, Answer> = {};
  for (;;) {
    let next: NextStep | null = null;
    const ms = spent(() => {
      all.draftOf(answers);
      next = all.next(answers);
    });
    const step = next as NextStep | null;
    const opening = interview.opening.some((id) => answers[id] === undefined && id === asked(step));
    if (!opening) found.push(ms);
    if (step?.code !== 'ask') return found;
    const question = interview.questions.find(({ id }) => id === step.questionId)!;
    const ahead = aheadBy(all);
    ahead.begin(all.likelyAfter(answers, question.id));
    takeSteps(ahead, readingMs(question, step.why));
    const answer = home[question.id] ?? NOT_SURE;
    answers = { ...answers, [question.id]: answer };
    // "Not sure" is one key, and nothing is seen of it before.
    if (answer === NOT_SURE) continue;
    ahead.lean(answers);
    takeSteps(ahead, LAST_KEY_MS);
  }
}

const asked = (step: NextStep | null) => (step?.code === 'ask' ? step.questionId : null);

/** Until the time is up; what is not found by then is laid down. */
function takeSteps(ahead: Ahead, ms: number): void {
  let left = ms;
  for (let more = true; more && left > 0; ) {
    left -= spent(() => {
      more = ahead.step();
    });
  }
}

function spent(work: () => void): number {
  const start = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1000;
}

export const bankForTalks = () => bankOf(interview, AS_OF);
