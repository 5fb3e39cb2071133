import type { Rule } from '../rule';
import { altitude } from './altitude';
import { apartmentNoGenerator } from './apartment-no-generator';
import { backfeedFound } from './backfeed-found';
import { coAlarmFirst } from './co-alarm-first';
import { coDistance } from './co-distance';
import { coShutoffNoSubstitute } from './co-shutoff-no-substitute';
import { cordReaches } from './cord-reaches';
import { cordsHeavy } from './cords-heavy';
import { fixedGeneratorExhaust } from './fixed-generator-exhaust';
import { fuelInWrongPlace } from './fuel-in-wrong-place';
import { fuelRunsOut } from './fuel-runs-out';
import { fuelStorage } from './fuel-storage';
import { fuelTooMuch } from './fuel-too-much';
import { gasLeakSelfStart } from './gas-leak-self-start';
import { gasMeter } from './gas-meter';
import { generatorChargesBattery } from './generator-charges-battery';
import { generatorExercise } from './generator-exercise';
import { generatorOil } from './generator-oil';
import { generatorTooClose } from './generator-too-close';
import { hybridStartsItself } from './hybrid-starts-itself';
import { neighborsOpenings } from './neighbors-openings';
import { noBackfeed } from './no-backfeed';
import { noOperator } from './no-operator';
import { noise } from './noise';
import { outsideStopGenerator } from './outside-stop-generator';
import { porchCarport } from './porch-carport';
import { propaneCold } from './propane-cold';
import { propaneUpright } from './propane-upright';
import { quakeValve } from './quake-valve';
import { refuelCool } from './refuel-cool';
import { startWatts } from './start-watts';
import { twoOperators } from './two-operators';
import { wetWeather } from './wet-weather';

/** Generators, their exhaust, fuel and cords, in printing order. */
export const generatorRules: readonly Rule[] = [
  backfeedFound,
  noBackfeed,
  apartmentNoGenerator,
  coDistance,
  porchCarport,
  generatorTooClose,
  neighborsOpenings,
  fixedGeneratorExhaust,
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
  outsideStopGenerator,
  noOperator,
  twoOperators,
  fuelRunsOut,
  startWatts,
  altitude,
  propaneCold,
  quakeValve,
  generatorChargesBattery,
  generatorExercise,
  generatorOil,
  noise,
];
