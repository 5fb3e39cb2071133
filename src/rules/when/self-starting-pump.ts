import type { Facts } from '../../home/facts';
import type { Trigger } from '../rule';
import { firstOf } from './first-of';
import { said } from './said';

/** A pump here starts by itself whenever it wants to. */
export function selfStartingPump(facts: Facts): Trigger | null {
  const because = 'pump-starts-itself';
  const unknown = 'not-known-pump-starts-itself';
  return firstOf(
    said({ facts, id: 'water-source', choices: ['well', 'shallow-pump'], because, unknown }),
    said({ facts, id: 'sump', choices: ['one', 'one-with-battery'], because, unknown }),
    said({ facts, id: 'waste', choices: ['septic-pump', 'grinder'], because, unknown }),
  );
}
