import type { QuestionId } from '#compiled/question-ids.js';
import type { Question } from '../interview/questions/question';

/** Questions that change the advice most, in most homes, by `npm run bench -- questions`. The rest follow in their own order. */
const likeliest: readonly QuestionId[] = [
  'budget-now',
  'budget-later',
  'sump',
  'nice-run',
  'operators',
  'own-sources',
  'engine-place',
  'gas-supply',
  'gasoline-place',
  'goal-scope',
  'panel-signs',
  'waste',
  'waste-hp',
  'permissions',
  'association-rule',
  'battery-place',
  'flood-history',
  'one-room',
  'heat-pump-tons',
  'cool-main',
  'access-lifts',
  'well-hp',
  'propane-gallons',
  'well-start-amps',
  'home-elevation',
  'freezer-count',
  'fridge-count',
  'sump-minutes',
  'heat-watts',
  'cpap-watts',
  'cpap-hours',
  'internet-kind',
  'work-gear',
  'big-loads',
  'cool-tons',
  'gasoline-gallons',
];

/** The same questions, those first that usually change most. */
export function likeliestFirst(questions: readonly Question[]): Question[] {
  const rank = ({ id }: Question) => {
    const at = (likeliest as readonly string[]).indexOf(id);
    return at < 0 ? likeliest.length : at;
  };
  return [...questions].sort((a, b) => rank(a) - rank(b));
}
