import type { Facts } from '../../home/facts';
import { gasHere } from '../../home/heat/gas-here';
import type { Home } from '../../home/home';
import type { GeneratorFuel } from '../../tables/fuels';
import type { PowerStep } from '../../tables/generic-steps';
import { practice } from '../../tables/practice-figures';
import { owned, part } from '../costs';
import { siteShare } from '../generator-size';
import type { Part } from '../route';
import type { If } from '../stops/condition';
import type { Stop } from '../stops/stop';
import { handStops, wiringIfs } from '../stops/stops';
import { type TransferTime, transferTime } from '../transfer-time';
import { fuelOfGas, isFuel } from './generator-fuels';

/** The generator fixed outdoors that the household has already. */
export interface OwnStandby {
  readonly step: PowerStep;
  readonly ratedWatts: number;
  /** Null: neither the label nor the supply of the home was told. */
  readonly fuel: GeneratorFuel | null;
  readonly transfer: Transfer;
}

/** What moves the house over to it: by itself, by hand, or nothing that was seen. */
type Transfer = 'automatic' | 'by-hand' | 'none';

/** VA of start for each W, as in the table of generic sizes. */
const START_PER_WATT = practice('standby-start-per-watt');

/**
 * Null where none was told. Of two generators only the one counts whose label was read: this one where the household said
 * that it would use it.
 */
export function ownStandby(home: Home): OwnStandby | null {
  const { facts } = home;
  if (!facts.told('own-sources') || !facts.has('own-sources', 'engine-standby')) return null;
  const ratedWatts = facts.number('engine-watts');
  if (ratedWatts === null || !isTheOne(facts, 'standby')) return null;
  const watts = ratedWatts * siteShare(home);
  const burns = facts.told('engine-fuel') ? facts.value('engine-fuel') : null;
  return {
    ratedWatts,
    step: {
      watts,
      startVa: watts * START_PER_WATT,
      volts: facts.is('engine-volts', 'v240') ? 240 : 120,
      startsByHalf: true,
    },
    fuel: isFuel(burns) ? burns : fuelOfGas[gasHere(facts)],
    transfer: transferOf(home),
  };
}

/** The generator the questions are about; of two that are there, the one the household would use. */
export function isTheOne(facts: Facts, which: 'portable' | 'standby'): boolean {
  const other = which === 'portable' ? 'engine-standby' : 'engine-portable';
  return !facts.has('own-sources', other) || facts.is('engine-which', which);
}

/** A switch of which nobody knows what it is counts as none. */
function transferOf({ facts }: Home): Transfer {
  const wired = facts.told('engine-connect') && facts.is('engine-connect', 'inlet');
  if (!wired || !facts.told('transfer-existing')) return 'none';
  if (facts.is('transfer-existing', 'automatic')) return 'automatic';
  return facts.is('transfer-existing', 'manual-switch', 'interlock') ? 'by-hand' : 'none';
}

/** Where nothing switches over by itself, somebody must. */
export const ownStandbyStops = (home: Home, { transfer }: OwnStandby): Stop[] =>
  transfer === 'by-hand' ? handStops(home) : [];

export const ownStandbyTransfer = ({ transfer }: OwnStandby): TransferTime =>
  transferTime(transfer === 'by-hand' ? 'switched-over-by-hand' : 'starts-itself');

/** What was never seen to work is tried before it is leaned on. */
export function ownStandbyIfs(home: Home, { transfer }: OwnStandby): If[] {
  return [
    'own-standby-tested',
    ...(transfer === 'none' ? wiringIfs(home) : ['own-switch-looked-at' as const]),
  ];
}

/** Nothing is bought but what it lacks. */
export function ownStandbyParts({ ratedWatts, transfer }: OwnStandby): Part[] {
  return [
    owned({ code: 'own-standby', kw: ratedWatts / 1000 }, 'standby-engine'),
    ...(transfer === 'none'
      ? [part('automatic-transfer'), part('permit')]
      : [owned({ code: 'own-transfer-switch' }, 'automatic-transfer')]),
  ];
}
