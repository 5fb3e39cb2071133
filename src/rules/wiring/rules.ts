import type { Rule } from '../rule';
import { allStartAtOnce } from './all-start-at-once';
import { aluminumWiring } from './aluminum-wiring';
import { autoTransferCapacity } from './auto-transfer-capacity';
import { balanceLegs } from './balance-legs';
import { busSum } from './bus-sum';
import { carOff } from './car-off';
import { carOnSmallService } from './car-on-small-service';
import { circuitMap } from './circuit-map';
import { coolingStart } from './cooling-start';
import { furnaceFlame } from './furnace-flame';
import { gfciTrips } from './gfci-trips';
import { inletSign } from './inlet-sign';
import { interlockOrder } from './interlock-order';
import { knobAndTube } from './knob-and-tube';
import { knownBadPanel } from './known-bad-panel';
import { largestLoad } from './largest-load';
import { mainOverBus } from './main-over-bus';
import { manufacturedFeeder } from './manufactured-feeder';
import { neutralBond } from './neutral-bond';
import { oldWiringUnknown } from './old-wiring-unknown';
import { oneLeg120 } from './one-leg-120';
import { panelDamage } from './panel-damage';
import { panelWorkLicensed } from './panel-work-licensed';
import { powerReturns } from './power-returns';
import { pumpNeeds240 } from './pump-needs-240';
import { pumpStart } from './pump-start';
import { serviceLoad } from './service-load';
import { solarWithGenerator } from './solar-with-generator';
import { splitPanel } from './split-panel';
import { stripsOff } from './strips-off';
import { supply208 } from './supply-208';
import { supplyVoltsUnknown } from './supply-volts-unknown';
import { transferListed } from './transfer-listed';
import { ungroundedOutlets } from './ungrounded-outlets';
import { watchForPower } from './watch-for-power';
import { waterHeaterOff } from './water-heater-off';

/** Panel, transfer, neutral and service, in printing order. */
export const wiringRules: readonly Rule[] = [
  panelWorkLicensed,
  interlockOrder,
  transferListed,
  neutralBond,
  oneLeg120,
  solarWithGenerator,
  knownBadPanel,
  panelDamage,
  mainOverBus,
  aluminumWiring,
  knobAndTube,
  oldWiringUnknown,
  manufacturedFeeder,
  splitPanel,
  ungroundedOutlets,
  pumpNeeds240,
  pumpStart,
  coolingStart,
  allStartAtOnce,
  autoTransferCapacity,
  largestLoad,
  furnaceFlame,
  gfciTrips,
  stripsOff,
  carOff,
  waterHeaterOff,
  balanceLegs,
  circuitMap,
  watchForPower,
  powerReturns,
  supply208,
  supplyVoltsUnknown,
  carOnSmallService,
  serviceLoad,
  busSum,
  inletSign,
];
