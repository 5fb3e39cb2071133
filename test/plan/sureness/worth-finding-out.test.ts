import { describe, expect, test } from 'vitest';
import type { Answers } from '../../../src/interview/answers';
import { frozenPlan } from '../../frozen-plans';
import { answersOf } from '../../households/read-household';

const AS_OF = '2026-11-25';
const plan = (answers: Answers) => frozenPlan(answers, AS_OF, 3);
const ids = (answers: Answers) => plan(answers).toFindOut.map(({ question }) => question);

describe('what does not touch the route advised or its neighbors is left out', () => {
  test('a renter who plugs in a pack is not sent to the meter, the walls or the bill', () => {
    const answers = {
      ...answersOf('tower-six'),
      'supply-volts': 'not sure',
      'wiring-signs': 'not sure',
      'bill-kwh': 'not sure',
      'main-amps': 'not sure',
      'cpap-watts': 'not sure',
    };
    expect(plan(answers).advice.route.kind).toBe('power-pack');
    const found = ids(answers);
    for (const id of ['supply-volts', 'wiring-signs', 'bill-kwh', 'main-amps'])
      expect(found).not.toContain(id);
    expect(found).toContain('cpap-watts');
  });

  test('a whole file leaves nothing that would change what to buy', () => {
    for (const one of plan(answersOf('mill-lane')).toFindOut) expect(one.safety).toBe(false);
  });
});

describe('first what could close a route, then by how much it would change', () => {
  const answers = {
    ...answersOf('birch-street'),
    'panel-signs': 'not sure',
    operators: 'not sure',
    'heat-watts': 'not sure',
  };
  const found = plan(answers).toFindOut;

  test('in this order', () => {
    const firstOther = found.findIndex(({ safety }) => !safety);
    expect(found.slice(0, firstOther).every(({ safety }) => safety)).toBe(true);
    expect(found.slice(firstOther).some(({ safety }) => safety)).toBe(false);
    const changes = found.slice(firstOther).map((one) => one.changes);
    expect(changes).toEqual([...changes].sort((a, b) => b - a));
    expect(found.map(({ question }) => question)).toEqual(
      expect.arrayContaining(['panel-signs', 'operators', 'heat-watts']),
    );
  });

  test('each says what its answer would decide', () => {
    const panel = found.find(({ question }) => question === 'panel-signs')!;
    expect(panel.safety).toBe(true);
    expect(panel.decides).toMatchObject({ code: 'closes-route', route: 'engine-inlet' });
    const heat = found.find(({ question }) => question === 'heat-watts')!;
    expect(heat.decides).toMatchObject({ code: 'moves-price' });
  });
});
