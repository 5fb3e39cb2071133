import type { Rule } from '../rule';
import { aboveFlood } from './above-flood';
import { batterySmoke } from './battery-smoke';
import { carImpact } from './car-impact';
import { chargingIndoors } from './charging-indoors';
import { fireDetector } from './fire-detector';
import { floodedLithium } from './flooded-lithium';
import { heaterOnPack } from './heater-on-pack';
import { homeMadeBattery } from './home-made-battery';
import { hotPlace } from './hot-place';
import { idleDraw } from './idle-draw';
import { leadAcidGas } from './lead-acid-gas';
import { noBlink } from './no-blink';
import { noFreezingCharge } from './no-freezing-charge';
import { notWhereYouSleep } from './not-where-you-sleep';
import { oldSolarNewBattery } from './old-solar-new-battery';
import { outsideStopBattery } from './outside-stop-battery';
import { overLimit } from './over-limit';
import { panelsInCold } from './panels-in-cold';
import { rapidShutdown } from './rapid-shutdown';
import { roofLoad } from './roof-load';
import { roofPathways } from './roof-pathways';
import { solarClaim } from './solar-claim';
import { solarDark } from './solar-dark';
import { solarLive } from './solar-live';
import { solarOverInverter } from './solar-over-inverter';
import { spacing } from './spacing';
import { storageLimits } from './storage-limits';
import { storageReserve } from './storage-reserve';
import { usableKwh } from './usable-kwh';
import { vehicleChargeLeft } from './vehicle-charge-left';
import { vehicleHouseOk } from './vehicle-house-ok';
import { winterSun } from './winter-sun';

/** Batteries, solar and vehicles, in printing order. */
export const batteryRules: readonly Rule[] = [
  batterySmoke,
  floodedLithium,
  solarLive,
  homeMadeBattery,
  notWhereYouSleep,
  overLimit,
  storageLimits,
  spacing,
  carImpact,
  fireDetector,
  aboveFlood,
  noFreezingCharge,
  panelsInCold,
  hotPlace,
  leadAcidGas,
  chargingIndoors,
  outsideStopBattery,
  vehicleHouseOk,
  rapidShutdown,
  roofPathways,
  roofLoad,
  solarClaim,
  solarDark,
  oldSolarNewBattery,
  solarOverInverter,
  winterSun,
  usableKwh,
  idleDraw,
  heaterOnPack,
  storageReserve,
  vehicleChargeLeft,
  noBlink,
];
