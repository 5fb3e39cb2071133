import type { Rule } from '../rule';
import { backfeedFound } from './backfeed-found';
import { coAlarmFirst } from './co-alarm-first';
import { coDistance } from './co-distance';
import { coShutoffNoSubstitute } from './co-shutoff-no-substitute';
import { cordsHeavy } from './cords-heavy';
import { engineTooClose } from './engine-too-close';
import { fixedEngineExhaust } from './fixed-engine-exhaust';
import { fuelInWrongPlace } from './fuel-in-wrong-place';
import { fuelStorage } from './fuel-storage';
import { hybridStartsItself } from './hybrid-starts-itself';
import { noBackfeed } from './no-backfeed';
import { porchCarport } from './porch-carport';
import { refuelCool } from './refuel-cool';
import { wetWeather } from './wet-weather';

/** Engines, their exhaust, fuel and cords, in printing order. */
export const engineRules: readonly Rule[] = [
  backfeedFound,
  noBackfeed,
  coDistance,
  porchCarport,
  engineTooClose,
  fixedEngineExhaust,
  coAlarmFirst,
  coShutoffNoSubstitute,
  hybridStartsItself,
  refuelCool,
  fuelInWrongPlace,
  fuelStorage,
  cordsHeavy,
  wetWeather,
];
