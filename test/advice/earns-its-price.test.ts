import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { advise } from '../../src/advice/advise';
import { chooseOf, tooDear } from '../../src/advice/list/choose';
import { earnsItsPrice } from '../../src/advice/list/earns-its-price';
import { asUsual } from '../../src/advice/list/living';
import type { Weighed } from '../../src/advice/list/unbeaten';
import type { Value } from '../../src/advice/list/value';
import type { LoadId } from '../../src/home/loads/load-id';
import { homeFromAnswers } from '../../src/plan/home-from-answers';
import { allKinds } from '../../src/routes/all-routes';
import { preparation } from '../../src/routes/kinds/preparation';
import { loadsOf } from '../../src/routes/pick-loads';
import { whole } from '../../src/routes/sized';
import { practice } from '../../src/tables/practice-figures';
import { english } from '../../src/words/en';
import { completeHome } from '../complete-home';
import { answersOf } from '../households/read-household';
import { caseOf, size, widths } from './list-case';

const AS_OF = '2026-11-25';

/** A house that names a furnace, a refrigerator and a microwave; nobody here is at risk. */
const house = homeFromAnswers(
  interview,
  {
    ...answersOf('birch-street'),
    'medical-devices': ['none'],
    'people-risk': ['none'],
    'must-run': ['heat', 'fridge', 'cooking'],
  },
  AS_OF,
);
const [heat, fridge, microwave] = (['furnace-gas', 'fridge', 'microwave'] as const).map(
  (id) => house.loads.find((load) => load.id === id)!.id,
) as [LoadId, LoadId, LoadId];

const NONE: Value = { devices: null, odds: 0, sure: false, full: false, long: false, share: 0 };

/** A source of a price that carries these, with a value by hand. */
function source(
  usd: number,
  carries: readonly LoadId[],
  value: Partial<Value>,
  home = house,
): Weighed {
  const counted = { ...preparation(), kind: 'power-pack', carries } as const;
  const worth = { ...NONE, ...value };
  return { sized: whole(counted), living: asUsual(home), usd, counted, value: worth };
}

const noDevice = () => null;
const earns = (dearer: Weighed, cheaper: Weighed) => earnsItsPrice(dearer, cheaper, noDevice);

test('the house names what the cases below are about', () => {
  const must = loadsOf(house, ['must']);
  expect(must.map(({ id }) => id).sort()).toEqual([fridge, heat, microwave].sort());
  expect(must.filter(({ otherwise }) => otherwise).map(({ id }) => id)).toEqual([microwave]);
});

describe('what one thing more may cost', () => {
  const cheap = source(620, [heat, fridge], { share: 60 });

  test('food is eaten cold for an outage: a microwave is worth no battery', () => {
    const all = [heat, fridge, microwave];
    const limit = 620 + practice('done-otherwise-worth');
    expect(earns(source(28830, all, { share: 90 }), cheap)).toBe(false);
    expect(earns(source(limit, all, { share: 90 }), cheap)).toBe(true);
    expect(earns(source(limit + 1, all, { share: 90 }), cheap)).toBe(false);
    // Odds with the microwave on tell nothing of the cheaper one, which leaves only that out.
    expect(earns(source(28830, all, { share: 90, odds: 85 }), cheap)).toBe(false);
  });

  test('warmth is worth much, and in step with the time it lasts', () => {
    const cold = source(620, [fridge, microwave], { share: 67 });
    const warmFor = (share: number) => source(9000, [heat, fridge], { share });
    expect(earns(warmFor(67), cold)).toBe(true);
    expect(earns(warmFor(4), cold)).toBe(false);
  });

  test('a hundredth of the job has its price, in things and hours or in outages', () => {
    const more = (usd: number, value: Partial<Value>) => source(usd, [heat, fridge], value);
    const hundredth = practice('hundredth-worth');
    const [base, of] = [more(1000, { share: 30 }), 3 / 2];
    expect(earns(more(1000 + 10 * of * hundredth, { share: 40 }), base)).toBe(true);
    expect(earns(more(1001 + 10 * of * hundredth, { share: 40 }), base)).toBe(false);
    const whole = (usd: number, odds: number) =>
      source(usd, [heat, fridge, microwave], { odds, share: 90 });
    expect(earns(whole(1000 + 20 * hundredth, 60), whole(1000, 40))).toBe(true);
    expect(earns(whole(1001 + 20 * hundredth, 60), whole(1000, 40))).toBe(false);
  });

  test('where life hangs on a device, or may, longer hours of it have no limit but the money told', () => {
    const hours = (one: Weighed) => (one.usd > 10000 ? 40 : 30);
    for (const lifeSupport of ['yes', 'unknown'] as const) {
      const home = { ...house, lifeSupport };
      const [dear, less] = [51000, 620].map((usd) => source(usd, [fridge], { share: 10 }, home));
      expect(earnsItsPrice(dear!, less!, hours)).toBe(true);
      expect(earnsItsPrice(dear!, less!, noDevice)).toBe(false);
    }
    const [dear, less] = [51000, 620].map((usd) => source(usd, [fridge], { share: 10 }));
    expect(earnsItsPrice(dear!, less!, hours)).toBe(false);
  });

  test('more odds of the device alone as well', () => {
    const home = { ...house, lifeSupport: 'yes' } as const;
    const with_ = (usd: number, devices: number) => source(usd, [fridge], { devices }, home);
    expect(earns(with_(51000, 60), with_(620, 40))).toBe(true);
  });
});

test('with more money the same steps are taken, and then more', () => {
  const all = [
    source(500, [fridge], { share: 20 }),
    source(900, [fridge, heat], { share: 50 }),
    source(20000, [fridge, heat, microwave], { share: 60 }),
    source(24000, [fridge, heat, microwave], { share: 66, odds: 80 }),
  ];
  const bought = [500, 900, 21000, 30000].map((usd) => chooseOf(all, usd, noDevice)?.usd);
  expect(bought).toEqual([500, 900, 900, 900]);
  expect(tooDear(all, 30000, all[1]!)?.usd).toBe(24000);
  expect(tooDear(all, 900, all[1]!)).toBeNull();
});

describe('a home with a device: a generator carries it, and a battery 17 times as dear only the cooling more', () => {
  const home = homeFromAnswers(interview, completeHome(91), AS_OF);
  const { ranked, drawn } = caseOf(home);
  const chosen = ranked.chosen!;

  test('the generator is advised, and the device is carried as well as by anything', () => {
    expect(home.lifeSupport).toBe('yes');
    expect(chosen.usd).toBeLessThan(3000);
    expect(chosen.value.devices).toBe(100);
    expect(ranked.scale.deviceShare(chosen)).toBe(100);
  });

  test('and the reason names what does more and what it costs, never "as near as any"', () => {
    const { reason } = advise(home, drawn, allKinds(home, drawn, widths), size);
    expect(reason.tooDear!.usd).toBeGreaterThan(10 * chosen.usd);
    const says = english.whyAdvised(reason);
    expect(says).toMatch(/does more of it, for \$[\d,]+ more, \$[\d,]+ in all/);
    expect(says).not.toContain('as near as any');
  });
});
