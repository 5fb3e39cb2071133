import type { Home } from '../../home/home';
import { type MeteredRefusal, meteredServiceLoad } from '../../physics/service-load/metered-demand';
import type { ServiceVerdict } from '../../physics/service-load/service-verdict';
import type { Route } from '../../routes/route';
import { isFixedBattery } from './route-traits';
import { lineVolts, mainAmps } from './service-facts';

/** Metered demand against the main breaker, or why it is not used; `words` says it. */
export type MeteredCheck =
  | {
      readonly kind: 'refused';
      readonly why: MeteredRefusal | 'peak-not-known' | 'supply-120' | 'main-not-read';
    }
  | {
      readonly kind: 'done';
      readonly verdict: ServiceVerdict;
      /** Highest demand told, and what a battery would draw to charge. */
      readonly peakKw: number;
      readonly chargingWatts: number;
      readonly ratingAmps: number;
      readonly amps: number;
      readonly carefulAmps: number;
    };

/** The peak a website shows may be of an hour, which hides a shorter one: never better than marginal. */
const WEBSITE_MINUTES = 60;

/** Metered demand, NEC 220.87, from the highest hour of the year, with what the route would draw to charge. */
export function meteredCheck(home: Home, route: Route): MeteredCheck {
  const { facts } = home;
  const peakKw = facts.told('bill-peak-kw') ? facts.number('bill-peak-kw') : null;
  const volts = lineVolts(home);
  const ratingAmps = mainAmps(home);
  if (peakKw === null) return refused('peak-not-known');
  if (volts === null) return refused('supply-120');
  if (ratingAmps === null) return refused('main-not-read');
  const charging = isFixedBattery(route) ? (route.power?.continuousWatts ?? 0) : 0;
  const result = meteredServiceLoad({
    peakVa: peakKw * 1000,
    intervalMinutes: WEBSITE_MINUTES,
    days: 365,
    hasSolarOrPeakShaving: facts.told('own-sources')
      ? facts.has('own-sources', 'solar', 'home-battery')
      : null,
    newLoadVa: charging,
    newLoadContinuous: charging > 0,
    volts,
    ratingAmps,
  });
  if (result.kind === 'refused') return refused(result.reason);
  return {
    kind: 'done',
    verdict: result.verdict,
    peakKw,
    chargingWatts: charging,
    ratingAmps,
    amps: result.load.amps,
    carefulAmps: result.carefulAmps,
  };
}

const refused = (why: Extract<MeteredCheck, { kind: 'refused' }>['why']): MeteredCheck => ({
  kind: 'refused',
  why,
});
