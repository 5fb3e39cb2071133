import type { Context, State } from '../interview/state';
import { type WalkPlace, walkList } from '../interview/walk';

export const WALK_TITLE = 'My list to look at, in the order of a walk';

/** Places as headings. */
export const placeTitles: Readonly<Record<WalkPlace, string>> = {
  panel: 'At the electric panel (open only its small door)',
  furnace: 'At the heating and cooling',
  well: 'At the pumps and the water',
  kitchen: 'In the rooms',
  outdoors: 'Outdoors and in the garage',
  papers: 'In my papers',
};

/** What is on the list, by place. */
export function walkTexts(context: Context, { answers }: State) {
  return walkList(context, answers).map(({ place, questions }) => ({
    title: placeTitles[place],
    lines: questions.map(({ says }) => says),
  }));
}

/** How to get the list on paper. */
export function walkHint({ answers }: State): string {
  const name = answers['home-name'];
  const home = typeof name === 'string' ? ` ${name}` : '';
  return `To print it with room to write: lampkeeper form${home}`;
}
