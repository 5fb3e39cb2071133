import { NOT_SURE } from './answers';
import type { Interview, Question } from './questions/question';
import { relevant } from './questions/relevant';
import type { Context, State } from './state';

/** Places of a walk through a home, in its order. */
export const WALK_PLACES = ['panel', 'furnace', 'well', 'kitchen', 'outdoors', 'papers'] as const;
export type WalkPlace = (typeof WALK_PLACES)[number];

/** By place, the ids of what is found there, as compiled from `questions/walk.yaml`. */
export type Walk = Readonly<Record<WalkPlace, readonly string[]>>;

/** One place and what to look at there. */
export interface WalkStop {
  readonly place: WalkPlace;
  readonly questions: readonly Question[];
}

/** Where a question is looked up; null where nothing in the home shows it. */
export function placeOf({ walk }: Interview, id: string): WalkPlace | null {
  return WALK_PLACES.find((place) => walk[place].includes(id)) ?? null;
}

/** What was left to look at later: each question answered "not sure" that a place in the home would answer. */
export function walkList(
  context: Pick<Context, 'interview' | 'short'>,
  answers: State['answers'],
): WalkStop[] {
  const open = relevant(context, answers).filter(({ id }) => answers[id] === NOT_SURE);
  return stopsOf(context.interview, open);
}

/** Questions by the place where their answer is found, places in the order of the walk; those of no place left out. */
export function stopsOf({ walk }: Interview, questions: readonly Question[]): WalkStop[] {
  return WALK_PLACES.map((place) => ({
    place,
    questions: walk[place].flatMap((id) => questions.filter((one) => one.id === id)),
  })).filter(({ questions: here }) => here.length > 0);
}

/** Ids on the list, in its order. */
export function walkIds(
  context: Pick<Context, 'interview' | 'short'>,
  answers: State['answers'],
): string[] {
  return walkList(context, answers).flatMap(({ questions }) => questions.map(({ id }) => id));
}
