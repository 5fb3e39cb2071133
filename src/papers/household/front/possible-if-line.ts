import type { Plan } from '../../../plan/plan';
import type { Words } from '../../../words/words';

/**
 * Where the route advised does not do the job, what would have to be true for more, and whether that would be all of it. It names no
 * route: those stand with what can kill in a section of their own. Where life hangs on a device the page has other things to say first.
 */
export function possibleIfLine({ possibleIf, advice, lifeFirst }: Plan, words: Words): string[] {
  const first = possibleIf.find(({ gain, payable }) => gain !== 'other-way' && payable);
  const done = advice.advised !== null && advice.list[advice.advised]?.reaches === true;
  if (first === undefined || done || lifeFirst?.told) return [];
  return [
    words.household.possibleIf.onFirstPage(
      first.conditions.map(({ code }) => code),
      first.gain,
    ),
  ];
}
