import type { Home } from '../../home/home';

/** Outdoor cold and heat, °F, within which a room without heating or cooling harms nobody soon. Our judgement. */
const MILD_F = { cold: 45, hot: 85 };

/** A room without heat (`cold`) or cooling (`heat`) can harm here, in a season the plan is for. */
export function harmfulSeason({ goalSeasons, site }: Home, by: 'cold' | 'heat'): boolean {
  return by === 'cold'
    ? goalSeasons.includes('winter') && site.coldF < MILD_F.cold
    : goalSeasons.includes('summer') && site.hotF >= MILD_F.hot;
}
