import type { Interview, Question } from './question';

/** How one question stands. */
type Standing = 'does-not-apply' | 'told' | 'unsure' | 'unasked';

/** What of an interview is open, and of how much: every screen and paper that counts goes by this. */
export interface OpenCounts {
  /** Of all that apply and are asked by themselves: never put, or passed over. */
  readonly unanswered: readonly Question[];
  /** Of the answers that weigh most in a plan: not told, be it "not sure" or never put. */
  readonly mattersMost: { readonly open: readonly Question[]; readonly of: number };
  /** Of the others, those about safety: never put. */
  readonly safety: readonly Question[];
}

/** Asked of everybody at the start; no plan rests on them. */
const never: readonly string[] = ['home-name', 'now-danger'];

export function openCounts(
  { questions, mattersMost }: Pick<Interview, 'questions' | 'mattersMost'>,
  standingOf: (id: string) => Standing,
): OpenCounts {
  const applies = questions.filter(({ id }) => standingOf(id) !== 'does-not-apply');
  const unanswered = applies.filter(
    ({ id, optional }) => standingOf(id) === 'unasked' && optional !== true,
  );
  const most = applies.filter(({ id }) => mattersMost.includes(id) && !never.includes(id));
  return {
    unanswered,
    mattersMost: { open: most.filter(({ id }) => standingOf(id) !== 'told'), of: most.length },
    safety: unanswered.filter((one) => one.safety === true && !mattersMost.includes(one.id)),
  };
}
