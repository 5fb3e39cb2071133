import { cautionGroups } from '../../../plan/cautions/caution-groups';
import type { Plan } from '../../../plan/plan';
import type { Words } from '../../../words/words';
import { titledList } from '../../markdown/bullets';

/** Where a licensed electrician is required. A caution that stands above in full is pointed to and not said again. */
export function sayElectricianPoints(plan: Plan, words: Words): string[] {
  const { wrong, known, otherSeason, unasked } = cautionGroups(plan);
  const above = new Set([...wrong, ...known, ...otherSeason, ...unasked].map(({ id }) => id));
  const isAbove = (point: Plan['electrician'][number]) =>
    point.code === 'caution' && above.has(point.id);
  const own = plan.electrician.filter((point) => !isAbove(point));
  const pointedTo = own.length < plan.electrician.length;
  return titledList(`## ${words.household.headings.electrician}`, [
    ...own.map((point) => words.forElectrician.point(plan.home, point)),
    ...(pointedTo ? [words.household.headings.cautionsAbove] : []),
  ]);
}
