import { hardestSeason } from '../advice/hardest-season';
import type { Home } from '../home/home';
import { loadNames } from '../home/loads/load-names';
import { formatQuantity, formatRange } from '../quantity/format-quantity';
import { mustLoads } from '../routes/must-carried';
import { inSentence, listOf } from '../words/en/list-of';
import { oneRoomWords } from './one-room-words';

/** The job of this home in three sentences: what must run and for how long, how hard that is, what it takes in a day. */
export function jobOf(home: Home): string[] {
  const must = home.demand.must;
  const told = mustLoads(home);
  const names = told.map((l) => inSentence(l.name));
  const tooMuch = told.filter((l) => l.offInOutage).map((l) => inSentence(l.name));
  const hours = formatQuantity(home.goalHours.value, 'h');
  const season =
    home.goalSeasons.length > 1 ? 'in winter and in summer' : `in ${home.goalSeasons[0]}`;
  if (names.length === 0) {
    return [
      `You want to manage for ${hours} ${season}, and nothing was named that must keep running.`,
      'So this plan is about getting ready, not about equipment.',
      'Name what must not stop and the plan will work out what it takes.',
    ];
  }
  const start = formatRange(must.startVa.low, must.startVa.value, must.startVa.high, 'VA');
  const watts = formatRange(
    must.runningWatts.low,
    must.runningWatts.value,
    must.runningWatts.high,
    'W',
  );
  const season1 = hardestSeason(home);
  const day = must.kwhPerDay[season1];
  const kwh = formatRange(day.low, day.value, day.high, 'kWh');
  return [
    [`Keep the ${listOf(names)} running for ${hours} ${season}.`, ...oneRoomWords(home)].join(' '),
    `${allOf(tooMuch)} running at once is ${watts}; the hardest moment, when ${startMoment(loadNames(home, must.startsTogether))}, asks for ${start}.`,
    `A hard ${season1} day takes ${kwh}.`,
  ];
}

/** What draws too much for any backup is named, and stands beside the sum instead of in it. */
function allOf(tooMuch: readonly string[]): string {
  if (tooMuch.length === 0) return 'All of that';
  return `The ${listOf(tooMuch)} draws more than any backup here carries and stays off in an outage. All the rest`;
}

function startMoment(names: readonly string[]): string {
  if (names.length === 0) return 'everything is switched on';
  const the = listOf(names.map((name) => `the ${inSentence(name)}`));
  return names.length === 1 ? `${the} starts` : `${the} start together`;
}
