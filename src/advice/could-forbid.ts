import type { QuestionId } from '#compiled/question-ids.js';
import { hasFixedBattery, hasGenerator, hasPortableGenerator, isWired } from '../kinds/ask-traits';
import type { RouteKind } from '../kinds/route-kind';
import { type RouteTraits, traitsOf } from '../kinds/route-traits';

/**
 * Safety questions of the second rank: some answer to each, or the careful branch of none, forbids a route made so. One
 * is asked once such a route is advised, laid beside it or possible if, and before anybody is told that enough is known.
 * The first rank stands in the opening.
 */
const forbidden: Readonly<Partial<Record<QuestionId, (of: RouteTraits) => boolean>>> = {
  'engine-place': (of) => hasGenerator(of) || of.vehicle,
  'association-rule': hasGenerator,
  operators: hasPortableGenerator,
  'home-tenure': isWired,
  permissions: isWired,
  'panel-signs': isWired,
  'battery-place': hasFixedBattery,
  'flood-history': hasFixedBattery,
};

/** Which of these routes an answer to the question could forbid. */
export function couldForbid(question: string, kinds: readonly RouteKind[]): RouteKind[] {
  const forbids = forbidden[question as QuestionId];
  return forbids === undefined ? [] : kinds.filter((kind) => forbids(traitsOf[kind]));
}
