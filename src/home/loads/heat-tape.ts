import type { Load } from '../home';
import type { LoadContext } from './context';
import { rankOf } from './load-keys';
import { makeLoad } from './make-load';

/** The warm cable on pipes that would freeze, where there is one. */
export function heatTape({ facts }: LoadContext): Load[] {
  if (!facts.has('freeze-risk', 'heat-tape')) return [];
  const restsOn = ['freeze-risk', 'must-run'] as const;
  return [makeLoad('heat-tape', { rank: rankOf(facts, ['heat-tape']), restsOn })];
}
