import { expect, test } from 'vitest';
import type { Weighed } from '../../src/advice/list/unbeaten';
import { isWorth } from '../../src/advice/ways-on/less-carried';
import { planOf } from '../households/read-household';

const plan = planOf('orchard-bend', {}, 5);
const must = plan.mustRun.map(({ id }) => id);

test('as little goes as does it: the refrigerator and the freezer, and not the furnace in winter', () => {
  const { line, without } = plan.advice.waysOn!.lessCarried!;
  expect(without).toEqual(['fridge', 'freezer-chest']);
  expect(line).toMatchObject({ reaches: true, withinBudget: true });
  // The stove heats, so the furnace is not missed; the well has nothing else.
  expect(line.missed).toEqual([]);
  expect(line.route!.carries).toContain('well');
});

test('where most of the job goes it is worth naming only with much of the price saved', () => {
  const costs = (usd: number) => ({ usd }) as Weighed;
  const worth = (gone: number, usd: number, chosen: Weighed | null = costs(14740)) =>
    isWorth(plan.home, { found: costs(usd), without: must.slice(0, gone) }, chosen);
  expect(must).toHaveLength(7);
  expect(worth(3, 14650)).toBe(true);
  expect(worth(4, 14650)).toBe(false);
  expect(worth(4, 6490)).toBe(true);
  // Where the money buys nothing else, anything is better.
  expect(worth(6, 14650, null)).toBe(true);
});
