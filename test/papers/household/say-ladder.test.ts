import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { widthsOf } from '../../../src/home/build-home';
import { planMarkdown } from '../../../src/papers/household/to-markdown';
import { planData } from '../../../src/papers/plan-file/plan-data';
import { readingOf } from '../../../src/plan/ladder/ladder-reading';
import { standbyGenerator } from '../../../src/routes/kinds/standby-generator';
import type { Route } from '../../../src/routes/route';
import { english } from '../../../src/words/en';
import { planOf } from '../../households/read-household';
import { houseWith } from '../../plan/electrical/electrical-home';

const standby = (gas: string) => {
  const home = houseWith({
    'gas-supply': gas,
    'propane-gallons': 200,
    'must-run': ['fridge'],
    'fridge-count': 1,
  });
  return { home, route: standbyGenerator(home, widthsOf(interview)) };
};
const at = (gas: string, more: Partial<Route> = {}) => {
  const { home, route } = standby(gas);
  const of = { home, fuelToStore: null, advice: { route: { ...route, ...more } } };
  return english.household.ladder.reading(readingOf(of, 70));
};

test('a rung is read on the device: charge, gallons in the tank, and nothing on piped gas', () => {
  expect(at('town-gas')).not.toMatch(/\d/);
  // 200 gal told, of which 90 % can be burned: 200 - 0.3 x 180 = 146.
  expect(at('propane-tank')).toBe('When 146 gal are left in the tank');
  // A battery goes first, as in the walk.
  expect(at('propane-tank', { usableKwh: 9 })).toBe('At 70 % of charge');
  expect(at('town-gas', { usableKwh: 9 })).toBe('At 70 % of charge');
});

test('the plan file has no level of piped gas, and gallons beside the share of a tank', () => {
  const plan = planOf('ridge-road');
  const rungs = planData(plan, english).ladder.filter((step) => step.atPercent !== 100);
  for (const rung of rungs) expect(rung.atGallons).toBeGreaterThan(0);
  const page = planMarkdown(plan, english);
  expect(page).toContain(`When ${rungs[0]!.atGallons} gal are left in the tank, switch off`);
  expect(page).toContain('its size times what its gauge shows');
  const { route } = standby('town-gas');
  const piped = planData({ ...plan, advice: { ...plan.advice, route } }, english).ladder;
  expect(piped.map((step) => [step.atPercent, step.atGallons])).toEqual([
    [100, null],
    ...rungs.map(() => [null, null]),
  ]);
});

test('what a step buys is said by both counts, each named', () => {
  const said = (gainsHours: number | null, carefulGainsHours: number | null) =>
    english.household.ladder.buys({ gainsHours, carefulGainsHours }).trim();
  expect(said(9.2, 4)).toBe('That buys about 9 h (careful count 4 h).');
  expect(said(null, 4)).toBe(
    'That buys next to nothing at likely use, about 4 h by the careful count.',
  );
  expect(said(0.6, null)).toBe(
    'That buys about 1 h at likely use, next to nothing by the careful count.',
  );
  expect(said(null, null)).toBe('');
  const page = planMarkdown(planOf('mill-lane'), english);
  expect(page).toMatch(/That buys [^.]*careful count/);
});

test('cans are read in gallons, counted full as the plan has them stored', () => {
  const plan = planOf('birch-street');
  const { home, fuelToStore, advice } = plan;
  const kept = home.facts.number('gasoline-gallons') ?? 0;
  const full =
    fuelToStore === null ? advice.route.fuel!.atHand!.value : kept + fuelToStore.moreGallons;
  const rung = planData(plan, english).ladder.find((step) => step.atPercent === 30)!;
  expect(rung.atGallons).toBe(Math.ceil(0.3 * full));
  expect(planMarkdown(plan, english)).toContain(`When ${rung.atGallons} gal of gasoline are left`);
});
