import { expect, test } from 'vitest';
import { sheetToMarkdown } from '../../src/papers/sheets/sheet-to-markdown';
import { sheetsOf } from '../../src/papers/sheets/sheets-of';
import { english } from '../../src/words/en';
import { frozenPlan } from '../frozen-plans';
import { answersOf } from '../households/read-household';

/** A night without power: what one battery reaches. */
const before = { ...answersOf('orchard-bend'), 'goal-hours': 12 };
/** The battery the plan advised, put in since, entered as what is there. */
const after = {
  ...before,
  'own-sources': ['home-battery'],
  'battery-kind': 'lfp',
  'battery-kwh': 13.5,
  'battery-kw': 10,
  'battery-years': 0,
  'battery-backup': 'circuits',
  'battery-reserve': 0,
  'pack-wave': 'pure',
};

test('what was bought since is entered as there: the plan leans on it and buys it no more', () => {
  expect(frozenPlan(before, '2026-11-25', 5).advice.route.costUsd.value).toBeGreaterThan(0);
  const { advice } = frozenPlan(after, '2026-11-25', 5);
  expect(advice.route).toMatchObject({ kind: 'own-battery', nameplateKwh: 13.5 });
  expect(advice.route.costUsd.value).toBe(0);
});

test('and no sheet asks to have it quoted', () => {
  const plan = frozenPlan(after, '2026-11-25', 5);
  const family = sheetToMarkdown(sheetsOf(plan, english).find(({ id }) => id === 'family')!);
  expect(family).not.toContain(`"${english.sheets.quote.title}"`);
  expect(plan.electrical.scope.requirements).toEqual([]);
  expect(plan.advice.route.kind).toBe('own-battery');
});

test('where more is added to it, both stand among the parts and only the new one has a price and is to be quoted', () => {
  const plan = frozenPlan({ ...after, 'goal-hours': 72 }, '2026-11-25', 5);
  const { route } = plan.advice;
  expect(route.kind).toBe('battery-circuits');
  const theirs = route.parts.find(({ called }) => called.code === 'own-battery')!;
  expect(theirs).toMatchObject({ called: { kwh: 13.5 }, costUsd: { value: 0 } });
  const bought = route.parts.find(({ called }) => called.code === 'battery-with-inverter')!;
  expect(bought.costUsd.value).toBeGreaterThan(0);
  const quote = sheetToMarkdown(sheetsOf(plan, english).find(({ id }) => id === 'quote')!);
  // Both together are asked for as such, in words and in the diagram.
  expect(quote).toMatch(
    /Usable energy: 14\.4 kWh at five years old, with the 13\.5 kWh battery that\s+is there/,
  );
  expect(quote).toMatch(/Battery with inverter \*, 14\.4 kWh\s+with the 13\.5 kWh there/);
});
