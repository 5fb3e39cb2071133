import type { Tariff } from '../bill/tariff/tariff';
import type { Home } from '../home/home';
import type { Answers } from '../interview/answers';
import { cheapHoursAtPeak, monthOutsideYear, mustRunOverBill } from './contradictions/bill';
import type { Check, Contradiction } from './contradictions/contradiction';
import { gasHeatWithoutGas } from './contradictions/gas';
import { goalBeyondFuel, mustRunAt240 } from './contradictions/generator';
import { deepPumpAt120, overOutlet, pumpVoltsAmps, startBelowRun } from './contradictions/motors';
import {
  chargerOnSmallService,
  fuseWithInterlock,
  inletWithoutSwitch,
  mainOverBus,
} from './contradictions/panel';
import {
  lifeWithoutSecondWay,
  nobodyForGenerator,
  normalLifeSmallBudget,
} from './contradictions/people-and-money';
import { apartmentWith, batteryBelowFlood, roofOverHome } from './contradictions/place';
import { billNotMatched } from './money/bill-contradiction';

/**
 * Every pair of answers of this home that does not fit together, from what was told, not from what we assumed.
 * `answers` as they stand in the file: a question that does not apply, such as the well of an apartment, is only there.
 */
export function contradictions(
  home: Home,
  answers: Answers,
  ownTariff: Tariff | null = null,
): Contradiction[] {
  return checks.flatMap((check) => check(home, answers, ownTariff) ?? []);
}

const checks: readonly Check[] = [
  lifeWithoutSecondWay,
  mainOverBus,
  chargerOnSmallService,
  fuseWithInterlock,
  inletWithoutSwitch,
  batteryBelowFlood,
  gasHeatWithoutGas,
  mustRunAt240,
  apartmentWith,
  deepPumpAt120,
  pumpVoltsAmps,
  startBelowRun,
  roofOverHome,
  overOutlet,
  mustRunOverBill,
  monthOutsideYear,
  cheapHoursAtPeak,
  (home, _, ownTariff) => billNotMatched(home, ownTariff),
  nobodyForGenerator,
  goalBeyondFuel,
  normalLifeSmallBudget,
];
