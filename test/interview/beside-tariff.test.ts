import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { readTariffFile } from '../../src/bill/tariff/read-tariff';
import { besideTariff } from '../../src/interview/beside-tariff';
import { relevant } from '../../src/interview/questions/relevant';
import { makePlan } from '../../src/plan/make-plan';
import { answersOf } from '../households/read-household';

const flat = readTariffFile({
  lampkeeperTariff: 1,
  name: 'One price',
  fixed: { perMonth: 8 },
  seasons: [
    { name: 'all year', from: '01-01', to: '12-31', periods: [{ name: 'always', price: 0.21 }] },
  ],
  export: { rule: 'none' },
}).tariff;

test('a household with a tariff of its own is asked for no price, and everyone else is', () => {
  const answers = { ...answersOf('mill-lane'), 'bill-plan': 'time-of-use' };
  const asked = (hasTariff: boolean) =>
    relevant(
      {
        interview: besideTariff(interview, hasTariff),
        short: false,
      },
      answers,
    ).map((question) => question.id);
  const [with_, without] = [asked(true), asked(false)];
  expect(with_.filter((id) => interview.tariff.includes(id))).toEqual([]);
  expect(without).toEqual(expect.arrayContaining(['bill-price', 'price-peak', 'bill-lines']));
  expect(without.filter((id) => !interview.tariff.includes(id))).toEqual(with_);
});

test('no question outside the list waits for one inside it', () => {
  for (const { id, when } of besideTariff(interview, true).questions) {
    const asks = [...JSON.stringify(when ?? {}).matchAll(/"q":"([^"]+)"/g)].map(([, q]) => q);
    expect(
      asks.filter((q) => interview.tariff.includes(q!)),
      id,
    ).toEqual([]);
  }
});

test('a plan by its own tariff assumes nothing about prices', () => {
  const { 'bill-price': _, ...answers } = answersOf('mill-lane');
  const prices = (plan: ReturnType<typeof makePlan>) =>
    plan.assumptions.filter((one) => interview.tariff.includes(one.question)).length;
  expect(flat).not.toBeNull();
  expect(prices(makePlan(interview, answers, '2026-11-25', 5, flat))).toBe(0);
  expect(prices(makePlan(interview, answers, '2026-11-25', 5))).toBeGreaterThan(0);
});
