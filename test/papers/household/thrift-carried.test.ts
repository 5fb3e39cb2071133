import { describe, expect, test } from 'vitest';
import { traitsOf } from '../../../src/kinds/route-traits';
import {
  sayBothWays,
  sayThriftily,
  thriftItHangsOn,
} from '../../../src/papers/household/front/say-thriftily';
import type { Plan } from '../../../src/plan/plan';
import { english } from '../../../src/words/en';
import { frozenPlan } from '../../frozen-plans';
import { planOf } from '../../households/read-household';

test('living thriftily is told by the hours of what the route carries, never of what it leaves out', () => {
  const flat = frozenPlan(
    {
      'home-zip': '10001',
      'home-kind': 'apartment',
      'home-tenure': 'association',
      'heat-main': 'building',
      'water-source': 'town',
      'must-run': ['fridge', 'lights', 'phones', 'internet'],
      'goal-hours': 24,
      'goal-season': 'winter',
      'budget-now': 600,
      'people-risk': ['none'],
      'medical-devices': ['none'],
    },
    '2026-11-25',
    5,
  );
  const { route } = flat.advice;
  expect(route.way).toBe('thrifty');
  expect(route.carries).not.toContain('fridge');
  const says = [...sayThriftily(flat, english), sayBothWays(flat, english)].join(' ');
  expect(says).toContain('Thriftily means: battery lanterns for the lights; phones from 7 to 8 am');
  expect(says).not.toContain('refrigerator');
});

describe('a generator that rests while nothing is on', () => {
  const plan = planOf('mill-lane', {
    'must-run': ['phones', 'internet'],
    'medical-devices': ['none'],
  });
  const { route } = plan.advice;
  const own = plan.waysOfLiving.routes.find((one) => one.kind === route.kind)!;

  test('does so where there are hours in which nothing runs, and a battery has none to rest', () => {
    expect(own.restsThriftily).toBe(true);
    const packs = plan.waysOfLiving.routes.filter(
      (one) => traitsOf[one.kind].battery === 'plug-in',
    );
    expect(packs.length).toBeGreaterThan(0);
    expect(packs.map((one) => one.restsThriftily)).not.toContain(true);
    const cold = planOf('birch-street').waysOfLiving.routes;
    expect(cold.map((one) => one.restsThriftily)).not.toContain(true);
  });

  test('is told where its hours count on that, though no other measure lessens what it carries', () => {
    const alone: Plan = {
      ...plan,
      advice: { ...plan.advice, route: { ...route, way: 'thrifty', carries: [] } },
      waysOfLiving: { ...plan.waysOfLiving, routes: [{ ...own, sizedFor: 'thrifty' }] },
    };
    const still: Plan = {
      ...alone,
      waysOfLiving: {
        ...alone.waysOfLiving,
        routes: [{ ...own, sizedFor: 'thrifty', restsThriftily: false }],
        measures: alone.waysOfLiving.measures.map((one) => ({ ...one, ends: [] })),
      },
    };
    expect(thriftItHangsOn(alone, english)).toContain('the generator on only while something runs');
    expect(thriftItHangsOn(still, english)).toBeNull();
    expect(sayBothWays(still, english)).not.toContain('means');
  });
});
