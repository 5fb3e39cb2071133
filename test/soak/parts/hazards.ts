import { findings } from '../../../src/rules/find';
import { reasonCode } from '../../../src/rules/reason';
import { allPairs } from '../../rules/all-pairs';
import { calmHome } from '../../rules/calm-home';
import { says } from '../../says';
import { note, type Part } from '../part';
import { tryPlan } from '../try-plan';

/** Pairs whose caution hangs on the answers alone, whatever route is advised. */
const pairs = allPairs.filter(
  ({ kinds, twinKinds, site, twinSite }) =>
    kinds.length === 0 &&
    twinKinds.every((kind) => kind === 'preparation') &&
    Object.keys({ ...site, ...twinSite }).length === 0,
);

/** A whole plan of each home with a hazard, which tells of it, and of its twin without, which does not. */
export const hazards: Part = {
  whole: pairs.length,
  of: 'pair',
  try(seed, tally) {
    const { rule, hazard, twin, twinKinds } = pairs[(seed - 1) % pairs.length]!;
    const name = `pair ${seed}, ${rule}`;
    const told = tryPlan(`${name}, told`, { ...calmHome, ...hazard }, tally);
    const found = told.plan.cautions.find((one) => one.id === rule);
    note(tally, name, 'a hazard is told of', [
      ...(found === undefined ? ['not in the plan'] : []),
      ...(found?.severity === 5 && !told.text.includes(says(found)) ? ['not printed whole'] : []),
    ]);
    const quiet = tryPlan(`${name}, twin`, { ...calmHome, ...twin }, tally);
    // What is advised may bring the same caution: the twin is asked without it.
    const speaks = findings(quiet.plan.home, twinKinds).find((one) => one.id === rule);
    note(
      tally,
      name,
      'its twin is quiet',
      speaks === undefined ? [] : [reasonCode(speaks.because)],
    );
  },
};
