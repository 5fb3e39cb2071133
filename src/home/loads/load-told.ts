import type { Facts } from '../facts';
import type { Load } from '../home';

/**
 * The household was asked about this thing, or it is in any home: the first of the questions a load rests on is the one
 * that names it, and so does the ranking. What nobody was asked about is counted as usual, but never listed as theirs.
 */
export function wasAskedAbout(facts: Facts, load: Load): boolean {
  const [names] = load.restsOn;
  if (names === undefined || facts.asked(names)) return true;
  return load.rank !== 'wait' && facts.asked('must-run');
}

/**
 * The household told of this thing itself: not "not sure", and not a thing we count in any home. What no question of
 * its own names, or none that was put, is told of by the ranking that it stands in.
 */
export function wasTold(facts: Facts, load: Load): boolean {
  const names = load.restsOn.find((id) => id !== 'must-run' && id !== 'nice-run');
  if (names !== undefined && facts.asked(names)) return facts.told(names);
  if (load.rank === 'good') return facts.told('nice-run');
  return facts.told('must-run') && (load.rank === 'must' || load.restsOn[0] === 'must-run');
}
