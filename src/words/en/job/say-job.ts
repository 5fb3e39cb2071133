import type { Season } from '../../../home/home';
import type { Job, MustOfJob } from '../../../plan/job';
import type { Figure } from '../../../quantity/figure';
import { formatQuantity } from '../../../quantity/format-quantity';
import { shownRange } from '../../../quantity/shown';
import { inSentence, listOf } from '../list-of';
import { loadName } from '../load-names';
import type { Named } from '../named';
import { sayOneRoom } from './say-one-room';

/** The job of this home in three sentences: what must run and for how long, how hard that is, what it takes in a day. */
export function sayJob({ goalHours, seasons, must }: Job, home: Named): string[] {
  const goal = `${formatQuantity(goalHours, 'h')} ${inSeasons(seasons)}`;
  if (must === null) {
    return [
      `You want to manage for ${goal}, and nothing was named that must keep running.`,
      'So this plan is about getting ready, not about equipment.',
      'Name what must not stop and the plan will work out what it takes.',
    ];
  }
  const names = (ids: MustOfJob['loads']) => ids.map((id) => inSentence(loadName(home, id)));
  const oneRoom = must.oneRoom === null ? [] : sayOneRoom(must.oneRoom, home);
  return [
    [`Keep the ${listOf(names(must.loads))} running for ${goal}.`, ...oneRoom].join(' '),
    `${allOf(names(must.tooMuch))} running at once is ${range(must.runningWatts, 'W')}; the hardest moment, when ${startMoment(names(must.startsTogether))}, asks for ${range(must.startVa, 'VA')}.`,
    `A hard ${must.hardSeason} day takes ${range(must.kwhOfHardDay, 'kWh')}.`,
  ];
}

const inSeasons = (seasons: readonly Season[]) =>
  seasons.length > 1 ? 'in winter and in summer' : `in ${seasons[0]}`;

const range = ({ low, value, high }: Figure, unit: string) =>
  shownRange({ low, value, high }, unit);

/** What draws too much for any backup is named, and stands beside the sum instead of in it. */
function allOf(tooMuch: readonly string[]): string {
  if (tooMuch.length === 0) return 'All of that';
  return `The ${listOf(tooMuch)} draws more than any backup here carries and stays off in an outage. All the rest`;
}

function startMoment(names: readonly string[]): string {
  if (names.length === 0) return 'everything is switched on';
  const the = listOf(names.map((name) => `the ${name}`));
  return names.length === 1 ? `${the} starts` : `${the} start together`;
}
