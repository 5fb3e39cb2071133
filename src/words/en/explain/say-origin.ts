import type { LoadName } from '../../../home/loads/load-name';
import type { Figure, Source } from '../../../quantity/figure';
import { formatQuantity } from '../../../quantity/format-quantity';
import type { Origin, OriginOf, PlainOrigin } from '../../../quantity/origin';
import type { HouseholdLoadId, HouseholdLoadRow } from '../../../tables/household-loads';
import type { OutageRecord } from '../../../tables/outage-statistics';
import { sayLoadRow } from '../loads/load-rows';
import { sayLoadName } from '../loads/say-load-name';
import { months } from '../months';
import { sayOutageRecord } from '../place/say-outage-record';
import { sayFigureName } from './figure-names';

const plain: Readonly<Record<PlainOrigin, string>> = {
  told: 'you told us',
  'label-read': 'the label you read',
  'not-known': 'assumed, because it is not known',
  measured: 'you measured it',
  'must-run': 'you said it must keep running',
  'there-already': 'you have it already',
  'worked-out': 'worked out',
  'sum-of-parts': 'the sum of its parts',
  'sum-of-measures': 'the sum of what its measures cost',
  'sum-of-usual-day':
    'the sum of all loads named, heating and cooling at an average day of the season',
  'one-at-least': 'at least one',
  'height-of-stations': 'height of the weather stations nearby',
  'lift-with-battery': 'usual for a lift with its own battery; common practice',
  'label-times-count': 'the label you read x how many there are',
  'heater-label': 'the label you read, usually run at 50 to 100 % of it',
  'sump-amps-read': 'amps on the label x 115 V x power factor 0.8 to 1',
  'start-multiple': '4 to 8 times the amps on the label x 115 V',
  'usual-of-size': 'typical for its size',
  'floor-area': 'one ton for 500 to 800 square feet, between 1.5 and 5 tons',
  'compressor-amps-read': 'running amps on the label x 240 V x power factor 0.9',
  'starts-as-it-runs': 'variable-speed: starts at about its running power',
  'compressor-labels': 'locked-rotor amps usual on labels of this size x 240 V (from memory)',
  judgement: 'our judgement',
  'plug-heater': 'a plug-in heater, low to high setting',
  'element-kilowatts': 'electric heating elements x 1000',
  'hours-a-day': 'power x hours a day',
  'minutes-a-day': 'running power x minutes a day, the same every day of the year',
  'storm-hour':
    'running power x minutes in the worst hour x 24; the drawn weather has no rain, so any day counts as a storm',
  'strips-in-the-cold':
    'strips start in hours colder than a hard day, when the heat pump lacks heat; at most the usual hours',
  'charger-breaker': 'breaker of the car charger x 192',
  'no-power': 'no power from this route',
  'cans-to-fill': 'assumed: cans of 5 gallons, two at most, which you would have to fill and keep',
  'no-tank': 'no propane tank is known',
  'hard-day-use': 'usable energy against the use of a hard day, idle draw and losses counted',
  'until-it-is-away': 'hours until it is away, from each hour of the day',
  'vehicle-fuel': 'the fuel in its tank is not known',
  'every-start': 'every hour of 100 drawn years as the start: reached by 9, by 5 and by 1 of 10',
  'fuel-line': 'fuel line of a small generator: idle burn plus fuel for each kWh',
  'share-of-tank': 'contents of the tank x own burn / all that burns from it',
  'fuel-over-burn': 'fuel at hand / fuel a day x 24',
  'usable-of-tank': '80 to 100 % of the gallons in the tank can be burned',
  'fuel-for-goal': 'fuel the goal takes, as far as the usual limit goes',
  walked: 'walked hour by hour over the drawn years, charge and fuel together',
  'bills-fit':
    'least squares of the twelve bills on the usual degree days of the place, base 65 F, month by month as this home heats and cools',
};

/** Where a figure comes from; empty where its steps or its citation say all there is to say. */
export function sayOrigin({ is, from }: Source): string {
  if (is === undefined) return '';
  return typeof is === 'string' ? plain[is] : named(is, from);
}

