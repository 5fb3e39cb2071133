import type { QuestionId } from '#compiled/question-ids.js';
import type { Facts } from '../../home/facts';
import type { Home } from '../../home/home';
import { openCounts } from '../../interview/questions/open-counts';
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
  /** Of so many that weigh most and apply here. */
  | {
      readonly id: 'open-answers';
      readonly of: number;
      readonly questions: readonly OpenQuestion[];
    }
  | { readonly id: 'never-asked'; readonly questions: readonly OpenQuestion[] };

/**
 * A draft while two answers do not fit together, life support is not known or has no second way, a question that matters
 * most is open, or a safety question was never put.
 */
export function whyDraft(
  home: Home,
  interview: Interview,
  toSettle: readonly Contradiction[],
): DraftReason[] {
  return [...settle(toSettle.length), ...lifeReasons(home), ...openReasons(home, interview)];
}

const settle = (pairs: number): DraftReason[] => (pairs === 0 ? [] : [{ id: 'to-settle', pairs }]);

function lifeReasons(home: Home): DraftReason[] {
  if (home.lifeSupport === 'unknown') return [{ id: 'life-unknown' }];
  return home.lifeSupport === 'yes' && !hasSecondWay(home) ? [{ id: 'no-second-way' }] : [];
}

function openReasons({ facts }: Home, interview: Interview): DraftReason[] {
  const { mattersMost, safety } = openCounts(interview, (id) =>
    standingOf(facts, id as QuestionId),
  );
  const { open, of } = mattersMost;
  return [
    ...(open.length === 0
      ? []
      : [{ id: 'open-answers' as const, of, questions: open.map(inOwnWords) }]),
    // As after a short talk; those that matter most stand among the open ones.
    ...(safety.length === 0
      ? []
      : [{ id: 'never-asked' as const, questions: safety.map(inOwnWords) }]),
  ];
}

function standingOf(facts: Facts, id: QuestionId) {
  if (!facts.applies(id)) return 'does-not-apply';
  if (facts.told(id)) return 'told';
  return facts.asked(id) ? 'unsure' : 'unasked';
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
