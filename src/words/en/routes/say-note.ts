import { formatQuantity } from '../../../quantity/format-quantity';
import { shown } from '../../../quantity/shown';
import type { Note, PlainNote, PropaneUse } from '../../../routes/note';
import { sayLoadName } from '../loads/say-load-name';
import { sayBetweenBlocks, sayRunHours } from '../say-between-blocks';

const plain: Readonly<Record<PlainNote, string>> = {
  'counted-five-years-old': 'Counted at five years old, when about a tenth has faded.',
  'sized-for-life':
    'Sized for 9 years in 10, whenever the outage starts, because life may hang on it.',
  'soft-starter-counted': 'A soft starter on the compressor is counted in.',
  'sump-on-its-battery':
    'Caution: between the hours the sump pump hangs on its own battery; when that is empty, water rises.',
  'no-drain-between':
    'Caution: while the sewage pump stands still, let as little water as you can down the drains: it comes up again indoors.',
  'no-timetable-for-medicine':
    'Caution: never run the generator by such a timetable where the refrigerator holds medicine that must stay cold: it would warm up between the hours.',
  'water-rises-between':
    'Caution: water rises while the sump pump stands still. When water comes in, run the generator through, or give the pump a battery of its own.',
  'inverter-not-known':
    'Whether it is an inverter generator is not known, so it is taken to lend no more than a quarter over its running power when a motor starts.',
  'more-fuel-expected':
    'You expect to be able to buy more fuel; pumps need power too, so do not lean on it.',
  'no-refill-counted': 'No refill is counted on.',
  'charge-before-a-storm':
    'Charge it from the grid before a storm; without sun or a generator it cannot be refilled in the outage.',
  'ask-for-pure-sine': 'Ask for clean "pure sine" output and a safety listing.',
  'things-to-have-ready':
    'Working smoke and carbon monoxide alarms with batteries, lights, stored water, a cooler, a paper list of phone numbers, and a place to go.',
  'beside-any-larger-route':
    'It is worth having beside any larger route: it bridges the gap until that one gives power.',
  'service-and-test-runs': 'It needs service every year and a test run under load every month.',
  'vehicle-240-outlet':
    'Its 240 volt outlet may feed the house through an inlet and transfer equipment, where its maker allows it: ask an electrician. Each half of that outlet carries half its power. This plan counts cords alone.',
};

/** What is good to know of a route. */
export function sayNote(note: Note): string {
  if (typeof note === 'string') return plain[note];
  switch (note.code) {
    case 'runs-in-blocks':
      return `The generator runs about ${note.hours} hours a day, well loaded, in a block from the morning and one from the afternoon, and never while people sleep.`;
    case 'panels-spare-fuel':
      return `The panels you have spare fuel: about ${kwh(note.kwh)} on a middle day of ${note.season}.`;
    case 'nine-years-in-ten':
      return `To carry 9 ${note.seasons === 'any' ? 'years' : `${note.seasons}s`} in 10, whenever in them the outage starts, takes about ${kwh(note.kwh)} of usable storage.`;
    case 'counted-at-age':
      return `Counted at ${note.years} years old: ${kwh(note.usableKwh)} of its ${kwh(note.ofKwh)} can be used.`;
    case 'only-what-it-keeps':
      return `With only the share it keeps now, an outage without warning may find ${kwh(note.kwh)} in it.`;
    case 'by-timetable':
      return byTimetable(note);
    case 'no-timetable-for':
      return `Caution: never run the generator by such a timetable for the ${sayLoadName(note.called)}: it would stop between the hours.`;
    case 'less-on-this-fuel':
      return `On this fuel it gives about ${note.share < 0.15 ? 'a tenth' : 'a fifth'} less than on gasoline; the label for this fuel goes first (common practice, no source).`;
    case 'less-at-this-height':
      return `At this height and heat it gives about ${shown(note.watts, 'W')} of its ${shown(note.ofWatts, 'W')}.`;
    case 'kept-to-drive-away':
      return `${formatQuantity(note.miles, 'mi')} are kept to drive away with: ${kwh(note.kwh)} of its ${kwh(note.ofKwh)}, counted for a cold road.`;
    case 'vehicle-charge':
      return `Counted ${Math.round(100 * note.share)} % full when the power fails, it may give ${kwh(note.givesKwh)}; charged full before a storm, ${kwh(note.fullGivesKwh)}.`;
    case 'shared-tank':
      return sharedTank(note);
  }
}

const kwh = (amount: number) => formatQuantity(amount, 'kWh');

function byTimetable(note: Extract<Note, { code: 'by-timetable' }>): string {
  const lasts =
    note.lastsHours === null ? '' : `, and the fuel lasts about ${shown(note.lastsHours, 'h')}`;
  const still =
    note.still.length > 0
      ? ` and these stand still: ${note.still.map(sayLoadName).join(', ')}`
      : '';
  const runs = `Run only ${sayRunHours(note.runHours)}, it burns about ${formatQuantity(note.burnsPerDay, note.unit)} a day${lasts}; between those hours the house is without power${still}.`;
  return [runs, ...sayBetweenBlocks(note)].join(' ');
}

const propaneUses: Readonly<Record<PropaneUse, string>> = {
  heat: 'propane for heat of a hard winter day',
  'hot-water': 'propane for hot water',
  cooking: 'propane for cooking',
};

function sharedTank({
  gallons,
  housePerDay,
  uses,
}: Extract<Note, { code: 'shared-tank' }>): string {
  const [low, likely, high] = [housePerDay.low, housePerDay.value, housePerDay.high].map((gal) =>
    formatQuantity(Number(gal.toFixed(1)), 'gal'),
  );
  return `About ${formatQuantity(Math.round(gallons), 'gal')} can be burned from the tank, and the house burns from it too: about ${likely} a day (${low} to ${high}; ${uses.map((use) => propaneUses[use]).join(', ')}). Both are counted in how long it lasts.`;
}
