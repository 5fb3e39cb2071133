import type { Home } from '../../home/home';
import type { Plan } from '../../plan/plan';
import { LENGTHS } from '../../plan/ride-through/lengths';
import { formatQuantity } from '../../quantity/format-quantity';
import type { Words } from '../../words/words';
import { sayShare } from './details/say-ride-through';

/** How long the health devices are covered when all else is off; empty where none was named. */
export function sayHealthFirst({ healthFirst, home, advice }: Plan, words: Words): string[] {
  if (healthFirst === null || advice.route.carries.length === 0) return [];
  const { carried, missed, covered } = healthFirst;
  const left =
    missed.length > 0
      ? ` This route does not carry the ${words.listOf(namesOf(home, missed, words))}.`
      : '';
  if (covered === null) return left === '' ? [] : [`Health devices first.${left}`];
  const { likelyHours, carefulHours, likelyShare, carefulShare } = covered;
  const goal = formatQuantity(home.goalHours.value, 'h');
  const names = words.listOf(namesOf(home, carried, words));
  return [
    `Health devices first: with all else off from the first minute the ${names} runs ${about(likelyHours)} (careful count ${span(carefulHours)}), through ${sayShare(likelyShare)} of 100 outages of ${goal} (careful ${sayShare(carefulShare)}). It goes off last.${left}`,
  ];
}

/** The same in one short sentence for the first page, with a space before it. */
export function sayDevicesAlone({ healthFirst, home, advice }: Plan, words: Words): string {
  const covered = healthFirst?.covered ?? null;
  if (healthFirst === null || advice.route.carries.length === 0) return '';
  if (covered === null) return ` It carries no health device.`;
  const names = words.listOf(namesOf(home, healthFirst.carried, words));
  return ` The ${names} alone: ${about(covered.likelyHours)}, careful ${span(covered.carefulHours)}.`;
}

function namesOf({ loads }: Home, ids: readonly string[], words: Words): string[] {
  return loads.filter(({ id }) => ids.includes(id)).map(({ name }) => words.inSentence(name));
}

const about = (hours: number) => `${hours >= LENGTHS.at(-1)! ? '' : 'about '}${span(hours)}`;

function span(hours: number): string {
  return hours >= LENGTHS.at(-1)! ? 'two weeks or more' : formatQuantity(Math.round(hours), 'h');
}
