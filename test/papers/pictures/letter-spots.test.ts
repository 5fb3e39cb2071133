import { expect, test } from 'vitest';
import { dollarsPicture } from '../../../src/papers/pictures/dollars-buy';
import { APART, letterSpots, OFF_LINE, type Spot } from '../../../src/papers/pictures/letter-spots';

const AXIS = 60;
const LINES = [64, 123, 182, 241, 300];

const nearest = (spot: Spot, others: readonly Spot[]) =>
  Math.min(...others.map((other) => Math.hypot(spot[0] - other[0], spot[1] - other[1])));

// Two choices a few dollars and one outage in a hundred apart, and others stacked above each other.
const close: Spot[] = [
  [60, 300],
  [63, 296],
  [68, 216],
  [107, 296],
  [118, 132],
  [142, 98],
  [190, 182],
  [197, 178],
  [198, 66],
];

test('no letter stands on a dot, on another letter or on a line where choices lie close together', () => {
  const letters = letterSpots(close, { lines: LINES, axis: AXIS });
  letters.forEach((letter, i) => {
    expect(nearest(letter, close)).toBeGreaterThanOrEqual(APART);
    expect(nearest(letter, letters.toSpliced(i, 1))).toBeGreaterThanOrEqual(APART);
    expect(letter[1]).toBeLessThan(300);
    expect(letter[1]).toBeGreaterThan(64);
    expect(letter[0] - AXIS).toBeGreaterThanOrEqual(OFF_LINE);
    for (const line of LINES) expect(Math.abs(line - letter[1])).toBeGreaterThanOrEqual(OFF_LINE);
    expect(nearest(letter, [close[i]!])).toBeLessThan(32);
  });
});

test('a dot alone has its letter above and to the right', () => {
  const [letter] = letterSpots([[200, 210]], { lines: LINES, axis: AXIS });
  expect(letter![0]).toBeGreaterThan(200);
  expect(letter![1]).toBeLessThan(210);
});

test('what can be spent is said inside the picture, however much it is', () => {
  for (const budgetUsd of [0, 500, 12_000, 20_000]) {
    const { drawing } = dollarsPicture(
      [{ letter: 'A', costUsd: 20_000, inHundred: 100, advised: true }],
      {
        budgetUsd,
        words: {
          ...{ title: 'T', description: 'D', across: 'price', up: 'share', advised: 'advised' },
          ...{ budget: 'what you can spend', dollars: String, count: String, head: [] },
        },
      },
    );
    const said = drawing.marks.find((one) => one.kind === 'text' && one.text.startsWith('what'))!;
    if (said.kind !== 'text') throw new Error('no text');
    // Letters of 13 units are about 7 wide, a figure from memory.
    const wide = 7 * said.text.length;
    const from = said.anchor === 'end' ? said.at.x - wide : said.at.x;
    expect(from).toBeGreaterThanOrEqual(0);
    expect(from + wide).toBeLessThanOrEqual(drawing.width);
  }
});
