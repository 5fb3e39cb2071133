import type { ChoiceId, QuestionId } from '#compiled/question-ids.js';
import type { Tariff } from '../../bill/tariff/tariff';
import type { Home } from '../../home/home';
import type { Answers } from '../../interview/answers';

/** Two answers that cannot both be right. Nothing is averaged: the household says which one holds. */
export interface Contradiction {
  readonly id: string;
  /** The question that settles it. */
  readonly asks: string;
  /** Both answers as they were given. */
  readonly answers: readonly [string, string];
  /** Questions to look at again. */
  readonly questions: readonly string[];
}

export type Check = (
  home: Home,
  answers: Answers,
  ownTariff: Tariff | null,
) => Contradiction | null;

/** A number that was told; null for one assumed or not given. */
export const told = ({ facts }: Home, id: QuestionId) => (facts.told(id) ? facts.number(id) : null);

/** One of these choices was told, not assumed. */
export const said = <Q extends QuestionId>(
  { facts }: Home,
  id: Q,
  ...choices: readonly ChoiceId<Q>[]
) => facts.told(id) && (facts.is(id, ...choices) || facts.has(id, ...choices));
