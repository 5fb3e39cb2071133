import type { Load } from '../../home/home';
import {
  type LegCurrents,
  legCurrents,
  type MotorOnLegs,
} from '../../physics/service-load/leg-currents';
import { shareOverLegs } from '../../physics/service-load/share-over-legs';

/**
 * Amps on legs and neutral with these loads on, likely values: 120 V loads shared over both legs, 240 V loads on both, and a
 * quarter more of the largest motor (NEC 430.24, in the way of Annex D example D1(b)).
 */
export function carriedLegs(loads: readonly Load[]): LegCurrents {
  const at120 = loads
    .filter((load) => load.volts === 120)
    .map((load) => ({ ...ampsOf(load), load }));
  const legs = shareOverLegs(at120);
  const still = (leg: typeof legs.legA) => leg.filter((one) => !one.motor);
  const motors = (leg: typeof legs.legA) => leg.filter((one) => one.motor);
  const both = loads.filter((load) => load.volts === 240).map(ampsOf);
  const bothAmps = sum(both.filter((one) => !one.motor));
  const [a, b] = [sum(still(legs.legA)), sum(still(legs.legB))];
  const base = { legA: a + bothAmps, neutral: Math.abs(a - b), legB: b + bothAmps };
  return legCurrents(base, [
    ...both.filter((one) => one.motor).map((one): MotorOnLegs => ({ ...one, kind: '240' })),
    ...facing(motors(legs.legA), motors(legs.legB)),
  ]);
}

interface Amps {
  readonly amps: number;
  readonly motor: boolean;
}

const ampsOf = (load: Load): Amps => ({
  amps: load.runningVa.value / load.volts,
  motor: load.startVa !== null,
});

const sum = (of: readonly Amps[]) => of.reduce((total, one) => total + one.amps, 0);

/** Motors of the two legs pair by pair, as the example lays them: the neutral carries the larger of each pair. */
function facing(onA: readonly Amps[], onB: readonly Amps[]): MotorOnLegs[] {
  return Array.from({ length: Math.max(onA.length, onB.length) }, (_, i) => ({
    kind: '120',
    ampsA: onA[i]?.amps ?? 0,
    ampsB: onB[i]?.amps ?? 0,
  }));
}
