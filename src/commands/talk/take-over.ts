import interview from '#compiled/questions.js';
import type { Tariff } from '../../bill/tariff/tariff';
import type { Answers } from '../../interview/answers';
import { streetAnswers, streetWords } from '../../interview/street-answers';
import { homeFromFile } from '../home-from-file';

export interface TakenOver {
  readonly answers: Answers;
  readonly tariff: Tariff | null;
  /** What was taken over, by short names. */
  readonly names: readonly string[];
}

/** What a new home begins with where it stands on the street of another: nothing where that file cannot be read. */
export async function takeOver(like: string): Promise<TakenOver> {
  const home = await homeFromFile(like, null);
  if (!home.ok) return { answers: {}, tariff: null, names: [] };
  return {
    answers: streetAnswers(interview, home.answers),
    tariff: home.tariff,
    names: streetWords(interview, home.answers, home.tariff !== null),
  };
}
