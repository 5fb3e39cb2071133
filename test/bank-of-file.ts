import { afterAll } from 'vitest';
import interview from '#compiled/questions.js';
import { type Bank, bankOf } from '../src/advice/effect-of-answers';

/**
 * One bank for all tests of a file, let go behind the last of them: what it keeps of homes that were tried is large, and
 * a test process lives on through other files.
 * @param asOf the day ages are counted from, YYYY-MM-DD
 */
export function bankOfFile(asOf: string): Bank {
  let bank: Bank | null = null;
  const kept = () => {
    bank ??= bankOf(interview, asOf);
    return bank;
  };
  afterAll(() => {
    bank = null;
  });
  return {
    interview,
    get trialOf() {
      return kept().trialOf;
    },
    get knownOf() {
      return kept().knownOf;
    },
    get broughtBy() {
      return kept().broughtBy;
    },
  };
}
