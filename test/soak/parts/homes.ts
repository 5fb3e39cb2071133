import type { Answers } from '../../../src/interview/answers';
import { completeHome } from '../../complete-home';
import { randomHome } from '../../random-home';
import { hazards } from '../hazards';
import { note, type Part, type Tally } from '../part';
import { type Seen, seenOf } from '../seen';
import { tryPlan } from '../try-plan';
import { notQuiet, notTold, withHazard } from '../twins';

/** Of so many homes one is planned twice, to the byte. */
const TWICE = 20;

/** Homes made up by chance and the same homes with a hazard; every other one knows itself. */
export const homes: Part = {
  whole: 2400,
  of: 'home',
  try(seed, tally) {
    const answers = answersOf(seed);
    tryHome(seed, answers, tally);
    tryHazard(seed, answers, tally);
  },
  /** Every home once, by turns as it is and with its hazard. */
  light(seed, tally) {
    if (seed % 4 < 2) tryHome(seed, answersOf(seed), tally);
    else tryHazard(seed, answersOf(seed), tally);
  },
};

const answersOf = (seed: number) => (seed % 2 === 0 ? completeHome(seed) : randomHome(seed));

function tryHome(seed: number, answers: Answers, tally: Tally): void {
  const name = `home ${seed}`;
  const plain = tryPlan(name, answers, tally);
  if (seed % TWICE !== 0) return;
  const again = seenOf(answers);
  note(tally, name, 'the same plan again', written(again) === written(plain) ? [] : ['differs']);
}

const written = ({ papers }: Seen) => papers.map(({ file, text }) => `${file}\n${text}`).join('\n');

function tryHazard(seed: number, answers: Answers, tally: Tally): void {
  const hazard = hazards[seed % hazards.length]!;
  const told = withHazard(answers, hazard);
  if (told === null) return;
  const name = `home ${seed} with ${hazard.rule}`;
  const seen = tryPlan(name, told, tally);
  note(tally, name, 'a hazard is told of', notTold(hazard, seen));
  note(tally, name, 'its twin is quiet', notQuiet(hazard, told, seen.plan.asOf));
}
