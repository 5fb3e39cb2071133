import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { advise } from '../../../src/advice/advise';
import { countsByKind } from '../../../src/advice/route-counts';
import { widthsOf } from '../../../src/home/build-home';
import type { Home } from '../../../src/home/home';
import { SyntheticYears } from '../../../src/home/weather/synthetic-years';
import { sayAboveTold, sayHighAbove } from '../../../src/papers/household/say-above-told';
import { sayWhatYouHave } from '../../../src/papers/household/say-what-you-have';
import { oneRoomOf } from '../../../src/plan/one-room';
import type { Plan } from '../../../src/plan/plan';
import { addOnsOf } from '../../../src/plan/steps/add-ons';
import { electricianPoints } from '../../../src/plan/steps/electrician-points';
import { willNotDo } from '../../../src/plan/will-not-do';
import { powerPack } from '../../../src/routes/kinds/power-pack';
import { preparation } from '../../../src/routes/kinds/preparation';
import { singleBattery } from '../../../src/routes/kinds/single-battery';
import { standbyGenerator } from '../../../src/routes/kinds/standby-generator';
import type { Route } from '../../../src/routes/route';
import { oneSize } from '../../../src/routes/sized';
import { findings } from '../../../src/rules/find';
import { english } from '../../../src/words/en';
import { sayElectricianPoint } from '../../../src/words/en/electrical/say-electrician-point';
import { houseWith } from '../../plan/electrical/electrical-home';

const widths = widthsOf(interview);

/** A plan that is no more than a home and a route of this price. */
function planAt(home: Home, usd: number): Plan {
  const route = { ...standbyGenerator(home, widths), costUsd: { value: usd } } as Route;
  return { counts: countsByKind(home, [route]), advice: { route } } as Plan;
}

test('a price above what was told says by how much, and only then', () => {
  const told = houseWith({ 'budget-now': 600, 'budget-later': 0 });
  expect(sayAboveTold(planAt(told, 800), english)).toContain('$200 above the $600 you told us');
  expect(sayAboveTold(planAt(told, 600), english)).toBe('');
  const twice = houseWith({ 'budget-now': 200, 'budget-later': 400 });
  expect(sayAboveTold(planAt(twice, 800), english)).toContain(
    '$200 above the $600 you told us ($200 now, $400 later)',
  );
  expect(sayAboveTold(planAt(houseWith({}), 9000), english)).toBe('');
});

test('a price that fits but at its high end says how high a quote may go, and only then', () => {
  const priced = (told: number, value: number, high: number): Plan => {
    const home = houseWith({ 'budget-now': told, 'budget-later': 0 });
    const route = { ...standbyGenerator(home, widths), costUsd: { value, high } } as Route;
    return { counts: countsByKind(home, [route]), advice: { route } } as Plan;
  };
  expect(sayHighAbove(priced(9000, 7150, 11300), english)).toBe(
    ' A quote may go to $11,300, $2,300 above the $9,000 you told us.',
  );
  expect(sayHighAbove(priced(11300, 7150, 11300), english)).toBe('');
  // Above the money already at the likely price: that is what is said.
  expect(sayHighAbove(priced(7000, 7150, 11300), english)).toBe('');
});

