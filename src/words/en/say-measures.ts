import type { MeasureId, MeasureRow, NotWhere } from '../../tables/measures';
import { clockStretch } from './clock-hour';

/** What a measure is, and what it costs in comfort or takes care of. */
export interface MeasureWords {
  /** What to do, as a short order. */
  readonly does: string;
  /** How it stands in a list of what thrifty means. */
  readonly short: string;
  /** The comfort given up, or the care it asks for, in one sentence. */
  readonly gives: string;
}

const measures: Readonly<Record<MeasureId, MeasureWords>> = {
  lantern: {
    does: 'Use a battery lantern for each person, and leave the lights of the house off.',
    short: 'battery lanterns for the lights',
    gives: 'One light moves with you, and the other rooms stay dark.',
  },
  'internet-hours': {
    does: 'Switch the internet box on at set hours.',
    short: 'internet at set hours',
    gives:
      'Nobody is online in between; if a home phone or an alarm button hangs on the box, leave it on.',
  },
  'phones-once': {
    does: 'Charge each phone once a day, while the internet is on.',
    short: 'phones charged once a day',
    gives: 'Phones stay in low-power mode, and nobody watches films on them.',
  },
  'laptop-instead': {
    does: 'Work on the laptop you have, and leave the desk computer off.',
    short: 'the laptop for the desk computer',
    gives: 'Two people take turns on one machine.',
  },
  'laptop-bought': {
    does: 'Work on a laptop in place of the desk computer.',
    short: 'a laptop for the desk computer',
    gives: 'Your files have to be on it before the power fails.',
  },
  'fridge-turns': {
    does: 'Run the refrigerator in turns, with a thermometer and a timer, and keep its door shut.',
    short: 'the refrigerator in turns',
    gives:
      'Open it only at mealtimes, give it power sooner if it goes above 40 °F, and throw out food that was above 40 °F for over 2 hours.',
  },
  'freezer-turns': {
    does: 'Run the freezer in turns, with a thermometer, and keep its lid shut.',
    short: 'the freezer in turns',
    gives: 'Take food out once a day, and give it power sooner if ice begins to melt.',
  },
  'heat-lower': {
    does: 'Set the heat lower.',
    short: 'the heat set lower',
    gives: 'You wear a sweater indoors and sleep under more blankets.',
  },
  'cool-higher': {
    does: 'Set the cooling higher.',
    short: 'the cooling set higher',
    gives: 'Rooms are warm, so drink water and rest at midday.',
  },
  'stove-heat': {
    does: 'Warm one room with the stove or heater that needs no power, and leave the main heat off.',
    short: 'one room warmed by the stove, the main heat off',
    gives:
      'You live in one room and tend the fire; the chimney is swept, a carbon monoxide alarm works, and it never burns unwatched.',
  },
  'vented-heater': {
    does: 'Have a listed gas heater fitted that needs no power and has its own pipe to the outside.',
    short: 'a gas heater with its own pipe outside',
    gives: 'It warms one or two rooms; the rest of the home gets cold.',
  },
  'one-room': {
    does: 'Live in one warm room, with one plug-in heater straight on a wall outlet.',
    short: 'one warm room',
    gives: 'All of you sit and sleep in one room, and the heater is off while all sleep.',
  },
  'room-unit': {
    does: 'Cool one room with a window unit of the variable-speed (inverter) kind, which starts softly, in place of the whole home.',
    short: 'one cool room',
    gives: 'All of you sit and sleep in the one cool room.',
  },
  'stored-water': {
    does: 'Fill jugs with drinking water ahead, so that the well pump can rest.',
    short: 'stored water for the well pump',
    gives: 'You wash at a basin and flush with a bucket.',
  },
  'hot-water-once': {
    does: 'Heat the water tank once a day, in the morning.',
    short: 'the water heated once a day',
    gives: 'Showers are short and come one after the other.',
  },
  'laundry-later': {
    does: 'Leave clothes and dishes in the machines until the power is back.',
    short: 'laundry later',
    gives: 'Dishes are washed by hand.',
  },
  'cook-otherwise': {
    does: 'Cook without electricity: on the gas stove top lit with a match, or outdoors.',
    short: 'cooking without electricity',
    gives:
      'A gas stove top is for food only, with a window open; a grill or camp stove stays outdoors.',
  },
  'boxes-off': {
    does: 'Unplug what is always on and nobody needs.',
    short: 'chargers and boxes unplugged',
    gives: 'Clocks and recorders have to be set again.',
  },
  'dc-cord': {
    does: "Run the breathing mask from the 12-volt outlet of the pack, with its maker's own cord.",
    short: 'the mask on its 12-volt cord',
    gives: 'Ask the supplier for the right cord, and try it for one night before you need it.',
  },
  'start-order': {
    does: 'Switch motors on one after the other, the largest first.',
    short: 'motors started one by one',
    gives: 'It takes a minute at the panel; no size in this plan counts on it.',
  },
  'soft-starter': {
    does: 'Have a soft starter put on the compressor.',
    short: 'a soft starter',
    gives: 'Nothing is given up; the fitter has to say that it suits your unit.',
  },
  drafts: {
    does: 'Seal drafts at doors and windows.',
    short: 'drafts sealed',
    gives: 'Nothing is given up; never seal the air that a stove or a gas heater needs.',
  },
  insulation: {
    does: 'Have air leaks sealed and insulation added.',
    short: 'insulation',
    gives: 'Nothing is given up; it is work for a season without storms.',
  },
};

const notWhere: Readonly<Record<NotWhere, string>> = {
  'cold-harms': 'where a cold room makes somebody ill',
  'heat-harms': 'where a hot room makes somebody ill',
  'no-other-phone': 'where no phone works without it',
  'medicine-in-fridge': 'where medicine is kept in it',
  'pipes-may-freeze': 'where pipes may freeze',
  'no-stove': 'where there is no stove with a chimney and no heater with a pipe outside',
  'stove-there': 'where such a stove is there already',
  'no-gas': 'where there is no gas',
  'no-other-cooking': 'where there is no other safe way to cook',
  'animals-outside': 'where animals outside need the water',
  dialysis: 'where somebody has dialysis at home',
  rented: 'where the home is not yours to change',
};

const who: Readonly<Record<MeasureRow['who'], string>> = {
  household: 'you can do it',
  'gas-fitter': 'a licensed gas fitter, with a permit',
  'cooling-fitter': 'a heating and cooling fitter',
  contractor: 'a contractor',
};

export const sayMeasure = (id: MeasureId): MeasureWords => measures[id];
export const sayNotWhere = (code: NotWhere): string => notWhere[code];
export const sayWhoMay = (by: MeasureRow['who']): string => who[by];

/**
 * "7 to 8 am and 7 to 9 pm"; midnight is 24 where a stretch ends and 0 where it begins. "until" where a reader must not
 * take them for a range.
 */
export function sayHours(
  hours: readonly (readonly [from: number, until: number])[],
  between: 'to' | 'until' = 'to',
): string {
  const each = hours.map((stretch) => clockStretch(stretch, between));
  return each.length <= 1 ? (each[0] ?? '') : `${each.slice(0, -1).join(', ')} and ${each.at(-1)}`;
}
