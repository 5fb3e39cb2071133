import type { Home } from '../../home/home';
import type { Gap } from '../../routes/gap';
import { iticCurve } from '../../tables/itic-curve';
import { sayGap } from '../../words/en/say-gap';

/** The longest time with no voltage that office electronics are designed to ride through, s. ITI (CBEMA) curve, 2000. */
export function electronicsGapSeconds(): number {
  const points = iticCurve.rows.filter((row) => row.side === 'under' && row.percentOfNominal === 0);
  return Math.max(...points.map((row) => row.seconds ?? 0));
}

/** What a transfer gap means here. The curve speaks of electronics only, never of a medical device. */
export function gapPoints(home: Home, gap: Gap): string[] {
  const ms = electronicsGapSeconds() * 1000;
  const points = [
    `Gap when the grid fails: ${sayGap(gap)}. Office electronics are designed to ride through ${ms} ms without voltage (ITI curve, 2000); for a longer gap put a small battery at the computer and the router.`,
  ];
  if (home.lifeSupport !== 'no' || home.loads.some((load) => load.life)) {
    points.push(
      'No electronics curve is applied to a medical device: its maker and supplier say what gap it stands, or it gets a source without a break.',
    );
  }
  return points;
}