describe('what the household owns', () => {
  const home = houseWith({ 'must-run': ['fridge', 'lights'], 'fridge-count': 1 });
  const standby = standbyGenerator(home, widths);
  const fridge = home.loads.find((load) => load.id === 'fridge')!;
  const mine = { ...standby, kind: 'own-battery', carries: [fridge.id], verdict: 'works' };
  const said = (advised: unknown, verdict = 'works') =>
    sayWhatYouHave(
      {
        home,
        routes: [standby, { ...mine, verdict }],
        counts: countsByKind(home, [standby, mine as unknown as Route]),
        advice: { route: advised },
        lifeFirst: null,
      } as unknown as Plan,
      english,
    );

  test('stands on the first page beside what is bought, with what it leaves out', () => {
    expect(said(standby)).toHaveLength(1);
    expect(said(standby)[0]).toMatch(
      /your home battery .* all but the lights, for less than half an hour/,
    );
  });

  test.each([
    [0, 0, /, for less than half an hour\./],
    [3, 0, /, for about 3 h, careful count less than half an hour\./],
    [3, 2, /, for about 3 h, careful count 2 h\./],
  ])('%d h likely and %d h by the careful count are never said as 0 h', (value, low, says) => {
    const hours = { value, low, high: value, unit: 'h' };
    const route = { ...mine, lasting: { ...mine.lasting, hours } };
    const [line] = sayWhatYouHave(
      {
        home,
        routes: [route],
        counts: countsByKind(home, [route as unknown as Route]),
        advice: { route: standby },
        lifeFirst: null,
      } as unknown as Plan,
      english,
    );
    expect(line).toMatch(says);
    expect(line).not.toMatch(/\b0 h/);
  });

  test('is not said twice, nor where it cannot work', () => {
    expect(said(mine)).toEqual([]);
    expect(said(standby, 'cannot')).toEqual([]);
  });
});

describe('one room', () => {
  const cooled = { 'cool-main': 'central', 'one-room': 'yes', 'home-zip': '85001' };
  const summer = houseWith({ ...cooled, 'goal-season': 'summer', 'nice-run': ['cool'] });
  const winter = houseWith({ ...cooled, 'goal-season': 'winter' });
  const cooler = summer.loads.find((load) => load.id === 'room-cooler')!;
  const carrying = (home: typeof summer) => ({
    ...standbyGenerator(home, widths),
    carries: [cooler.id],
  });

  test('has no words about cooling, and no unit to buy, in a plan for winter', () => {
    expect(oneRoomOf(summer)?.off).toEqual(['central-ac']);
    expect(oneRoomOf(winter)).toBeNull();
    expect(addOnsOf(summer, carrying(summer), []).map(({ id }) => id)).toEqual(['room-cooler']);
    expect(addOnsOf(winter, carrying(winter), [])).toEqual([]);
  });
});

test('a pack that costs no more than the battery for one job, and does all it does, goes before it', () => {
  const home = houseWith({
    'must-run': ['fridge', 'lights', 'phones', 'internet'],
    'fridge-count': 1,
    'budget-now': 600,
    'budget-later': 0,
  });
  const ready = preparation();
  const single = singleBattery(home);
  const pack = { ...powerPack(home), costUsd: single.costUsd, usableKwh: single.usableKwh };
  const short = {
    ...pack,
    lasting: { ...pack.lasting, hours: { ...single.lasting.hours!, value: 2 } },
  };
  const [cheap, dear] = [600, 900].map((value) => ({ value, low: 300, high: value })) as never[];
  const kind = (packUsd: never) =>
    advise(
      home,
      new SyntheticYears(home, 1),
      [ready, { ...single, costUsd: cheap! }, { ...short, costUsd: packUsd! }].map(oneSize),
    ).route.kind;
  expect(kind(dear!)).toBe('single-battery');
  expect(kind(cheap!)).toBe('power-pack');
});

test('where nothing gives power, no battery is advised for what must not blink, and no outlet is missed', () => {
  const home = houseWith({ 'goal-gap': 'no-blink' });
  const lines = willNotDo(home, { route: preparation(), wholeJob: null } as never, null);
  expect(lines.filter(({ code }) => code === 'dark-gap' || code === 'cords-only')).toEqual([]);
});

test('what nobody may do is no work for an electrician', () => {
  const home = houseWith({ 'own-sources': ['power-pack'] });
  const route = powerPack(home);
  const cautions = findings(home, [route.kind]);
  expect(cautions.map((one) => one.id)).toContain('no-backfeed');
  const points = electricianPoints(home, route, cautions);
  expect(points).not.toContainEqual(expect.objectContaining({ id: 'no-backfeed' }));
  expect(points.map((one) => sayElectricianPoint(home, one)).join(' ')).not.toMatch(/Never feed/);
});
