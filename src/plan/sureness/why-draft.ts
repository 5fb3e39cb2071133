import type { QuestionId } from '#compiled/question-ids.js';
import type { Home } from '../../home/home';
import type { Interview, Question } from '../../interview/questions/question';
import type { Contradiction } from '../contradictions/contradiction';

/** A question that keeps a plan a draft, in its own words: a title alone tells nobody what is missing. */
export interface OpenQuestion {
  readonly question: QuestionId;
  readonly says: string;
  readonly ask: string;
}

/** Why a plan stays a draft. */
export type DraftReason =
  /** Pairs of answers that do not fit together. */
  | { readonly id: 'to-settle'; readonly pairs: number }
  | { readonly id: 'life-unknown' | 'no-second-way' }
  | { readonly id: 'open-answers' | 'never-asked'; readonly questions: readonly OpenQuestion[] };

/** Asked of everybody at the start; no plan rests on them. */
const never: readonly string[] = ['home-name', 'now-danger'];

/**
 * A draft while two answers do not fit together, life support is not known or has no second way, a question that matters
 * most is open, or a safety question was never put.
 */
export function whyDraft(
  home: Home,
  interview: Interview,
  toSettle: readonly Contradiction[],
): DraftReason[] {
  return [
    ...settle(toSettle.length),
    ...lifeReasons(home),
    ...openAnswers(home, interview),
    ...neverAsked(home, interview),
  ];
}

const settle = (pairs: number): DraftReason[] => (pairs === 0 ? [] : [{ id: 'to-settle', pairs }]);

function lifeReasons(home: Home): DraftReason[] {
  if (home.lifeSupport === 'unknown') return [{ id: 'life-unknown' }];
  return home.lifeSupport === 'yes' && !hasSecondWay(home) ? [{ id: 'no-second-way' }] : [];
}

function openAnswers({ facts }: Home, interview: Interview): DraftReason[] {
  const unknown = new Set<string>(facts.openIds());
  const open = interview.questions
    .filter(
      ({ id }) => interview.mattersMost.includes(id) && unknown.has(id) && !never.includes(id),
    )
    .map(inOwnWords);
  return open.length === 0 ? [] : [{ id: 'open-answers', questions: open }];
}

/** Safety questions that apply and were never put, as after a short talk; those that matter most stand among the open ones. */
function neverAsked({ facts }: Home, interview: Interview): DraftReason[] {
  const met = new Set<string>(facts.ids().filter((id) => facts.asked(id)));
  const applies = new Set<string>(facts.ids());
  const unasked = interview.questions
    .filter((q) => q.safety === true && applies.has(q.id) && !met.has(q.id))
    .filter((q) => !interview.mattersMost.includes(q.id))
    .map(inOwnWords);
  return unasked.length === 0 ? [] : [{ id: 'never-asked', questions: unasked }];
}

const inOwnWords = ({ id, says, ask }: Question): OpenQuestion => ({
  question: id as QuestionId,
  says,
  ask,
});

function hasSecondWay({ facts }: Home): boolean {
  const ways = facts.has(
    'second-source',
    'cylinders',
    'spare-batteries',
    'hand-powered',
    'other-place',
  );
  const team = facts.has('device-team', 'clinician') && facts.has('device-team', 'supplier');
  return facts.told('second-source') && ways && team && facts.has('device-team', 'power-company');
}
