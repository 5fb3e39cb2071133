import type { Rule } from '../rule';
import { altitude } from './altitude';
import { apartmentNoEngine } from './apartment-no-engine';
import { backfeedFound } from './backfeed-found';
import { coAlarmFirst } from './co-alarm-first';
import { coDistance } from './co-distance';
import { coShutoffNoSubstitute } from './co-shutoff-no-substitute';
import { cordReaches } from './cord-reaches';
import { cordsHeavy } from './cords-heavy';
import { engineChargesBattery } from './engine-charges-battery';
import { engineExercise } from './engine-exercise';
import { engineOil } from './engine-oil';
import { engineTooClose } from './engine-too-close';
import { fixedEngineExhaust } from './fixed-engine-exhaust';
import { fuelInWrongPlace } from './fuel-in-wrong-place';
import { fuelRunsOut } from './fuel-runs-out';
import { fuelStorage } from './fuel-storage';
import { fuelTooMuch } from './fuel-too-much';
import { gasLeakSelfStart } from './gas-leak-self-start';
import { gasMeter } from './gas-meter';
import { hybridStartsItself } from './hybrid-starts-itself';
import { neighborsOpenings } from './neighbors-openings';
import { noBackfeed } from './no-backfeed';
import { noOperator } from './no-operator';
import { noise } from './noise';
import { outsideStopEngine } from './outside-stop-engine';
import { porchCarport } from './porch-carport';
import { propaneCold } from './propane-cold';
import { propaneUpright } from './propane-upright';
import { quakeValve } from './quake-valve';
import { refuelCool } from './refuel-cool';
import { startWatts } from './start-watts';
import { twoOperators } from './two-operators';
import { wetWeather } from './wet-weather';

/** Engines, their exhaust, fuel and cords, in printing order. */
export const engineRules: readonly Rule[] = [
  backfeedFound,
  noBackfeed,
  apartmentNoEngine,
  coDistance,
  porchCarport,
  engineTooClose,
  neighborsOpenings,
  fixedEngineExhaust,
  coAlarmFirst,
  coShutoffNoSubstitute,
  hybridStartsItself,
  gasLeakSelfStart,
  cordReaches,
  refuelCool,
  fuelInWrongPlace,
  fuelTooMuch,
  fuelStorage,
  cordsHeavy,
  wetWeather,
  propaneUpright,
  gasMeter,
  outsideStopEngine,
  noOperator,
  twoOperators,
  fuelRunsOut,
  startWatts,
  altitude,
  propaneCold,
  quakeValve,
  engineChargesBattery,
  engineExercise,
  engineOil,
  noise,
];
