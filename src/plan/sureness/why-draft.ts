import type { Home } from '../../home/home';
import type { Interview, Question } from '../../interview/question';
import type { Contradiction } from '../contradictions/contradiction';

/** Why a plan stays a draft: decided by its id, said by its words, in whole and in short for the first page. */
export interface DraftReason {
  readonly id: 'to-settle' | 'life-unknown' | 'no-second-way' | 'open-answers' | 'never-asked';
  readonly says: string;
  readonly short: string;
}

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

function settle(count: number): DraftReason[] {
  if (count === 0) return [];
  const says =
    count === 1
      ? 'two answers do not fit together'
      : `${count} pairs of answers do not fit together`;
  return [
    {
      id: 'to-settle',
      says: `${says}, and the plan rests on them: settle this first`,
      short: says,
    },
  ];
}

function lifeReasons(home: Home): DraftReason[] {
  const reason = (id: 'life-unknown' | 'no-second-way', says: string, short: string) => [
    { id, says, short },
  ];
  if (home.lifeSupport === 'unknown') {
    return reason(
      'life-unknown',
      'it is not known whether somebody here depends on a powered medical device',
      'not known whether somebody here depends on a powered device',
    );
  }
  if (home.lifeSupport === 'yes' && !hasSecondWay(home)) {
    return reason(
      'no-second-way',
      'somebody depends on power to live, and no tested second way is agreed with the clinician and supplier',
      'no tested second way for the device somebody lives by',
    );
  }
  return [];
}

function openAnswers({ facts }: Home, interview: Interview): DraftReason[] {
  const unknown = new Set<string>(facts.openIds());
  const open = interview.questions
    .filter(
      ({ id }) => interview.mattersMost.includes(id) && unknown.has(id) && !never.includes(id),
    )
    .map(inWords);
  if (open.length === 0) return [];
  return [
    {
      id: 'open-answers',
      says: `these answers are still open: ${open.join('; ')}`,
      short: `${open.length} ${open.length === 1 ? 'answer is' : 'answers are'} still open`,
    },
  ];
}

/** Safety questions that apply and were never put, as after a short talk; those that matter most stand among the open ones. */
function neverAsked({ facts }: Home, interview: Interview): DraftReason[] {
  const met = new Set<string>(facts.ids().filter((id) => facts.asked(id)));
  const applies = new Set<string>(facts.ids());
  const unasked = interview.questions
    .filter((q) => q.safety === true && applies.has(q.id) && !met.has(q.id))
    .filter((q) => !interview.mattersMost.includes(q.id))
    .map(inWords);
  if (unasked.length === 0) return [];
  const count = unasked.length;
  return [
    {
      id: 'never-asked',
      says: `questions about safety that apply here were never asked: ${unasked.join('; ')}`,
      short: `${count} ${count === 1 ? 'question about safety was' : 'questions about safety were'} never asked`,
    },
  ];
}

/** Its title, and what is asked: a title alone tells nobody what is missing. */
const inWords = ({ says, ask }: Question) => `${says} (${ask})`;

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
