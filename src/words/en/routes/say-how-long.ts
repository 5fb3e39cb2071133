import { formatQuantity } from '../../../quantity/format-quantity';
import { shown } from '../../../quantity/shown';
import type { HoursOf, HowLong } from '../../../routes/how-long';
import type { Lasting } from '../../../routes/route';
import { sayLoadName } from '../loads/say-load-name';
import { hoursRange } from './hours-range';

type Plain = 'cannot' | 'no-power' | 'needs-no-power' | 'while-fuel' | 'while-street-gas';

const plain: Readonly<Record<Plain, string>> = {
  cannot: 'It cannot be used here.',
  'no-power': 'It gives no power: what needs power stops when the outage begins.',
  'needs-no-power': 'As long as it takes: lived thriftily, what must keep running needs no power.',
  'while-fuel': 'It goes on while fuel can be had.',
  'while-street-gas':
    'It runs as long as the gas in the street does; that can fail in an earthquake or deep cold.',
};

/** How long a route lasts: "The gasoline (10 gal here) lasts about 30 h (careful count 20 h); you asked for 3 days." */
export function sayHowLong(lasting: Pick<Lasting, 'hours' | 'reachesGoal' | 'how'>): string {
  const { hours, how } = lasting;
  switch (how.code) {
    case 'against-goal':
      return againstGoal(lasting, how);
    case 'full-battery':
      return fullBattery(lasting, how);
    case 'dark-nights':
      return `It lasts ${hoursRange(hours!)}: on a hard night a full battery is empty before the morning, for the generator rests for ${shown(how.restHours, 'h')} while people sleep. It does not reach the ${shown(how.goalHours, 'h')} you asked for.`;
    case 'vehicle-away':
      return `While it stays at home, what may be taken from it lasts ${hoursRange(how.storeHours)}. ${how.told ? 'You said' : 'We count that'} it is away about ${how.awayHours} hours a day: nothing runs in those, so it is not counted as reaching the ${formatQuantity(how.goalHours, 'h')} you asked for.`;
    default:
      return plain[how.code];
  }
}

type Of<Code> = Extract<HowLong, { code: Code }>;
type Said = Pick<Lasting, 'hours' | 'reachesGoal'>;

function againstGoal({ hours, reachesGoal }: Said, { of, goalHours }: Of<'against-goal'>): string {
  const lasts = `${hoursOf(of)} lasts ${hoursRange(hours!)}`;
  const goal = formatQuantity(goalHours, 'h');
  // It stands behind the same count for the fuel that is here today.
  if (!reachesGoal && of.code === 'cans-filled')
    return `${lasts}: on a hard day less than the ${goal} you asked for, even so.`;
  return reachesGoal
    ? `${lasts}; you asked for ${goal}.`
    : `${lasts}. On a hard day it does not reach the ${goal} you asked for.`;
}

function fullBattery({ hours, reachesGoal }: Said, how: Of<'full-battery'>): string {
  const goal = formatQuantity(how.goalHours, 'h');
  const long =
    how.atLeastHours === null ? hoursRange(hours!) : `${atLeast(how.atLeastHours)} or more`;
  const what = how.byYears
    ? `an outage of ${goal} in 9 years in 10, whenever it starts`
    : `9 in 10 outages of ${goal}`;
  return reachesGoal
    ? `A full battery lasts ${long}. It carries at least ${what}.`
    : `A full battery lasts ${long}. It does not carry ${what}: that would take about ${formatQuantity(how.neededKwh, 'kWh')} of usable storage.`;
}

const TWO_WEEKS = 14 * 24;

const atLeast = (hours: number) => (hours > TWO_WEEKS ? formatQuantity(hours, 'h') : 'two weeks');

function hoursOf(given: HoursOf): string {
  switch (given.code) {
    case 'battery-and-fuel':
      return 'The battery with the fuel at hand';
    case 'unknown-fuel':
      return 'Its fuel, which we do not know,';
    case 'vehicle-store':
      return 'What may be taken from the vehicle';
    case 'propane-in-tank':
      return 'The propane in the tank';
    case 'fuel': {
      const gallons = formatQuantity(given.atHand.value, 'gal');
      const where = given.atHand.source.kind === 'assumed' ? 'not here yet' : 'here';
      return `The ${given.fuel} (${given.inTank ? gallons : `${gallons} ${where}`})`;
    }
    case 'cans-filled':
      return `Once the cans are filled (${formatQuantity(given.gallons, 'gal')} in all), it`;
    case 'full-pack':
      return `A full pack of ${given.kwh} kWh`;
    case 'one-job':
      return `${given.kwh} kWh for ${given.jobs.map(sayLoadName).join(' and ').toLowerCase()}`;
  }
}
