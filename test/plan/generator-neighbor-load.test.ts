import { expect, test } from 'vitest';
import { runs } from '../../src/plan/ride-through/generator-neighbors';
import type { Route } from '../../src/routes/route';

const site = { watts: 2000, startVa: 2500 } as never;
const asks = (watts: number) =>
  ({
    power: { runningWatts: { value: watts }, startDemandVa: { value: 2000 } },
    usableKwh: null,
  }) as unknown as Route;

test('a smaller generator beside the one advised keeps the same room: at most 80 % of what it gives all day', () => {
  expect(runs(asks(1600), site)).toBe(true);
  expect(runs(asks(1700), site)).toBe(false);
});
