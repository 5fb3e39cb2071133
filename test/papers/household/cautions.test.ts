import { describe, expect, test } from 'vitest';
import { planMarkdown } from '../../../src/papers/household/to-markdown';
import { planData } from '../../../src/papers/plan-file/plan-data';
import type { Plan } from '../../../src/plan/plan';
import { findings } from '../../../src/rules/find';
import type { RuleId } from '../../../src/tables/rules';
import { english } from '../../../src/words/en';
import { frozenPlan } from '../../frozen-plans';
import { answersOf, planOf } from '../../households/read-household';
import { says } from '../../says';

const HEADING = '### Questions to settle';
const section = (text: string) => text.split('\n## Cautions\n')[1]!.split('\n## ')[0]!;
const settleIn = (said: string) => (said.split(HEADING)[1] ?? '').split('\n\n')[2] ?? '';

describe('the cautions of a home with hardly an answer', () => {
  // Enough is told to be advised, and little else.
  const few = {
    'home-zip': '48911',
    'home-kind': 'house',
    'heat-main': 'gas-furnace',
    'must-run': ['heat', 'fridge'],
    'engine-place': 'not sure',
  };
  const plan = frozenPlan(few, '2026-11-25', 4);
  const said = section(planMarkdown(plan, english));
  const settle = settleIn(said);
  const whole = said.split(HEADING)[0]!;
  const { advice, home } = plan;
  const without = new Set(findings(home, []).map((one) => one.id));
  const ofRoutes = findings(
    home,
    [advice.route, ...advice.beside].map((route) => route.kind),
  ).filter(({ id, severity }) => severity === 5 && !without.has(id));

  test('are at most 15, those of the routes not counted', () => {
    const bullets = whole.match(/^- /gm)!.length;
    expect(plan.cautions.length).toBeGreaterThan(40);
    expect(bullets - ofRoutes.length).toBeLessThanOrEqual(15);
    expect(bullets).toBeGreaterThan(10);
  });

  test('hold whole what can kill on the routes, and what any home needs', () => {
    for (const caution of ofRoutes) expect(whole, caution.id).toContain(says(caution));
    for (const id of ['gas-smell', 'co-signs', 'fallen-wire'] as const)
      expect(whole, id).toContain(sayWhole(plan, id));
  });

  test('make of a fact nobody told one question, and every one of them is asked', () => {
    const titles = settle.split('\n').map((line) => line.split(': ')[0]);
    expect(new Set(titles).size).toBe(titles.length);
    for (const caution of plan.cautions.filter((one) => one.careful)) {
      if (whole.includes(says(caution))) continue;
      const asked = plan.assumptions.find((one) => one.question === caution.asks)!;
      if (asked.code !== 'open-answer') throw new Error(`${caution.id} asks nothing`);
      expect(settle, caution.id).toContain(`- ${asked.says}: ${asked.ask}`);
    }
  });

  test('stand all of them in the plan file, each with the open question that would settle it', () => {
    const data = planData(plan, english).cautions;
    expect(data.map((one) => one.says)).toEqual(plan.cautions.map(says));
    for (const caution of plan.cautions.filter((one) => one.careful)) {
      expect(caution.asks, caution.id).toBeDefined();
      expect(plan.home.facts.open(caution.asks!), `${caution.id} asks ${caution.asks}`).toBe(true);
    }
  });
});

test('a home that answered everything that matters has no such heading', () => {
  expect(section(planMarkdown(planOf('mill-lane'), english))).not.toContain(HEADING);
});

test('a device kept private is named by its reason, since its question was answered', () => {
  const said = section(
    planMarkdown(planOf('mill-lane', { 'medical-devices': ['prefer-not-to-say'] }), english),
  );
  expect(said).toMatch(/We do not know (which|whether)[^\n]*:\n/);
});

test('a fixed engine is not warned of where none is here and none can be had', () => {
  const plan = planOf('mill-lane');
  const standby = plan.routes.find((route) => route.kind === 'standby-engine')!;
  expect(standby.verdict).toBe('cannot');
  expect(plan.advice.beside.map((route) => route.kind)).toContain('battery-engine');
  const ids = plan.cautions.map((one) => one.id);
  expect(ids.filter((id) => ['fixed-engine-exhaust', 'gas-leak-self-start'].includes(id))).toEqual(
    [],
  );
  expect(planOf('birch-street').cautions.map((one) => one.id)).toContain('fixed-engine-exhaust');
});

test('old wiring that was seen stands on the first page and before what the route brings', () => {
  const told = { 'home-year': 1968, 'wiring-signs': ['aluminum', 'knob-tube'] };
  const plan = frozenPlan({ ...answersOf('mill-lane'), ...told }, '2026-11-25', 2);
  const [front, details] = planMarkdown(plan, english).split('\n# The details\n') as [
    string,
    string,
  ];
  const at = (text: string, id: RuleId) => text.indexOf(english.firstSentence(sayWhole(plan, id)));
  for (const id of ['aluminum-wiring', 'knob-and-tube'] as const) {
    expect(at(front, id), `${id} on the first page`).toBeGreaterThan(0);
    expect(at(section(details), id), id).toBeGreaterThan(0);
    expect(at(section(details), id), id).toBeLessThan(at(section(details), 'no-backfeed'));
  }
});

test('a caution of the other season stands behind all others, and on no first page', () => {
  const told = { 'must-run': ['fridge'], 'heat-main': 'gas-furnace', 'goal-season': 'summer' };
  const at = (season: string) => {
    const answers = { ...answersOf('mill-lane'), ...told, 'goal-season': season };
    const plan = frozenPlan(answers, '2026-11-25', 2);
    const [front, details] = planMarkdown(plan, english).split('\n# The details\n');
    const first = english.firstSentence(sayWhole(plan, 'heat-needs-power'));
    const all = section(details!);
    const other = all.indexOf('you asked for the other season:');
    const file = planData(plan, english).cautions.find((one) => one.id === 'heat-needs-power')!;
    return { front: front!, first, all, other, outOfSeason: file.outOfSeason };
  };
  const summer = at('summer');
  expect(summer.front).not.toContain(summer.first);
  expect(summer.other).toBeGreaterThan(0);
  expect(summer.all.indexOf(summer.first)).toBeGreaterThan(summer.other);
  expect(summer.outOfSeason).toBe(true);
  const winter = at('winter');
  expect(winter.all.indexOf(winter.first)).toBeGreaterThan(0);
  expect(winter.all.slice(winter.other)).not.toContain(winter.first);
  expect(winter.outOfSeason).toBe(false);
});

const sayWhole = (plan: Plan, id: RuleId) => says(plan.cautions.find((one) => one.id === id)!);
