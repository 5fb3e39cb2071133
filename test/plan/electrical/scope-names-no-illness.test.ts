import { expect, test } from 'vitest';
import { makeLoad } from '../../../src/home/loads/make-load';
import { scopeOf } from '../../../src/plan/electrical/scope';
import { planOf } from '../../households/read-household';

const { home, advice } = planOf('birch-street');

test.each([
  ['stairlift', ['access-lifts', 'stairlift-battery']],
  ['oxygen', ['medical-devices']],
] as const)('the circuit of a %s is quoted by its watts, and not by its name', (id, restsOn) => {
  const load = makeLoad('stairlift', { rank: 'must', restsOn, id: `${id}-there` as never });
  const { circuits } = scopeOf(
    { ...home, loads: [...home.loads, load] },
    { ...advice.route, carries: [...advice.route.carries, load.id] },
  );
  const unnamed = circuits.filter(({ called }) => called === null);
  expect(unnamed).toHaveLength(1);
  expect(unnamed[0]!.watts.value).toBe(load.runningWatts.value);
  expect(JSON.stringify(unnamed[0]!)).not.toMatch(/lift/i);
  expect(circuits.some(({ called }) => called?.code === 'furnace')).toBe(true);
});
