import type { OneRoom } from '../../advice/ways-on/ways-on';

/** "warm", "cool", "warm or cool": what one room is kept at, or the whole home is not. */
export function warmOrCool(
  { heats, cools }: Pick<OneRoom, 'heats' | 'cools'>,
  both: 'and' | 'or',
): string {
  if (heats && cools) return `warm ${both} cool`;
  return heats ? 'warm' : 'cool';
}
