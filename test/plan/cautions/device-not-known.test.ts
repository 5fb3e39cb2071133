import { expect, test } from 'vitest';
import { cautionGroups } from '../../../src/plan/cautions/caution-groups';
import { frozenPlan } from '../../frozen-plans';
import { calmHome } from '../../rules/calm-home';

const groupsOf = (device: string) =>
  cautionGroups(
    frozenPlan(
      { ...calmHome, 'medical-devices': [device], 'second-source': ['cylinders'] },
      '2026-11-25',
      5,
    ),
  );

test('what nobody told of a device that is there stands whole, and not as a question alone', () => {
  const { unasked, settle } = groupsOf('oxygen-concentrator');
  const whole = unasked.map(({ id }) => id);
  expect(whole).toEqual(expect.arrayContaining(['safe-hours', 'device-battery-untested']));
  expect(settle.map(({ gravest }) => gravest.id)).not.toContain('safe-hours');
  expect(groupsOf('nebuliser').unasked.map(({ id }) => id)).not.toContain('safe-hours');
});
