import type { QuestionId } from '#compiled/question-ids.js';
import type { RouteKind } from '../kinds/route-kind';
import type { Effect } from './effect-of-answers';

/**
 * Safety questions of the second rank: an answer to one of these, or the careful branch of none, closes routes. Those of
 * the first rank stand in the opening. `test/advice/could-forbid.test.ts` holds the list to the reasons that close a route.
 */
export const secondRank: readonly QuestionId[] = [
  'engine-place',
  'association-rule',
  'operators',
  'home-tenure',
  'permissions',
  'panel-signs',
  'battery-place',
  'flood-history',
];

/**
 * Which of these routes an answer to the question would close or open in this home. Such a question is asked once the
 * route is advised, laid beside or possible if, and before anybody is told that enough is known.
 */
export function couldForbid({ question, tried }: Effect, kinds: readonly RouteKind[]): RouteKind[] {
  if (!(secondRank as readonly string[]).includes(question)) return [];
  const turned = new Set(tried.flatMap(({ change }) => change.turned));
  return [...new Set(kinds)].filter((kind) => turned.has(kind));
}
