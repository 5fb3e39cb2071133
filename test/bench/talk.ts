import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import interview from '#compiled/questions.js';
import { askNext, type Next } from '../../src/advice/ask-next';
import { type Bank, bankOf } from '../../src/advice/effect-of-answers';
import { type Answer, type Answers, NOT_SURE } from '../../src/interview/answers';
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

export const bankForTalks = () => bankOf(interview, AS_OF);
