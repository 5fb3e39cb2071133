import type { Home } from '../../home/home';
import type { Interview } from '../../interview/question';
import { weatherAssumptions } from './weather-assumptions';
import { sayAssumed } from './worth-finding-out';

/** What we took for an answer that was "not sure" or never given, and why. */
export interface Assumption {
  readonly question: string;
  readonly says: string;
  /** The question as it is asked; missing where it is none of the interview. */
  readonly ask?: string;
  readonly assumed: string;
  readonly because: string;
  readonly asked: boolean;
}

/** Every assumption the plan rests on, in asking order; those about the weather last. */
export function assumptionsOf(
  interview: Interview,
  home: Home,
  answered: ReadonlySet<string>,
): Assumption[] {
  const unknown = new Set<string>(home.facts.openIds());
  const open = interview.questions
    .filter((q) => unknown.has(q.id) && q.id !== 'home-name')
    .map((q) => ({
      question: q.id,
      says: q.says,
      ask: q.ask,
      assumed: sayAssumed(q),
      because: q.unsure.because,
      asked: answered.has(q.id),
    }));
  return [...open, ...weatherAssumptions(home)];
}
