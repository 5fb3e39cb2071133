import { expect, test } from 'vitest';
import { sayBothWays, sayThriftily } from '../../../src/papers/household/front/say-thriftily';
import { english } from '../../../src/words/en';
import { frozenPlan } from '../../frozen-plans';

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
