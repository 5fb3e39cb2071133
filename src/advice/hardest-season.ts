import type { Home, Season } from '../home/home';

/** The season asked for whose hard day takes most of what must run: the one day that job and table speak of. */
export function hardestSeason({ goalSeasons, demand: { must } }: Home): Season {
  return goalSeasons.reduce((a, b) => (must.kwhPerDay[b].value > must.kwhPerDay[a].value ? b : a));
}
