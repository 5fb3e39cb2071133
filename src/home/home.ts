import type { QuestionId } from '#compiled/question-ids.js';
import type { Figure } from '../quantity/figure';
import type { Season } from '../tables/household-loads';

import type { Place } from '../tables/place/place';
import type { BillYear } from './bill/bill-year';
import type { CalibrationFinding } from './bill/calibration';
import type { Facts } from './facts';
import type { LoadId } from './loads/load-id';
import type { LoadName } from './loads/load-name';

export type { Season };

export const seasons: readonly Season[] = ['winter', 'summer', 'mild'];

/** Must keep running; good to have; can wait. */
export type Rank = 'must' | 'good' | 'wait';

/** How a household lives in an outage: as usual, or with every measure that costs little, and in turns. */
export type Way = 'usual' | 'thrifty';

/** One thing in the home that uses electricity. */
export interface Load {
  readonly id: LoadId;
  readonly called: LoadName;
  readonly rank: Rank;
  /** Somebody's life or health hangs on it. */
  readonly life: boolean;
  readonly volts: 120 | 240;
  /** Real power while it runs, W. */
  readonly runningWatts: Figure;
  /** Apparent power while it runs, VA. */
  readonly runningVa: Figure;
  /** Current at the moment of starting, A at `volts`; null when it has no motor to start. */
  readonly startAmps: Figure | null;
  /** Apparent power at the moment of starting, VA; null when it has no motor to start. */
  readonly startVa: Figure | null;
  /** Starts without anybody: a pump, a fridge, a furnace. */
  readonly selfStarting: boolean;
  /** It fills a battery of its own, so that nothing stops while its source is switched off. */
  readonly ownBattery?: true;
  /** A household does without it for the time of an outage, or the same by hand, and nobody is harmed. */
  readonly otherwise?: true;
  /** It runs from a low-voltage outlet of a pack, whose inverter may rest meanwhile. */
  readonly dcFed?: true;
  /** Energy of a day in each season as the home normally uses it, kWh/day. */
  readonly kwhPerDay: Readonly<Record<Season, Figure>>;
  /** Share of the day's energy used in each hour 0-23; the shares sum to 1. */
  readonly shape: readonly number[];
  /** Of a thing that is on in turns: its shape on its thermostat, where whatever feeds it is on all day anyway. */
  readonly steadyShape?: readonly number[];
  /** Grows with cold, with heat, with both, with a warm room (cold food), or with neither. */
  readonly follows: 'cold' | 'heat' | 'both' | 'room' | 'neither';
  /** Heat by a heat pump, which gives less for a kWh the colder it is; or by strips, for what the pump lacks. */
  readonly heatsBy?: 'pump' | 'strips';
  /** Runs from an ordinary outlet: can be moved to a pack or a cord. Else it is wired in. */
  readonly plugIn: boolean;
  /** Too big for any backup route: switched off in an outage (car charging, dryer, strip heat). */
  readonly offInOutage: boolean;
  /** Taken into use only in an outage: it is in no bill and in no panel calculation. */
  readonly onlyInOutage?: true;
  /** A heater that must plug straight into a wall outlet: no cord and no pack feeds it. */
  readonly wallOutletOnly?: true;
  /** A heater that is never left on while everybody sleeps. */
  readonly awakeOnly?: true;
  /** Questions whose answers it rests on. */
  readonly restsOn: readonly QuestionId[];
}

/** What the loads of some ranks add up to. */
export interface Demand {
  /** Continuous power with everything on that may be on together, W. */
  readonly runningWatts: Figure;
  readonly runningVa: Figure;
  /** The hardest start on top of what runs, VA: largest plus the next largest that starts by itself. */
  readonly startVa: Figure;
  /** Energy a day by season, kWh/day. */
  readonly kwhPerDay: Readonly<Record<Season, Figure>>;
  /** Average power by hour of day and season, W, likely values. */
  readonly wattsByHour: Readonly<Record<Season, readonly number[]>>;
  readonly needs240: boolean;
  /** The load with the largest start, or null. */
  readonly hardestStart: LoadId | null;
  /** The loads that start at that moment: the largest, and the next that starts by itself. */
  readonly startsTogether: readonly LoadId[];
}

/** What was found when the loads were held against the bill. */
export type BillCheck =
  | { readonly verdict: 'not-possible'; readonly because: 'no-bill' | 'own-solar-not-known' }
  | {
      readonly verdict: 'fits' | 'loads-over-bill' | 'loads-likely-high';
      /** The verdict, and of what fits whether the bill is above even the high end of the loads. */
      readonly code: 'fits' | 'bill-above-loads' | 'loads-over-bill' | 'loads-likely-high';
      /** Months of the bills, January 0; null where one bill was told. */
      readonly months: readonly number[] | null;
      readonly billKwhPerDay: Figure;
      readonly loadsKwhPerDay: Figure;
      readonly season: Season;
    };

/** Where the home stands. */
export interface Site {
  readonly zip: string | null;
  /** Place, stations and climate, with how they were found. */
  readonly place: Place;
  /** Two-letter state, or null when nothing tells. */
  readonly state: string | null;
  readonly elevationFt: Figure;
  /** Cold and hot extremes outdoors, F: exceeded 99 % and 1 % of hours. */
  readonly coldF: number;
  readonly hotF: number;
  /** The coldest people remember, F; told only where no ZIP code was. */
  readonly lowestToldF?: number;
}

/** The household and its building, as the plan sees them. */
export interface Home {
  /** How `loads` and `demand` are counted; the other way is `livedHome` of `home/measures`. */
  readonly way: Way;
  readonly name: string;
  readonly asOf: string;
  readonly facts: Facts;
  readonly site: Site;
  readonly people: Figure;
  /** Someone depends on a powered device for life: oxygen, ventilator, dialysis, heart pump, or it is not known. */
  readonly lifeSupport: 'yes' | 'no' | 'unknown';
  readonly loads: readonly Load[];
  /** The same home on an ordinary day: what its bills and its year of hours are made of. */
  readonly usualLoads: readonly Load[];
  /** Sums for life and must-run loads; these with good-to-have; and everything that may run in an outage. */
  readonly demand: Readonly<Record<'must' | 'good' | 'all', Demand>>;
  /** How long the household wants to manage, h. */
  readonly goalHours: Figure;
  /** Seasons the plan must work in. */
  readonly goalSeasons: readonly Season[];
  /** Twelve months of the meter, where they were told. */
  readonly billYear: BillYear | null;
  readonly billCheck: BillCheck;
  /** What two or twelve bills say of heating or cooling, where they were given. */
  readonly calibration: CalibrationFinding | null;
}
