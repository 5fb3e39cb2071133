import { expect, test } from 'vitest';
import { brokenAtSpaces } from '../../src/commands/broken-at-spaces';

test('a line is broken at spaces only, and a file name never', () => {
  const text = 'Stopped. Your answers are in oak.home.yaml.\nTo go on: lampkeeper oak.home.yaml\n';
  for (const columns of [20, 30, 40, 80]) {
    const lines = brokenAtSpaces(text, columns).split('\n');
    expect(lines.join(' ').replace(/\s+/g, ' ')).toBe(text.replace(/\s+/g, ' '));
    for (const line of lines) expect(line.length).toBeLessThanOrEqual(columns);
  }
  expect(brokenAtSpaces(text, 80)).toBe(text);
  expect(brokenAtSpaces('  a/very/long/path/to/oak.plan.yaml and more', 12)).toBe(
    '  a/very/long/path/to/oak.plan.yaml\n  and more',
  );
});
