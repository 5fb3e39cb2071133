import type { QuestionId } from '#compiled/question-ids.js';
import type { Home } from '../../home/home';
import type { Interview } from '../../interview/question';

/** Without these nothing can be advised: what must run, the heating, where the home is and which kind it is. */
const always: readonly QuestionId[] = ['must-run', 'heat-main', 'home-zip', 'home-kind'];
/** And a place for one source at least; each counts only where it is asked of this home. */
const places: readonly QuestionId[] = ['engine-place', 'battery-place'];

/**
 * The questions without whose answers a plan buys nothing; empty once enough is told. What must run, the heating and
 * the home have to be told; a place may be "not sure", for its careful branch is known. Where no place for a generator is
 * asked, as in an apartment, the kind of home has settled that one.
 */
export function missingForAdvice({ facts }: Pick<Home, 'facts'>): QuestionId[] {
  const missing = always.filter((id) => facts.applies(id) && !facts.told(id));
  const asked = places.filter((id) => facts.applies(id));
  const noPlace = asked.includes('engine-place') && asked.every((id) => !facts.asked(id));
  return noPlace ? [...missing, ...asked] : missing;
}

/** A question without which nothing can be advised, and what it decides, in words. */
export interface Undecided {
  readonly question: QuestionId;
  readonly says: string;
  readonly decides: string;
}

/** What each of them decides; the rest is in the question file. */
const decides: Readonly<Partial<Record<QuestionId, string>>> = {
  'must-run': 'Decides how much power and energy is needed at all',
  'heat-main': 'Decides whether heat can be kept on, and by what',
  'home-zip': 'Decides cold, heat and sun, and what the law asks',
  'home-kind': 'Decides which sources are allowed and safe here',
  'engine-place': 'Decides whether a generator is possible here',
  'battery-place': 'Decides whether a fixed battery is possible here',
};

export function undecidedOf(interview: Interview, home: Home): Undecided[] {
  const missing = missingForAdvice(home);
  return interview.questions.flatMap((question) => {
    const id = missing.find((one) => one === question.id);
    return id === undefined
      ? []
      : [{ question: id, says: question.says, decides: decides[id] ?? '' }];
  });
}
