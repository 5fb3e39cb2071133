import type { Facts } from './facts';
import type { Load } from './home';

/**
 * The household was asked about this thing, or it is in any home: the first of the questions a load rests on is the one
 * that names it, and so does the ranking. What nobody was asked about is counted as usual, but never listed as theirs.
 */
export function wasAskedAbout(facts: Facts, load: Load): boolean {
  const [names] = load.restsOn;
  if (names === undefined || facts.asked(names)) return true;
  return load.rank !== 'wait' && facts.asked('must-run');
}
