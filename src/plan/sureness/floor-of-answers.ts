import type { Home } from '../../home/home';
import type { Interview } from '../../interview/questions/question';

/** Without these nothing can be advised: what must run, the heating, where the home is and which kind it is. */
const always = ['must-run', 'heat-main', 'home-zip', 'home-kind'] as const;
/** And a place for one source at least; each counts only where it is asked of this home. */
const places = ['engine-place', 'battery-place'] as const;

export type FloorQuestion = (typeof always)[number] | (typeof places)[number];

/**
 * The questions without whose answers a plan buys nothing; empty once enough is told. What must run, the heating and
 * the home have to be told; a place may be "not sure", for its careful branch is known. Where no place for a generator is
 * asked, as in an apartment, the kind of home has settled that one.
 */
export function missingForAdvice({ facts }: Pick<Home, 'facts'>): FloorQuestion[] {
  const missing: FloorQuestion[] = always.filter((id) => facts.applies(id) && !facts.told(id));
  const asked: FloorQuestion[] = places.filter((id) => facts.applies(id));
  const noPlace = asked.includes('engine-place') && asked.every((id) => !facts.asked(id));
  return noPlace ? [...missing, ...asked] : missing;
}

/** A question without which nothing can be advised, by its title. */
export interface Undecided {
  readonly question: FloorQuestion;
  readonly says: string;
}

export function undecidedOf(interview: Interview, home: Home): Undecided[] {
  const missing = missingForAdvice(home);
  return interview.questions.flatMap((question) => {
    const id = missing.find((one) => one === question.id);
    return id === undefined ? [] : [{ question: id, says: question.says }];
  });
}
