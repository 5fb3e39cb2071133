import type { Home } from '../../home/home';
import { batteryStepsKwh, powerSteps } from '../../tables/generic-steps';
import { limitsOf, usableOf } from '../battery-hours';
import { part } from '../costs';
import { type Fitted, fitPower } from '../fit-power';
import { type OwnBattery, ownBatteryPart, ownFixedBattery } from '../own-battery';
import { loadsOf } from '../pick-loads';
import type { Part } from '../route';
import type { If } from '../stops/condition';
import type { SourceName } from '../why-left-out';
import { besideOwn } from './fixed-battery';
import { backsUp, NOT_BACKED, reserveIfs } from './own-battery';

/** The battery that carries the nights: theirs alone, one bought beside theirs, or one bought. */
export interface NightBattery {
  readonly fitted: Fitted;
  /** Nameplate of what is bought, or of theirs where nothing is. */
  readonly nameplateKwh: number;
  /** All of it together. */
  readonly usableKwh: number;
  readonly parts: readonly Part[];
  readonly ifs: readonly If[];
}

/** Hours of a night the battery carries alone. */
const NIGHT_HOURS = 14;
/** A larger battery is not planned here: where a night asks more, the plan says so. */
const LARGEST_KWH = 20;

/** Sizes it may have, kWh. */
export const nightSteps = () => batteryStepsKwh().filter((kwh) => kwh <= LARGEST_KWH);

/**
 * Null where no inverter starts anything that must run.
 * @param dayKwh what the loads carried take on a hard day
 * @param onlyKwh the battery to buy; null: the one that the night asks for
 */
export function nightBattery(
  home: Home,
  dayKwh: (fitted: Fitted) => number,
  onlyKwh: number | null = null,
): NightBattery | null {
  const own = ownFixedBattery(home);
  const bought = fitMust(home, powerSteps('inverter'), 'home-inverter');
  const nightKwh = (fitted: Fitted) =>
    (dayKwh(fitted) * NIGHT_HOURS) / 24 / limitsOf(1).dischargeEfficiency;
  const theirs = own === null ? null : fitMust(home, [own], 'battery-there');
  if (own !== null && theirs !== null && carriesAsMuch(theirs, bought)) {
    if (onlyKwh === null && own.usableKwh >= nightKwh(theirs))
      return theirsAlone(home, own, theirs);
  }
  if (bought === null) return null;
  const have = own?.usableKwh ?? 0;
  const steps = nightSteps();
  const asked = nightKwh(bought);
  const nameplateKwh =
    onlyKwh ?? steps.find((kwh) => have + usableOf(home, kwh) >= asked) ?? steps.at(-1)!;
  return {
    fitted: bought,
    nameplateKwh,
    usableKwh: have + usableOf(home, nameplateKwh),
    parts: [
      part('battery', nameplateKwh, {
        code: 'battery-with-inverter',
        kwh: nameplateKwh,
        inverterWatts: null,
      }),
      ...(own === null ? [] : [ownBatteryPart(own)]),
      part('backup-subpanel'),
    ],
    ifs: besideOwn(home),
  };
}

function theirsAlone(home: Home, own: OwnBattery, fitted: Fitted): NightBattery {
  const { nameplateKwh, usableKwh } = own;
  const backed = backsUp(home);
  return {
    fitted,
    nameplateKwh,
    usableKwh,
    parts: [ownBatteryPart(own), ...(backed ? [] : [part('backup-subpanel')])],
    ifs: [...(backed ? [] : [NOT_BACKED]), ...reserveIfs(home)],
  };
}

const carriesAsMuch = (theirs: Fitted, bought: Fitted | null) =>
  bought === null || theirs.carried.length >= bought.carried.length;

function fitMust(
  home: Home,
  steps: readonly { watts: number; startVa: number }[],
  source: SourceName,
) {
  return fitPower({
    loads: loadsOf(home, ['must']),
    seasons: home.goalSeasons,
    steps,
    startEnd: 'high',
    maySoftStart: true,
    source,
  });
}
