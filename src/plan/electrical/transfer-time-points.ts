import type { Home } from '../../home/home';
import type { TransferTime } from '../../routes/transfer-time';
import { iticCurve } from '../../tables/itic-curve';
import type { TransferPoint } from './transfer-point';

/** The longest time with no voltage that office electronics are designed to ride through, s. ITI (CBEMA) curve, 2000. */
export function electronicsRideSeconds(): number {
  const points = iticCurve.rows.filter((row) => row.side === 'under' && row.percentOfNominal === 0);
  return Math.max(...points.map((row) => row.seconds ?? 0));
}

/** What the transfer time means here. The curve speaks of electronics only, never of a medical device. */
export function transferTimePoints(home: Home, transferTime: TransferTime): TransferPoint[] {
  const electronicsMs = electronicsRideSeconds() * 1000;
  const medical = home.lifeSupport !== 'no' || home.loads.some((load) => load.life);
  return [
    { code: 'gap', transferTime, electronicsMs },
    ...(medical ? [{ code: 'no-curve-for-medical' } as const] : []),
  ];
}
