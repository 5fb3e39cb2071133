import type { Answers } from '../../../src/interview/answers';
import { completeHome } from '../../complete-home';
import { randomHome } from '../../random-home';
import { type Hazard, hazards } from '../hazards';
import { note, type Part, type Tally } from '../part';
import { seenOf } from '../seen';
import { tryPlan } from '../try-plan';
import { notQuiet, notTold, withHazard } from '../twins';

/** Of so many homes one is planned twice, to the byte. */
const TWICE = 20;

/** Homes made up by chance and the same homes with a hazard; every other one knows itself. */
export const homes: Part = {
  whole: 2400,
  of: 'home',
  try(seed, tally) {
    const hazard = hazards[seed % hazards.length]!;
    const answers = seed % 2 === 0 ? completeHome(seed) : randomHome(seed);
    const name = `home ${seed}`;
    const plain = tryPlan(name, answers, tally);
    if (seed % TWICE === 0) {
      const again = seenOf(answers);
      note(tally, name, 'the same plan again', again.file === plain.file ? [] : ['differs']);
    }
    const told = withHazard(answers, hazard);
    if (told !== null) tryHazard(`${name} with ${hazard.rule}`, hazard, told, tally);
  },
};

function tryHazard(name: string, hazard: Hazard, told: Answers, tally: Tally): void {
  const seen = tryPlan(name, told, tally);
  note(tally, name, 'a hazard is told of', notTold(hazard, seen));
  note(tally, name, 'its twin is quiet', notQuiet(hazard, told, seen.plan.asOf));
}
