import type { Mismatch, PlainMismatch } from '../../../plan/contradictions/contradiction';
import { formatQuantity } from '../../../quantity/format-quantity';
import { shown } from '../../../quantity/shown';
import { sayLoadName } from '../loads/say-load-name';
import { sayBillFit, sayExpected } from '../money/say-bill-fit';
import { healthDeviceNames, motorNames } from './device-names';
import { plainContradictions } from './plain-contradictions';
import type { SaidContradiction } from './said-contradiction';
import { sayClockSpan } from './say-clock-span';

type WithFigures = Exclude<Mismatch, { readonly id: PlainMismatch }>;
type Say = { readonly [Id in WithFigures['id']]: (of: Of<Id>) => SaidContradiction };
type Of<Id> = Extract<WithFigures, { readonly id: Id }>;

/** Two answers that do not fit together, as they were given, and what settles it. */
export function sayContradiction(found: Mismatch): SaidContradiction {
  return found.id in plainContradictions
    ? plainContradictions[found.id as PlainMismatch]
    : (withFigures[found.id as WithFigures['id']] as (of: Mismatch) => SaidContradiction)(found);
}

const withFigures: Say = {
  'must-run-over-bill': ({ mustKwhPerDay, billKwhPerDay }) => ({
    answers: [
      `What must run comes to ${mustKwhPerDay.toFixed(1)} kWh a day at least.`,
      `The bill comes to ${billKwhPerDay.toFixed(1)} kWh a day in all.`,
    ],
    asks: 'Which is wrong: the hours, the watts, or the month of the bill?',
  }),
  'month-outside-year': ({ monthKwh, leastKwh, mostKwh }) => ({
    answers: [
      `One month used ${formatQuantity(monthKwh, 'kWh')}.`,
      `The twelve months lie between ${formatQuantity(leastKwh, 'kWh')} and ${formatQuantity(mostKwh, 'kWh')}.`,
    ],
    asks: 'Which is the right kWh? One of them may be dollars, two months together, or the bill of another home.',
  }),
  'cheap-hours-at-peak': ({ peak, cheap }) => ({
    answers: [
      `Power is dearest ${sayClockSpan(peak)}.`,
      `Power is cheapest ${sayClockSpan(cheap)}.`,
    ],
    asks: 'Which hours are dearest, and which are cheapest? Until you know, the lowest price counts in all hours outside the peak.',
  }),
  'bill-not-matched': ({ dollars, ownTariff, fit }) => ({
    answers: [
      `The bill was $${dollars}.`,
      `Its kWh at the prices ${ownTariff ? 'of your own tariff' : 'told'} come to ${sayExpected(fit.expected)}.`,
    ],
    asks: sayBillFit(fit),
  }),
  'goal-beyond-fuel': ({ goalHours, gallons, fuelHours }) => ({
    answers: [
      `You want to manage ${formatQuantity(goalHours, 'h')}.`,
      `${formatQuantity(gallons, 'gal')} of gasoline runs the generator with what must run for about ${shown(fuelHours, 'h')} and cannot be refilled.`,
    ],
    asks: 'Keep more fuel as far as the fire department allows, run less, or plan a shorter time?',
  }),
  'must-run-at-240': ({ loads }) => ({
    answers: [
      `These must run and need 240 V: ${loads.map(sayLoadName).join(', ')}.`,
      'The generator gives 120 V only.',
    ],
    asks: 'Is the generator really 120 V only? Then it cannot run these, whatever its watts.',
  }),
  'deep-pump-at-120': ({ depthFt }) => ({
    answers: [
      'The water pump runs on 120 V.',
      `The well is ${formatQuantity(depthFt, 'ft')} deep.`,
    ],
    asks: 'Is the pump breaker a double one? Pumps this deep are nearly always 240 V.',
  }),
  'pump-volts-amps': ({ hp, volts, tableAmps, amps }) => ({
    answers: [`The pump is ${formatQuantity(hp, 'hp')} on ${volts} V.`, `It runs at ${amps} A.`],
    asks: `Is the voltage or the number of amps read wrong? A ${formatQuantity(hp, 'hp')} motor at ${volts} V runs at about ${tableAmps} A.`,
  }),
  'start-below-run': ({ motor, runAmps, startAmps }) => ({
    answers: [`${motorNames[motor]} runs at ${runAmps} A.`, `It starts at ${startAmps} A.`],
    asks: 'Were the two numbers swapped? A motor starts with more than it runs with.',
  }),
  'over-outlet': ({ device, watts, outletWatts }) => ({
    answers: [
      `${healthDeviceNames[device]}: ${watts} W.`,
      `An ordinary outlet gives ${outletWatts} W.`,
    ],
    asks: 'Is the number amps x 10, or the start, instead of the running watts?',
  }),
  'charger-on-small-service': ({ chargerAmps, mainAmps }) => ({
    answers: [
      `The car charger's breaker is ${chargerAmps} A.`,
      `The main breaker is ${mainAmps} A.`,
    ],
    asks: 'Is the breaker of the car charger, or that of the house, read wrong? If both are right, a load calculation or a listed load manager is needed.',
  }),
  'main-over-bus': ({ mainAmps, busAmps }) => ({
    answers: [`The main breaker is ${mainAmps} A.`, `The panel's label says ${busAmps} A.`],
    asks: "Which number is right? A main larger than the panel may carry is an electrician's first job.",
  }),
  'normal-life-small-budget': ({ dollars }) => ({
    answers: [
      'Almost everything should go on as on any other day.',
      `At most ${shown(dollars, '$')} can be spent.`,
    ],
    asks: 'Which matters more: almost everything running, or the cost? A few things that count can be kept for little.',
  }),
  'apartment-with': ({ what }) => ({
    answers: [
      'The home is an apartment.',
      what === 'well'
        ? 'Water comes from a well of its own.'
        : 'It has a standby generator, solar panels or a home battery of its own.',
    ],
    asks: 'Is it an apartment? A well, a standby generator, a roof or a fixed battery of your own points to a house.',
  }),
  'roof-over-home': ({ roofSqFt, homeSqFt }) => ({
    answers: [
      `The sunny side of the roof is ${roofSqFt} sq ft.`,
      `The home is ${homeSqFt} sq ft inside.`,
    ],
    asks: 'Is the roof measured again? One side of it cannot be that much larger than the home.',
  }),
};
