import { expect, test } from 'vitest';
import { planMarkdown } from '../../../src/papers/household/to-markdown';
import { familySheet } from '../../../src/papers/sheets/family';
import { grownOld } from '../../../src/plan/sureness/grown-old';
import { equipmentCosts } from '../../../src/tables/prices/equipment-costs';
import { fuelPrices } from '../../../src/tables/prices/fuel-prices';
import { english } from '../../../src/words/en';
import { frozenPlan } from '../../frozen-plans';
import { answersOf } from '../../households/read-household';

test('prices are old from the day after they were to be looked at again', () => {
  const { recheckAfter } = equipmentCosts;
  const sorts = (day: string) => grownOld(day).map(({ prices }) => prices);
  expect(sorts(equipmentCosts.checked)).toEqual([]);
  expect(sorts(recheckAfter)).not.toContain('equipment');
  expect(sorts('2099-01-01')).toEqual(['equipment', 'fuel', 'power', 'credits']);
  expect(grownOld('2099-01-01')[1]).toMatchObject({
    checked: fuelPrices.checked,
    recheckAfter: fuelPrices.recheckAfter,
  });
});

test('a plan made later says so on its first page and on the sheet of the family, and no other does', () => {
  const words = 'These prices have grown old: equipment and work';
  const late = frozenPlan(answersOf('mill-lane'), '2029-01-01', 3);
  expect(planMarkdown(late, english).split('# The details')[0]).toContain(words);
  expect(JSON.stringify(familySheet(late, english))).toContain(words);
  const now = frozenPlan(answersOf('mill-lane'), '2026-11-25', 3);
  expect(planMarkdown(now, english)).not.toContain('grown old');
});
