import { expect, test } from 'vitest';
import { changesBetween } from '../../../src/plan/changes/changes-between';
import type { PlanFacts } from '../../../src/plan/changes/plan-facts';
import { sayChanges } from '../../../src/words/en/changes/say-changes';
import { madeUp } from '../../plan/changes/facts';

const row = (facts: Partial<PlanFacts>, name: string) =>
  sayChanges(changesBetween(madeUp(), madeUp(facts))).rows.find((one) => one.name === name)!;

test('before and after are whole sentences with their units', () => {
  expect(row({ usd: { low: 2000, likely: 2400, high: 4000 } }, 'Price')).toEqual({
    name: 'Price',
    before: '$900 to $1,500, likely $1,200.',
    after: '$2,000 to $4,000, likely $2,400.',
    changed: true,
  });
  const lasts = {
    code: 'hours',
    today: { low: 0.4, likely: 8, high: 9 },
    stored: { gallons: 15, hours: { low: 40, likely: 60, high: 70 } },
    overDrawnYears: true,
  } as const;
  expect(row({ lasts, goalHours: 48, reachesGoal: true }, 'On a hard day').after).toBe(
    '8 h, careful count no hour on the fuel counted today. Once 15 gal is stored, 2 days 12 h, careful count 40 h. You want 48 h.',
  );
  expect(row({}, 'On a hard day').before).toBe(
    '20 h, careful count 14 h. You want 24 h: it falls short.',
  );
  expect(row({ odds: { today: 0.999, stored: null } }, 'Odds').after).toBe(
    'Through more than 99 of 100 outages of 24 h in winter.',
  );
  expect(row({ leavesOut: [{ id: 'a', name: 'Well pump' }] }, 'Odds').after).toBe(
    'With what it carries, through 42 of 100 outages of 24 h in winter.',
  );
  expect(row({ leavesOut: [{ id: 'a', name: 'Well pump' }] }, 'Left out').after).toBe('Well pump.');
});

test('figures of few years say "about", and claim neither all nor none', () => {
  const few = (today: number) =>
    row({ drawnYears: 5, odds: { today, stored: null } }, 'Odds').after.split(' of ')[0];
  expect([few(0.6), few(0.95), few(0)]).toEqual([
    'Through about 60',
    'Through 95 or more',
    'Through fewer than 5',
  ]);
});

test('a caution that can kill is said whole, another by its first sentence, and one we do not know is left out', () => {
  const { come, go } = sayChanges(
    changesBetween(
      madeUp({ cautions: [{ id: 'gone-since-form-1', severity: 4, careful: false }] }),
      madeUp({
        cautions: [
          { id: 'co-signs', severity: 5, careful: false },
          { id: 'safe-hours', severity: 4, careful: false },
        ],
      }),
    ),
  );
  expect(come[0]).toContain('Do not go back in for anything');
  expect(come[1]).toBe(
    'Only the clinician or supplier can say how long someone is safe without a device.',
  );
  expect(go).toEqual([]);
});

test('where life may hang on a device a source is a bridge, and the devices have hours of their own', () => {
  const devices = { likelyHours: 30.4, carefulHours: 0.4 };
  expect(row({ onlyBridge: true, devices }, 'What to get').after).toBe(
    'Only as a bridge: plug-in power pack: 1.8 kWh to use.',
  );
  expect(row({ devices }, 'Health devices').after).toBe(
    'Alone, all else off: 30 h, careful count no hour.',
  );
  expect(row({ devices: 'none-carried' }, 'Health devices').after).toBe('None of them is carried.');
});

test('a plan that counts on living thriftily says so', () => {
  const route = { ...madeUp().route, thriftily: true };
  expect(row({ route }, 'What to get').after).toBe(
    'Plug-in power pack, living thriftily: 1.8 kWh to use.',
  );
});

test('where nothing changes it says so', () => {
  expect(sayChanges(changesBetween(madeUp(), madeUp())).nothing).toBe(
    'Nothing of the plan changes.',
  );
});
