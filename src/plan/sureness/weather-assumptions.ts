import type { QuestionId } from '#compiled/question-ids.js';
import type { Home } from '../../home/home';
import type { LoadId } from '../../home/loads/load-id';
import { panelTraits, roofOf } from '../../home/solar/roof';

/** What is taken for granted of how a load goes with the weather. */
export type WeatherByLoad = 'well-same-all-year' | 'sump-any-day' | 'heat-pump-one-speed';

/** What nobody told of the weather; no question of the interview asks for it. */
export type WeatherAssumption = { readonly question: QuestionId; readonly asked: false } & (
  | { readonly code: WeatherByLoad }
  /** `mostShare`: of the sun of a winter month that snow keeps out, 0 to 1. */
  | { readonly code: 'snow-on-panels'; readonly mostShare: number }
);

/** What we take for granted of how loads go with the weather, where the home has such a load. */
export function weatherAssumptions(home: Home): WeatherAssumption[] {
  const byLoad = lines
    .filter(({ of }) => home.loads.some((load) => of.includes(load.id)))
    .map(({ code, question }) => ({ code, question, asked: false as const }));
  return [...byLoad, ...snowOnPanels(home)];
}

/** A winter month that loses less than this share of its sun to snow decides nothing. */
const LITTLE_SNOW_SHARE = 0.05;

/** Snow on the roof goes by temperature and tilt alone; said where a winter is planned for that loses much by it. */
function snowOnPanels({ facts, goalSeasons, site }: Home): WeatherAssumption[] {
  const roof = roofOf(facts);
  if (roof === null || !goalSeasons.includes('winter')) return [];
  const byMonth = panelTraits(roof, site.place.climate.meanC).snowLossByMonth ?? [];
  const mostShare = Math.max(0, ...byMonth);
  if (mostShare < LITTLE_SNOW_SHARE) return [];
  return [{ code: 'snow-on-panels', mostShare, question: 'roof-face', asked: false }];
}

const lines: readonly { of: readonly LoadId[]; code: WeatherByLoad; question: QuestionId }[] = [
  { of: ['well'], code: 'well-same-all-year', question: 'water-source' },
  { of: ['sump'], code: 'sump-any-day', question: 'sump' },
  { of: ['heat-pump', 'mini-split'], code: 'heat-pump-one-speed', question: 'heat-main' },
];
