import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { chooseOf } from '../../src/advice/list/choose';
import { asUsual } from '../../src/advice/list/living';
import type { Weighed } from '../../src/advice/list/unbeaten';
import { homeFromAnswers } from '../../src/plan/home-from-answers';
import { preparation } from '../../src/routes/kinds/preparation';
import { whole } from '../../src/routes/sized';
import { english } from '../../src/words/en';
import { answersOf } from '../households/read-household';
import { houseWith } from '../plan/electrical/electrical-home';

const noDevice = () => null;

const living = asUsual(houseWith({}));

/** A pack of a price that does so much of the job, and the devices where life hangs on them. */
function pack(usd: number, share: number, devices: number | null = null): Weighed {
  const route = { ...preparation(), kind: 'power-pack', carries: ['fridge'] } as const;
  const value = { devices, odds: 0, sure: false, full: false, long: false, share };
  return { sized: whole(route), living, usd, counted: route, value };
}

test('no money is spent on what does a tenth of the job or less', () => {
  expect(chooseOf([pack(600, 1), pack(3200, 7)], null, noDevice)).toBeNull();
  expect(chooseOf([pack(600, 1), pack(3200, 30)], null, noDevice)!.usd).toBe(3200);
  // What is there already costs nothing.
  expect(chooseOf([pack(0, 7)], null, noDevice)!.usd).toBe(0);
});

test('where life hangs on a device, a short bridge is still bought', () => {
  expect(chooseOf([pack(3200, 3, 0)], null, noDevice)!.usd).toBe(3200);
});

test('and the reason says that none is worth its price, not that none fits the money', () => {
  const says = english.whyAdvised({
    code: 'none-worth-it',
    budgetUsd: 9000,
    laterUsd: 0,
    cheapest: null,
    tooDear: null,
    lessPluggedIn: false,
    thriftily: false,
    oneRoom: null,
    others: [],
  });
  expect(says).toBe(
    'No route within the $9,000 you told us carries what must run for long enough to be worth its price. Getting ready costs little and is worth doing first.',
  );
});

test('nor is a pump that keeps the house dry left without a battery for its few hours', () => {
  const wet = asUsual(homeFromAnswers(interview, answersOf('mill-lane'), '2026-11-25'));
  const sump = wet.home.loads.find(({ id }) => id === 'sump');
  expect(sump).toBeDefined();
  const one = pack(600, 2);
  const guard: Weighed = { ...one, living: wet, counted: { ...one.counted, carries: ['sump'] } };
  expect(chooseOf([guard], null, noDevice)!.usd).toBe(600);
  expect(
    chooseOf([{ ...guard, counted: { ...one.counted, carries: ['fridge'] } }], null, noDevice),
  ).toBeNull();
});
