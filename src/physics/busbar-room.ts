import { mustBePositive, mustNotBeNegative } from '../quantity/must-be';

/** Ways to connect a source that the busbar's own numbers decide; see also the table of busbar routes. */
export type BusbarRoute = 'any-place' | 'opposite-end' | 'center-fed' | 'sum-of-breakers';

export interface BusbarRoom {
  readonly route: BusbarRoute;
  /** Largest 1.25 x source current the route leaves, A; 0 for none. */
  readonly sourceAt125Amps: number;
  /** Continuous output current of the source that gives, A. */
  readonly continuousAmps: number;
}

const CONTINUOUS = 1.25;

/**
 * Room for a power source on a panel's busbar, NEC 705.12, 2017 to 2023, by each route that holds here:
 * anywhere: 1.25 x source + main <= busbar; opposite end from the main, or one end of a center-fed dwelling panel:
 * 1.25 x source + main <= 1.2 x busbar; sum of breakers: all but the main <= busbar.
 * A position that is not known (null) gives no 120 % route; breakers not known give no sum route.
 * Sources already there are taken off every route, as 1.25 x their current (in the sum, as their breakers).
 */
export function busbarRoom(given: {
  busbarAmps: number;
  mainAmps: number;
  /** 1.25 x the current of sources already on this busbar, A. */
  existingSourcesAt125Amps: number;
  position: 'opposite-end' | 'center-fed-end' | 'elsewhere' | null;
  /** Sum of all load and supply breakers but the main, without the new one, A. */
  otherBreakersAmps: number | null;
}): BusbarRoom[] {
  mustBePositive('busbarAmps', given.busbarAmps, 'A');
  mustBePositive('mainAmps', given.mainAmps, 'A');
  mustNotBeNegative('existingSourcesAt125Amps', given.existingSourcesAt125Amps, 'A');
  const left = (limit: number) => limit - given.mainAmps - given.existingSourcesAt125Amps;
  const rooms = [room('any-place', left(given.busbarAmps))];
  if (given.position === 'opposite-end')
    rooms.push(room('opposite-end', left(1.2 * given.busbarAmps)));
  if (given.position === 'center-fed-end')
    rooms.push(room('center-fed', left(1.2 * given.busbarAmps)));
  if (given.otherBreakersAmps !== null) {
    rooms.push(room('sum-of-breakers', given.busbarAmps - given.otherBreakersAmps));
  }
  return rooms;
}

function room(route: BusbarRoute, amps: number): BusbarRoom {
  // Cut to a thousandth so that 1.2 x 200 - 200 does not come out a hair below 40.
  const sourceAt125Amps = Math.max(0, Math.round(amps * 1000) / 1000);
  return { route, sourceAt125Amps, continuousAmps: sourceAt125Amps / CONTINUOUS };
}
