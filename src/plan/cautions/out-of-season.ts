import type { Home } from '../../home/home';
import { type RuleId, ruleOf } from '../../tables/rules';

/** A caution about one season, where the plan is for the other alone. */
export function outOfSeason({ goalSeasons }: Pick<Home, 'goalSeasons'>, id: RuleId): boolean {
  const { season } = ruleOf(id);
  return season !== undefined && !goalSeasons.includes(season);
}
