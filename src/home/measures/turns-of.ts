import type { Home, Load } from '../home';
import type { LoadId } from '../loads/load-id';
import { livedHome } from './lived-home';

/** Hours of the day, from and until; from above until runs over midnight. */
export type Hours = readonly [from: number, until: number];

/** A thing that has power at set hours only in the thrifty way. */
export interface Turn {
  readonly load: LoadId;
  readonly hours: readonly Hours[];
}

/** What the thrifty way means by the hour: the things that are in turns, and when each has power. */
export function turnsOf(home: Home): Turn[] {
  const usual = livedHome(home, 'usual').loads;
  return livedHome(home, 'thrifty')
    .loads.filter((load) => load.rank !== 'wait' && usual.every((one) => one.shape !== load.shape))
    .map((load) => ({ load: load.id, hours: onHours(load) }))
    .filter(({ hours }) => hours.length > 0);
}

/** The stretches of the day in which it is on; none where it is on all day. */
export function onHours({ shape }: Pick<Load, 'shape'>): Hours[] {
  const on = (hour: number) => shape[(hour + 24) % 24]! > 0;
  const starts = shape.flatMap((_, hour) => (on(hour) && !on(hour - 1) ? [hour] : []));
  return starts.map((from) => {
    let until = from + 1;
    while (on(until)) until++;
    return [from, until > 24 ? until - 24 : until];
  });
}
