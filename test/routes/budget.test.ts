import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { advise } from '../../src/advice/advise';
import { widthsOf } from '../../src/home/build-home';
import { SyntheticYears } from '../../src/home/weather/synthetic-years';
import { allKinds } from '../../src/routes/all-routes';
import { budgetUsd } from '../../src/routes/budget';
import { generatorCords } from '../../src/routes/kinds/portable-generator';
import { powerPack } from '../../src/routes/kinds/power-pack';
import { sayWhyAdvised } from '../../src/words/en/say-why-advised';
import { houseWith } from '../plan/electrical/electrical-home';

const widths = widthsOf(interview);
const open = {
  'engine-place': 'open-20ft',
  operators: 'two',
  'must-run': ['fridge', 'lights'],
  'fridge-count': 1,
  'goal-hours': 12,
  'gasoline-gallons': 10,
};
const house = (money: object) => houseWith({ ...open, ...money });
const adviceFor = (money: object) => {
  const home = house(money);
  const drawn = new SyntheticYears(home, 1);
  const kinds = allKinds(home, drawn, widths).filter(({ route }) =>
    ['engine-cords', 'engine-inlet', 'preparation'].includes(route.kind),
  );
  const { route, reason } = advise(home, drawn, kinds);
  return { route, because: sayWhyAdvised(reason) };
};

describe('money as asked', () => {
  test('what could be spent later is added to what can be spent now', () => {
    expect(budgetUsd(house({ 'budget-now': 900, 'budget-later': 700 }))).toBe(1600);
  });

  test('a part nobody told counts as nothing, and no part told is no amount at all', () => {
    expect(budgetUsd(house({ 'budget-now': 900 }))).toBe(900);
    expect(budgetUsd(house({ 'budget-now': 900, 'budget-later': 'not sure' }))).toBe(900);
    expect(budgetUsd(house({}))).toBeNull();
    expect(budgetUsd(house({ 'budget-now': 'not sure' }))).toBeNull();
  });

  test('an unanswered budget is no amount of the household, and sets no limit', () => {
    const { route, because } = adviceFor({});
    expect(route.kind).toBe('engine-cords');
    expect(because).not.toMatch(/\$|your \$/);
    expect(because).toContain('You told us no amount of money');
  });

  test('a price of which only the low end fits is above the money told, and the reason says by how much', () => {
    const cords = generatorCords(house({}), widths).costUsd;
    const told = Math.round((cords.low + cords.value) / 2);
    const { route, because } = adviceFor({ 'budget-now': told, 'budget-later': 0 });
    expect(route.kind).toBe('preparation');
    expect(because).toContain(`$${(cords.value - told).toLocaleString('en-US')} more`);
    expect(adviceFor({ 'budget-now': cords.value, 'budget-later': 0 }).route.kind).toBe(
      'engine-cords',
    );
  });

  test('a pack is no larger than the money told buys at its likely price', () => {
    const pack = (money: object) => powerPack(house({ 'goal-hours': 96, ...money })).costUsd;
    const free = pack({});
    const told = Math.round((free.low + free.value) / 2);
    expect(pack({ 'budget-now': told, 'budget-later': 0 }).value).toBeLessThanOrEqual(told);
  });

  test('nothing that costs more even at its low end is advised', () => {
    expect(adviceFor({ 'budget-now': 100, 'budget-later': 50 }).route.kind).toBe('preparation');
  });
});
