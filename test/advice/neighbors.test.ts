import { describe, expect, test } from 'vitest';
import { type Line, ownThere } from '../../src/advice/list/line';
import { neighborsOf } from '../../src/advice/list/neighbors';
import { preparation } from '../../src/routes/kinds/preparation';
import { english } from '../../src/words/en';
import { planOf } from '../households/read-household';
import { houseWith } from '../plan/electrical/electrical-home';

/** A line of so many dollars, hours by the careful count, and outages carried. */
function line(usd: number, careful: number | null, odds: number, way: Line['way'] = 'usual'): Line {
  const value = { devices: null, odds, sure: odds >= 90, full: false, long: true, share: odds };
  return {
    route: {
      ...preparation(),
      kind: 'power-pack',
      called: 'power-pack',
      carries: ['fridge'],
      costUsd: { ...preparation().costUsd, value: usd },
    },
    ownThere: false,
    way,
    usd,
    storedGal: null,
    hours: careful === null ? null : { likely: 2 * careful, careful },
    carried: { carried: 1, of: 1 },
    missed: [],
    value,
    reaches: odds >= 90,
    withinBudget: true,
  };
}
const nothing: Line = { ...line(0, 0, 0), route: null };

describe('the lines laid beside the one advised', () => {
  test('a tenth less is no other choice of money, and nothing bought is none at all', () => {
    const list = [
      nothing,
      line(740, 10, 20),
      line(1640, 15, 40),
      line(1760, 16, 70),
      line(1770, 30, 95),
    ];
    expect(neighborsOf(list, 4)!.cheaper!.usd).toBe(740);
    expect(neighborsOf([nothing, line(1760, 16, 70), line(1770, 30, 95)], 2)).toBeNull();
  });

  test('the dearer one is not worse by the careful count where another is not', () => {
    const list = [line(6470, 31, 40), line(15550, 11, 50), line(20000, 40, 60)];
    expect(neighborsOf(list, 0)!.dearer).toMatchObject({ line: { usd: 20000 }, lessCareful: null });
  });

  test('and says both counts where it is', () => {
    const { dearer } = neighborsOf([line(6470, 31, 40), line(15550, 11, 50)], 0)!;
    expect(dearer!.lessCareful).toEqual({ hours: 11, advisedHours: 31 });
    const { inShort } = english.household.dollarsBuy;
    expect(inShort(dearer!.line, [], dearer!.lessCareful)).toContain(
      '(careful count 11 h, against 31 h of the one advised)',
    );
    expect(
      neighborsOf([line(6470, null, 40), line(15550, 11, 50)], 0)!.dearer!.lessCareful,
    ).toEqual({
      hours: 11,
      advisedHours: null,
    });
  });

  test('a little longer for much more money is passed over where more is to be had', () => {
    const list = [line(14740, 26, 30), line(20640, 27, 32), line(27240, 60, 95)];
    expect(neighborsOf(list, 0)!.dearer!.line.usd).toBe(27240);
    expect(neighborsOf(list.slice(0, 2), 0)!.dearer!.line.usd).toBe(20640);
  });

  test('beside what gives no power there is no count to fall short of', () => {
    const ready: Line = { ...line(360, null, 100, 'thrifty'), route: preparation() };
    expect(neighborsOf([ready, line(3200, 60, 100)], 0)!.dearer).toMatchObject({
      gain: 'as-usual',
      lessCareful: null,
    });
  });

  test('what only spares living thriftily is not called better', () => {
    const list = [line(680, 12, 100, 'thrifty'), line(1040, 15, 100)];
    expect(neighborsOf(list, 0)!.dearer!.gain).toBe('as-usual');
    expect(neighborsOf([line(680, 12, 80, 'thrifty'), line(1040, 15, 95)], 0)!.dearer!.gain).toBe(
      'better',
    );
  });

  test('the same equipment, lived with in another way, is no neighbor', () => {
    const { route } = line(1040, 15, 95);
    expect(
      neighborsOf([line(1040, 15, 95), { ...line(1100, 20, 99, 'thrifty'), route }], 0),
    ).toBeNull();
  });

  test('of birch-street the cheaper one is worth the name: hundreds less, not ten dollars', () => {
    const { list, advised, neighbors } = planOf('birch-street').advice;
    expect(neighbors!.cheaper!.usd).toBeLessThan(0.9 * list[advised!]!.usd);
    const { inShort } = english.household.dollarsBuy;
    expect(inShort(neighbors!.cheaper!, ['Furnace'])).toContain(
      'carries 6 of 7 that must run, not the furnace, about',
    );
    expect(neighbors!.cheaper!.missed).toEqual(['furnace-gas']);
    expect(neighbors!.dearer!.line.route!.kind).toBe('standby-engine');
  });
});

test('with nothing bought, what needs power stops, but for what the things they have can run', () => {
  const { inShort } = english.household.dollarsBuy;
  expect(inShort(nothing)).toMatch(/^\$0: nothing bought: what needs power stops/);
  expect(inShort({ ...nothing, ownThere: true })).toMatch(/only what the things you have can run/);
  const owning = (own: string) => ownThere(houseWith({ 'own-sources': [own] }));
  expect(['power-pack', 'engine-portable', 'ev-outlet'].map(owning)).toEqual([true, true, true]);
  expect(['none', 'backfeed-cord'].map(owning)).toEqual([false, false]);
});
