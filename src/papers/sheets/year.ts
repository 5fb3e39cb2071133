import { yearTasks } from '../../plan/on-the-day/year-tasks';
import type { Plan } from '../../plan/plan';
import type { Words } from '../../words/words';
import { section } from '../document/block';
import { picturesOf } from '../pictures/of-plan/pictures-of';
import type { Sheet } from './sheet';

/** The year: what is tested, run, filled and rehearsed in which month. */
export function yearSheet(plan: Plan, words: Words): Sheet {
  const picture = picturesOf(plan, words).get('year')!;
  const tasks = yearTasks(plan.home, plan.advice.route);
  return {
    id: 'year',
    title: words.sheets.year.title,
    purpose: words.sheets.year.purpose,
    blocks: [
      { kind: 'picture', picture },
      ...section(words.sheets.year.what, {
        kind: 'boxes',
        items: tasks.map(({ id, months }) =>
          words.sheets.year.task(
            words.sheets.yearTasks[id].name,
            when(months, words),
            words.sheets.yearTasks[id].does,
          ),
        ),
      }),
      ...section(words.sheets.year.again, { kind: 'bullets', items: words.sheets.year.triggers }),
    ],
  };
}

function when(months: readonly number[], words: Words): string {
  return months.length === 12
    ? words.sheets.year.everyMonth
    : months.map((month) => words.shortMonths[month - 1]!).join(', ');
}
