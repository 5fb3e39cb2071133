import type { ChoiceId } from '#compiled/question-ids.js';
import type { Facts } from '../facts';
import type { Rank } from '../home';

/**
 * What the household ranks: one key may stand for several loads ("heat", "work"). A key is a choice of both
 * `living/must-run.yaml` and `living/nice-run.yaml`; one that a question lacks does not compile here.
 */
export type LoadKey = Exclude<ChoiceId<'must-run'> & ChoiceId<'nice-run'>, 'none'>;

/** Rank of a load by its keys: the best rank any of them was given. No key: it can wait. */
export function rankOf(facts: Facts, keys: readonly LoadKey[]): Rank {
  if (keys.some((key) => facts.has('must-run', key) || isMustAlso(facts, key))) return 'must';
  if (keys.some((key) => facts.has('nice-run', key))) return 'good';
  return 'wait';
}

/** Told to keep running once the household had told of it, after it chose what must. */
function isMustAlso(facts: Facts, key: LoadKey): boolean {
  return facts.has('must-also', key as ChoiceId<'must-also'>);
}
