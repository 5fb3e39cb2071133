import type { QuestionId } from '#compiled/question-ids.js';
import type { Home } from '../../home/home';
import type { Interview } from '../../interview/questions/question';
import { sayAnswer } from '../../interview/say-answer';
import { type WeatherAssumption, weatherAssumptions } from './weather-assumptions';

/** What we took for an answer that was "not sure" or never given, in the words of its question. */
export interface OpenAnswer {
  readonly code: 'open-answer';
  readonly question: QuestionId;
  readonly says: string;
  readonly ask: string;
  /** Null: left open. */
  readonly assumed: string | null;
  readonly because: string;
  readonly asked: boolean;
}

export type Assumption = OpenAnswer | WeatherAssumption;

/** What is taken for "not sure" counts only where the question was put; until then nothing is taken. */
const onlyOnceAsked: readonly QuestionId[] = ['one-room'];

/** Every assumption the plan rests on, in asking order; those about the weather last. */
export function assumptionsOf(
  interview: Interview,
  home: Home,
  answered: ReadonlySet<string>,
): Assumption[] {
  const unknown = new Set<string>(
    home.facts.openIds().filter((id) => home.facts.asked(id) || !onlyOnceAsked.includes(id)),
  );
  const open = interview.questions
    .filter((q) => unknown.has(q.id) && q.id !== 'home-name' && q.optional !== true)
    .map((q) => ({
      code: 'open-answer' as const,
      question: q.id as QuestionId,
      says: q.says,
      ask: q.ask,
      assumed: q.unsure.assume === null ? null : sayAnswer(q, q.unsure.assume),
      because: q.unsure.because,
      asked: answered.has(q.id),
    }));
  return [...open, ...weatherAssumptions(home)];
}
