import type { MeasureId } from '../../tables/measures';
import { internetHours, phonesOnce } from './by-need';
import { freezerTurns, fridgeTurns } from './cold-food-turns';
import type { Change } from './household';
import { laptopBought } from './laptop-bought';
import { oneRoom, roomUnit } from './one-room';
import { dcCord, softStarter, startOrder } from './starts';
import { boxesOff, cookOtherwise, lantern, laptopInstead, laundryLater } from './stays-off';
import { coolHigher, heatLower, stoveHeat, tighterHouse, ventedHeater } from './warm-and-cool';
import { hotWaterOnce, storedWater } from './water';

/** What each measure does to the loads: a row without a line here does not compile. */
export const changes: Readonly<Record<MeasureId, Change>> = {
  lantern,
  'internet-hours': internetHours,
  'phones-once': phonesOnce,
  'laptop-instead': laptopInstead,
  'laptop-bought': laptopBought,
  'fridge-turns': fridgeTurns,
  'freezer-turns': freezerTurns,
  'heat-lower': heatLower,
  'cool-higher': coolHigher,
  'stove-heat': stoveHeat,
  'vented-heater': ventedHeater,
  'one-room': oneRoom,
  'room-unit': roomUnit,
  'stored-water': storedWater,
  'hot-water-once': hotWaterOnce,
  'laundry-later': laundryLater,
  'cook-otherwise': cookOtherwise,
  'boxes-off': boxesOff,
  'dc-cord': dcCord,
  'start-order': startOrder,
  'soft-starter': softStarter,
  drafts: tighterHouse,
  insulation: tighterHouse,
};
