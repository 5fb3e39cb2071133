import type { NeedId, ThingId, ThingThere } from '../../../plan/what-is-there/thing';
import { formatQuantity } from '../../../quantity/format-quantity';
import { inSentence, listOf } from '../list-of';
import { sayRouteTitle } from '../routes/route-titles';
import { usd } from '../say-dollars';

const things: Readonly<Record<ThingId, string>> = {
  generator: 'Portable generator',
  standby: 'Standby generator',
  pack: 'Power pack',
  battery: 'Home battery',
  ups: 'Small battery for a computer or router',
  solar: 'Solar panels',
  'vehicle-battery': 'Electric vehicle with outlets',
  'vehicle-engine': 'Vehicle with an engine and outlets',
  switch: 'Transfer equipment',
  stove: 'Stove or heater that needs no power',
  water: 'Stored water',
  cords: 'Heavy outdoor cords',
  'thin-cords': 'Thin cords',
};

const needs: Readonly<Record<NeedId, string>> = {
  outdoors: 'it runs outdoors, 20 feet from every door, window and vent',
  fuel: 'fresh fuel is stored',
  connection: 'it has a safe way in: heavy cords, or an inlet with a switch',
  serviced: 'it was serviced in the last year and tried with the main off',
  'looked-at': 'a licensed electrician has looked at the switch',
  charged: 'it is full before a storm',
  'backed-panel':
    'an electrician gives it a backed-up panel, and shows that it runs with the grid off',
  island:
    'an installer puts the panels behind a battery, for by themselves they turn off with the grid',
  'at-home': 'it stands at home',
  'maker-allows': 'its maker allows this use',
  swept: 'the chimney is swept and somebody is there while it burns',
  alarm: 'a carbon monoxide alarm works on each floor',
  fresh: 'it is changed every six months',
  uncoiled: 'they are rolled out whole, and feel cool to the hand in use',
  'not-for-motors': 'it only bridges minutes for a computer or router',
};

/** What the home has, and what makes it work. */
export const whatIsThere = {
  title: 'What is there already',
  one({ id, size, ageYears, needs: of, counts, builtOn }: ThingThere): string {
    const age = ageYears === null ? '' : `, ${formatQuantity(ageYears, 'years')} old`;
    const much = size === null ? '' : `, ${formatQuantity(size.value, size.unit)}`;
    const works =
      of.length === 0 ? '' : ` It helps in an outage if ${listOf(of.map((need) => needs[need]))}.`;
    const not = counts
      ? ''
      : id === 'thin-cords'
        ? ' They get hot and are not counted: no power for the house goes through them.'
        : ' No size in this plan counts on it.';
    const more =
      builtOn.length === 0
        ? ''
        : ` What adds to it: ${builtOn.map(({ called, usd: price }) => `${inSentence(sayRouteTitle(called))}, about ${usd(price)} more`).join('; ')}.`;
    return `${things[id]}${much}${age}.${works}${not}${more}`;
  },
};
