import type { Home } from '../../home/home';
import { meteredServiceLoad } from '../../physics/service-load/metered-demand';
import type { Route } from '../../routes/route';
import { isFixedBattery } from './route-traits';
import { lineVolts, mainAmps } from './service-facts';

export interface MeteredCheck {
  readonly kind: 'refused' | 'done';
  readonly says: string;
  readonly amps: number | null;
  readonly carefulAmps: number | null;
}

/** The peak a website shows may be of an hour, which hides a shorter one: never better than marginal. */
const WEBSITE_MINUTES = 60;

/** Metered demand, NEC 220.87, from the highest hour of the year, with what the route would draw to charge. */
export function meteredCheck(home: Home, route: Route): MeteredCheck {
  const { facts } = home;
  const peakKw = facts.told('bill-peak-kw') ? facts.number('bill-peak-kw') : null;
  const volts = lineVolts(home);
  const ratingAmps = mainAmps(home);
  if (peakKw === null) return refused('the highest demand of the year is not known');
  if (volts === null) return refused('the supply is 120 V only');
  if (ratingAmps === null) return refused('the main breaker was not read');
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
  const { amps } = result.load;
  const { carefulAmps } = result;
  const decides = {
    within: 'passes',
    marginal: 'marginal: electrician and inspector decide',
    over: 'over: electrician and inspector decide',
  };
  const added =
    charging > 0 ? `, with a battery charging at ${Math.round(charging / 100) / 10} kW` : '';
  return {
    kind: 'done',
    amps,
    carefulAmps,
    says: `1.25 x ${peakKw} kW metered${added}: ${Math.round(amps)} A, ${Math.round(carefulAmps)} A by the careful count, on ${ratingAmps} A: ${decides[result.verdict]} (220.87).`,
  };
}

function refused(reason: string): MeteredCheck {
  return { kind: 'refused', says: `Not used: ${reason} (220.87).`, amps: null, carefulAmps: null };
}
