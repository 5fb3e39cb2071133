import type { BadCase, BadCaseHour, RouteRide } from '../../../plan/ride-through/ride-through';
import { formatQuantity } from '../../../quantity/format-quantity';
import type { Words } from '../../../words/words';

/** Of a short outage every six hours are shown, of a longer one the days. */
const SHORT_HOURS = 48;

/** The hard case of the route advised step by step, to hold what is left against on the day. */
export function sayHardCase({ title, badCase }: RouteRide, words: Words): string[] {
  if (badCase === null || badCase.hours.length === 0) return [];
  const columns = columnsOf(badCase);
  // Piped gas leaves nothing to read.
  if (columns.length === 1) return [];
  const cells = (steps: readonly BadCaseHour[]) => columns.map(({ of }) => of(steps)).join(' | ');
  return [
    `The hard case step by step (${words.inSentence(title)}). On the day, hold what is left against it: with less than this, switch off sooner.`,
    [
      `| After | ${columns.map(({ head }) => head).join(' | ')} |`,
      `|---|${columns.map(() => '---').join('|')}|`,
      ...stepsOf(badCase).map(
        (steps) => `| ${formatQuantity(steps.at(-1)!.hour + 1, 'h')} | ${cells(steps)} |`,
      ),
    ].join('\n'),
  ];
}

interface Column {
  readonly head: string;
  readonly of: (steps: readonly BadCaseHour[]) => string;
}

function columnsOf({ hours }: BadCase): Column[] {
  const kwh = (value: number) => formatQuantity(tenths(value), 'kWh');
  const sum = (steps: readonly BadCaseHour[], of: 'servedKw' | 'sunKw') =>
    steps.reduce((total, step) => total + step[of], 0);
  const took: Column = { head: 'It served', of: (steps) => kwh(sum(steps, 'servedKw')) };
  const sun: Column = { head: 'The sun gave', of: (steps) => kwh(sum(steps, 'sunKw')) };
  const charge: Column = {
    head: 'Left in the battery',
    of: (steps) => kwh(steps.at(-1)!.chargeKwh),
  };
  const fuel: Column = {
    head: 'Fuel left',
    of: (steps) => formatQuantity(tenths(steps.at(-1)!.fuelLeft!), 'gal'),
  };
  return [
    took,
    ...(hours.some((hour) => hour.sunKw > 0) ? [sun] : []),
    ...(hours.some((hour) => hour.chargeKwh > 0) ? [charge] : []),
    ...(hours.every((hour) => hour.fuelLeft !== null) ? [fuel] : []),
  ];
}

/** To a tenth where tenths are printed; a larger value is rounded once, in print. */
const tenths = (value: number) => (value < 100 ? Number(value.toFixed(1)) : value);

/** The hours in steps, up to the one in which it ends. */
function stepsOf({ hours, endsAfter }: BadCase): BadCaseHour[][] {
  const size = hours.length <= SHORT_HOURS ? 6 : 24;
  const shown = endsAfter === null ? hours.length : endsAfter + 1;
  const steps: BadCaseHour[][] = [];
  for (let from = 0; from < shown; from += size) steps.push(hours.slice(from, from + size));
  return steps;
}
