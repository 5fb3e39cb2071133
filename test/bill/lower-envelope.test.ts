import { describe, expect, test } from 'vitest';
import { type Corner, lowerEnvelope } from '../../src/bill/dispatch/lower-envelope';
import { seeded } from '../fixtures/random-problem';

const random = seeded(11);
const LOW = 0;
const HIGH = 10;

/** A line of some corners, up and down, over part of the range or beyond it; its ends lie above all others. */
function anyLine(corners: number): Corner[] {
  let at = LOW - 2 + 8 * random();
  return Array.from({ length: corners }, (_, i) => {
    at += 0.05 + (10 * random()) / corners;
    return { at, cost: i === 0 || i === corners - 1 ? 5 : 4 * random() - 2 };
  });
}

const whole: Corner[] = [
  { at: LOW, cost: 3 },
  { at: HIGH, cost: 3 },
];

function costOf(line: readonly Corner[], at: number): number {
  const i = line.findIndex((corner, k) => k > 0 && line[k - 1]!.at <= at && at <= corner.at);
  if (i < 0) return Number.POSITIVE_INFINITY;
  const [from, to] = [line[i - 1]!, line[i]!];
  return from.cost + ((to.cost - from.cost) * (at - from.at)) / (to.at - from.at);
}

describe('the least of some lines', () => {
  test('is at every place the cost of the lowest line there', () => {
    for (let set = 0; set < 200; set++) {
      const lines = [whole, ...Array.from({ length: 8 }, () => anyLine(3 + (set % 6)))];
      const least = lowerEnvelope(lines, LOW, HIGH);
      for (let n = 0; n < 40; n++) {
        const at = LOW + (HIGH - LOW) * random();
        const lowest = Math.min(...lines.map((line) => costOf(line, at)));
        expect(costOf(least, at)).toBeCloseTo(lowest, 9);
      }
    }
  });

  test('takes few looks at corners, however many there are', () => {
    let looks = 0;
    const counted = ({ at, cost }: Corner) => ({
      get at() {
        looks++;
        return at;
      },
      cost,
    });
    const many = 60;
    // As in an hour of the dispatch: short lines hung from each corner of a long one.
    const long = Array.from({ length: many }, (_, i) => ({
      at: (HIGH * i) / (many - 1),
      cost: Math.sin(i) + 0.01 * i * i,
    }));
    const hung = long.map((corner) =>
      [-1.1, -0.4, 0, 0.7, 1.3].map((by) => ({
        at: corner.at + by,
        cost: corner.cost + 0.3 * Math.abs(by - 0.1),
      })),
    );
    lowerEnvelope(
      [long, ...hung].map((line) => line.map(counted)),
      LOW,
      HIGH,
    );
    expect(looks / (many * hung.length)).toBeLessThan(30);
  });
});
