import type { LoadId } from '../../home/loads/load-id';
import type { BetweenBlocks } from '../../routes/kinds/generator-blocks';
import type { Stretches } from '../../tables/run-hours';
import type { Line } from '../list/line';

/** Ways on where nothing within the money reaches the goal; each null where it leads nowhere. */
export interface WaysOn {
  /** The cheapest that reaches the goal, and how much more than the money told it takes, $; 0 where none was told. */
  readonly moreMoney: { readonly line: Line; readonly moreUsd: number } | null;
  /**
   * Where the money buys no source at all, or none that carries all for long: the first that a little more buys and that does so, or
   * does twice as much of the job, though it does not reach the goal; and how much more, $.
   */
  readonly littleMore: { readonly line: Line; readonly moreUsd: number } | null;
  /** How long an outage is carried through, 9 times in 10, with what must run: the longest within the money. */
  readonly shorterGoal: { readonly line: Line; readonly hours: number } | null;
  /** What goes so that the rest is carried to the goal within the money. */
  readonly lessCarried: { readonly line: Line; readonly without: readonly LoadId[] } | null;
  /** One warm or cool room in place of the whole home, whose heat or cooling is left out otherwise. */
  readonly oneRoom: OneRoom | null;
  /** The generator of the money told run by a timetable. */
  readonly timetable: Timetable | null;
}

export interface Timetable extends BetweenBlocks {
  readonly line: Line;
  /** The hours of the day in which it runs. */
  readonly runHours: Stretches;
  /** Fuel once its cans are filled, gal, and how long that lasts in those hours only, on hard days, h. */
  readonly gallons: number;
  readonly hours: number;
}

export interface OneRoom {
  /** Within the money, without the unit for the room; it need not reach the goal. */
  readonly line: Line;
  /** The heater or the air conditioner in the room, and what it costs, likely $. */
  readonly units: readonly LoadId[];
  readonly unitsUsd: number;
  /** It reaches the goal, and with what the room takes it is within the money: the whole job is done, though not in the whole home. */
  readonly doesItWithin: boolean;
  /** What is advised leaves out the heat or the cooling of the whole home; this is within the money with the unit, and lasts for long. */
  readonly keepsRoom: boolean;
  readonly heats: boolean;
  readonly cools: boolean;
}