function named(is: OriginOf, from: Source['from']): string {
  switch (is.code) {
    case 'load-row':
      return ofRow(is.row as HouseholdLoadId, is.standing as HouseholdLoadRow['standing']);
    case 'times':
      return `${from?.map(called).join('')} x ${is.factor}`;
    case 'one-bill': {
      const solar = is.solarKwh > 0 ? ` + ${is.solarKwh} kWh of own solar` : '';
      return `${is.kwh} kWh on the bill${solar}, over ${is.days.toFixed(1)} days`;
    }
    case 'bills-of':
      return `your bills of ${is.months.map((month) => months[month]).join(' and ')}`;
    case 'set-by-bills':
      return `set by your ${is.bills} bills, x ${is.factor.toFixed(2)}`;
    case 'room-by-bills':
      return `what the bills say of the whole home, x ${is.factor.toFixed(2)}`;
    case 'allotment':
      return `an allotment a day, measure "${is.measure}"`;
    case 'left-by-measure':
      return `what is left of it with the measure "${is.measure}"`;
    case 'prices':
      return `prices of ${is.year}`;
    case 'price-range':
      return `price range of ${is.year}`;
    case 'start-read':
      return `locked-rotor amps on the label x ${is.volts} V`;
    case 'pump-amps-read':
      return `amps on the label x ${is.volts} V x power factor ${is.powerFactor}`;
    case 'soft-start':
      return `soft start: ${is.low} to ${is.high} times the running current`;
    case 'start-by-horsepower':
      return `locked-rotor amps of ${is.hp} hp at 115 V (${is.volts} V supply)`;
    case 'start-usual':
      return `usual for a ${is.wires}-wire pump of this size (from memory)`;
    case 'stored-water':
      return `stored water covers ${Math.round(100 * is.share)} % of what ${is.gallonsAPerson} gal a person a day ask`;
    case 'measured-less':
      return `${before(is.counted, from)}; you measured ${formatQuantity(is.read, is.unit)}, which is less and is not counted`;
    case 'hours-by-climate':
      return `running power x ${hours(is.hours)} on a hard ${is.season} day of this climate`;
    case 'hours-of-day': {
      const [low, likely, high] = is.hours;
      return `running power x ${likely} h (${low} to ${high} h)`;
    }
    case 'warm-kitchen':
      return `a day in a room at 70 °F x ${is.factor.toFixed(2)} for a kitchen as warm as outdoors`;
    case 'all-running':
      return `all running, with ${is.starting.map((one) => sayLoadName(one as LoadName)).join(' and ') || 'nothing'} starting`;
    case 'from-same-tank':
      return `${is.use}, from the same tank`;
    case 'state-average':
      return `the ${is.year} average of ${is.state}, because you were not sure${later(is.laterCents)}`;
    case 'outage-record':
      return `${sayOutageRecord(is.record as OutageRecord)}; and your own years`;
  }
}

/** What is multiplied. */
const called = ({ name, unit }: Figure) => (name === undefined ? unit : sayFigureName(name));

/** What was counted before somebody measured. */
const before = (is: Origin | undefined, from: Source['from']) =>
  sayOrigin({ kind: 'formula', is, from });

const hours = ([low, likely, high]: readonly [number, number, number]) =>
  `${likely.toFixed(1)} h (${low.toFixed(1)} to ${high.toFixed(1)} h)`;

const standings: Readonly<Record<HouseholdLoadRow['standing'], string>> = {
  published: '',
  practice: ' (common practice)',
  memory: ' (from memory)',
  judgement: ' (our judgement)',
};

const ofRow = (row: HouseholdLoadId, standing: HouseholdLoadRow['standing']) =>
  `typical for ${sayLoadRow(row).toLowerCase()}${standings[standing]}`;

/** The price has moved since: by how much, where a later month is known, and that it is not, where none is. */
const later = (cents: number | null) =>
  cents === null
    ? '; no later price of it is in our table, and prices have mostly risen since'
    : `; in April 2025 it was ${cents.toFixed(1)} cents`;
