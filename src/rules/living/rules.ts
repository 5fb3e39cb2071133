import type { Rule } from '../rule';
import { candlesHeaters } from './candles-heaters';
import { charcoalIndoors } from './charcoal-indoors';
import { coldRoom } from './cold-room';
import { dryIce } from './dry-ice';
import { floodGo } from './flood-go';
import { foodClock } from './food-clock';
import { freezeCallFitter } from './freeze-call-fitter';
import { freezeDrain } from './freeze-drain';
import { gasStoveMatch } from './gas-stove-match';
import { heatNeedsPower } from './heat-needs-power';
import { heatOff } from './heat-off';
import { heatRoom } from './heat-room';
import { homePhoneDies } from './home-phone-dies';
import { internetDies } from './internet-dies';
import { noPhone } from './no-phone';
import { offGridHelp } from './off-grid-help';
import { outdoorCooking } from './outdoor-cooking';
import { outlastsPlan } from './outlasts-plan';
import { ovenHeat } from './oven-heat';
import { septicRestart } from './septic-restart';
import { smallPlugs } from './small-plugs';
import { sumpOwnBattery } from './sump-own-battery';
import { wellWater } from './well-water';
import { wildfireGo } from './wildfire-go';
import { woodFire } from './wood-fire';

/** Heat, cold, water, food and leaving, in printing order. */
export const livingRules: readonly Rule[] = [
  ovenHeat,
  charcoalIndoors,
  coldRoom,
  heatRoom,
  wildfireGo,
  floodGo,
  outlastsPlan,
  dryIce,
  noPhone,
  outdoorCooking,
  gasStoveMatch,
  woodFire,
  candlesHeaters,
  heatNeedsPower,
  heatOff,
  sumpOwnBattery,
  septicRestart,
  freezeDrain,
  freezeCallFitter,
  offGridHelp,
  homePhoneDies,
  wellWater,
  foodClock,
  smallPlugs,
  internetDies,
];
