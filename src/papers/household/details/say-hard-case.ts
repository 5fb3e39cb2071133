import type { BadCase, BadCaseHour, RouteRide } from '../../../plan/ride-through/ride-through';
import type { Words } from '../../../words/words';
import { table } from '../../markdown/table';

/** Of a short outage every six hours are shown, of a longer one the days. */
const SHORT_HOURS = 48;

/** The hard case of the route advised step by step, to hold what is left against on the day. */
export function sayHardCase({ called, badCase }: RouteRide, words: Words): string[] {
  if (badCase === null || badCase.hours.length === 0) return [];
  const columns = columnsOf(badCase, words);
  // Piped gas leaves nothing to read.
  if (columns.length === 1) return [];
  const say = words.household.hardCase;
  const row = (steps: readonly BadCaseHour[]) => [
    say.hours(steps.at(-1)!.hour + 1),
    ...columns.map(({ of }) => of(steps)),
  ];
  return [
    say.about(words.routeTitle(called)),
    table([say.after, ...columns.map(({ head }) => head)], stepsOf(badCase).map(row)),
  ];
}

interface Column {
  readonly head: string;
  readonly of: (steps: readonly BadCaseHour[]) => string;
}

function columnsOf({ hours }: BadCase, words: Words): Column[] {
  const say = words.household.hardCase;
  const sum = (steps: readonly BadCaseHour[], of: 'servedKw' | 'sunKw') =>
    steps.reduce((total, step) => total + step[of], 0);
  const took: Column = { head: say.served, of: (steps) => say.kwh(sum(steps, 'servedKw')) };
  const sun: Column = { head: say.sun, of: (steps) => say.kwh(sum(steps, 'sunKw')) };
  const charge: Column = { head: say.charge, of: (steps) => say.kwh(steps.at(-1)!.chargeKwh) };
  const fuel: Column = { head: say.fuel, of: (steps) => say.gallons(steps.at(-1)!.fuelLeft!) };
  return [
    took,
    ...(hours.some((hour) => hour.sunKw > 0) ? [sun] : []),
    ...(hours.some((hour) => hour.chargeKwh > 0) ? [charge] : []),
    ...(hours.every((hour) => hour.fuelLeft !== null) ? [fuel] : []),
  ];
}

/** The hours in steps, up to the one in which it ends. */
function stepsOf({ hours, endsAfter }: BadCase): BadCaseHour[][] {
  const size = hours.length <= SHORT_HOURS ? 6 : 24;
  const shown = endsAfter === null ? hours.length : endsAfter + 1;
  const steps: BadCaseHour[][] = [];
  for (let from = 0; from < shown; from += size) steps.push(hours.slice(from, from + size));
  return steps;
}
