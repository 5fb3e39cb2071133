import { vehicleStoreKwh } from '../physics/vehicle-store';
import { practice } from '../tables/practice-figures';
import type { Facts } from './facts';

/** Energy of a mile on a cold road, kWh: 0.25 to 0.5 by the official ratings, a third more in the cold. */
export const KWH_PER_MILE = practice('vehicle-kwh-per-mile');

/** A battery-only vehicle with outlets, as a store for the house. */
export interface HomeVehicle {
  readonly packKwh: number;
  readonly outWatts: number;
  /** How full it stands at home when an outage comes without warning, 0 to 1. */
  readonly chargeShare: number;
  /** To be kept for driving, kWh and miles. */
  readonly reserveMiles: number;
  readonly reserveKwh: number;
  /** What it may give when it stands at its usual charge, and when it was filled before a storm, kWh inside the pack. */
  readonly storeKwh: number;
  readonly fullStoreKwh: number;
  /** 1 in the hours of the day in which it stands at home. */
  readonly homeByHour: readonly number[];
}

/** The vehicle of a household; null for none, for one with a generator, or of an unknown kind: it is no store. */
export function vehicleOf(facts: Facts): HomeVehicle | null {
  if (!facts.told('own-sources') || !facts.has('own-sources', 'ev-outlet', 'hybrid-outlet')) {
    return null;
  }
  if (!(facts.told('vehicle-kind') && facts.is('vehicle-kind', 'battery-only'))) return null;
  const packKwh = facts.number('vehicle-kwh') ?? 0;
  const reserveMiles = facts.number('vehicle-miles') ?? 0;
  const usualShare = (facts.number('vehicle-charge') ?? 70) / 100;
  const store = (chargeShare: number) =>
    vehicleStoreKwh({ packKwh, chargeShare, reserveMiles, kwhPerMile: KWH_PER_MILE });
  return {
    packKwh,
    outWatts: facts.number('vehicle-watts') ?? practice('vehicle-outlet-watts'),
    chargeShare: usualShare,
    reserveMiles,
    reserveKwh: Math.min(packKwh, reserveMiles * KWH_PER_MILE),
    storeKwh: store(usualShare),
    fullStoreKwh: store(1),
    homeByHour: homeByHour(facts.value('vehicle-away')),
  };
}

function homeByHour(away: unknown): number[] {
  const isAway = (hour: number) =>
    away === 'work-hours'
      ? hour >= 8 && hour < 18
      : away === 'evening-night' && (hour >= 18 || hour < 8);
  return Array.from({ length: 24 }, (_, hour) => (isAway(hour) ? 0 : 1));
}
