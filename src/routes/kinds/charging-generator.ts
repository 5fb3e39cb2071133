import type { Home } from '../../home/home';
import { batteryType } from '../../tables/battery-types';
import { fuelShare, type GeneratorFuel } from '../../tables/fuels';
import { powerSteps } from '../../tables/generic-steps';
import { owned } from '../costs';
import { portableGeneratorPart } from '../generator-part';
import { portableFuel, siteShare } from '../generator-size';
import type { GeneratorSize, Part } from '../route';
import { CHARGE_LOAD } from '../walk-generator';
import { type OwnGenerator, ownGenerator } from './own-generator';

/** The generator that refills a battery: their own where it is strong enough, else one to buy. */
export interface ChargingGenerator {
  readonly size: Pick<GeneratorSize, 'ratedKw' | 'siteKw'>;
  readonly type: OwnGenerator['type'];
  readonly fuel: GeneratorFuel;
  readonly part: Part;
}

/** Charger and battery, in and out: the round trip of the battery that routes are built of. */
export const CHARGE_EFFICIENCY = batteryType('lithium-iron-phosphate').roundTrip;
/** Hours a day their own set may run before a larger one is bought instead. Our judgement. */
const MOST_OWN_HOURS = 16;
/** Hours a day in which one to buy refills a day's use. */
const BOUGHT_HOURS = 8;

/** `inverterWatts`: what the battery's inverter gives, which a charger seldom passes. */
export function chargingGenerator(
  home: Home,
  given: { inverterWatts: number; kwhPerDay: number },
): ChargingGenerator {
  const own = ownGenerator(home);
  const refills = (watts: number, hours: number) =>
    (watts / 1000) * CHARGE_LOAD * hours >= given.kwhPerDay / CHARGE_EFFICIENCY;
  if (own !== null && refills(own.step.watts, MOST_OWN_HOURS)) {
    const ratedKw = own.ratedWatts / 1000;
    return {
      size: { ratedKw, siteKw: own.step.watts / 1000 },
      type: own.type,
      fuel: own.fuel,
      part: owned({ code: 'own-generator', kw: ratedKw }, 'portable-engine'),
    };
  }
  const fuel = portableFuel(home);
  const share = siteShare(home) * fuelShare(fuel);
  const steps = powerSteps('engine');
  const enough = steps.find((step) => refills(step.watts * share, BOUGHT_HOURS)) ?? steps.at(-1)!;
  const ratedWatts = Math.min(enough.watts, Math.max(given.inverterWatts, 3500));
  return {
    size: { ratedKw: ratedWatts / 1000, siteKw: (ratedWatts * share) / 1000 },
    type: 'portable',
    fuel,
    part: portableGeneratorPart(ratedWatts),
  };
}
