import type { QuestionId } from '#compiled/question-ids.js';
import type { Home } from '../home/home';

/** What the hour of leaving is made of: where to, how long the trip takes, and whether a closed road would stop it. */
const leaving: readonly QuestionId[] = ['leave-place', 'trip-hours', 'road-out'];

/** The question moves the hour at which somebody who lives by a device has to go: asked before enough is known. */
export const movesLeaving = (home: Home, question: string): boolean =>
  home.lifeSupport !== 'no' && (leaving as readonly string[]).includes(question);
