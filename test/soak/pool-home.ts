import type { Answers } from '../../src/interview/answers';
import { completeHome } from '../complete-home';
import { answersOf } from '../households/read-household';

/** Homes that know themselves are dear to make up: so many are taken again and again. */
const POOL = 100;

/** Gives a home that knows itself, the same for the same seed. */
export type Homes = (seed: number) => Answers;

const QUICK = ['mill-lane', 'birch-street', 'tower-six'];

/** One of three demo homes, which nobody has to make up and whose plan is quick: enough for the few tries of a test. */
export const demoHome: Homes = (seed) => answersOf(QUICK[seed % QUICK.length]!);

/** One of a hundred complete homes. */
export const poolHome: Homes = (seed) => completeHome(seed % POOL);
