import { expect, test } from 'vitest';
import { glyphsFor } from '../../../../src/faces/screen/glyphs';
import { explainView } from '../../../../src/faces/screen/plan/explain-view';
import type { Key } from '../../../../src/interview/keys/key';

const figures = Array.from({ length: 12 }, (_, i) => ({
  says: `Figure ${i + 1}: ${i + 1} W`,
  lines: (columns: number) =>
    Array.from({ length: 40 }, (_, n) => `step ${n + 1} of ${i + 1}`.slice(0, columns)),
}));

function open(size = { columns: 80, rows: 24 }) {
  const view = explainView(figures, glyphsFor({}));
  const text = () =>
    view
      .frame(size)
      .lines.map((line) => line.map((span) => span.text).join(''))
      .join('\n');
  text();
  const press = (...keys: Key['name'][]) =>
    keys.map((name) => {
      const way = view.take({ name, text: '' } as Key);
      text();
      return way;
    });
  return { view, text, press };
}

test('Enter shows how the figure marked was worked out, Esc goes back to the list and then to the plan', () => {
  const { text, press } = open();
  expect(text()).toContain('> Figure 1: 1 W');
  expect(text()).toContain('Esc back to the plan');
  press('down', 'down', 'enter');
  expect(text()).toContain('step 1 of 3');
  expect(press('escape')).toEqual(['stay']);
  expect(text()).toContain('> Figure 3: 3 W');
  expect(press('escape')).toEqual(['back']);
});

test('a long explanation scrolls to its end and no further', () => {
  const { text, press } = open();
  press('enter', 'end', 'down', 'down');
  expect(text()).toContain('step 40 of 1');
  press('home');
  expect(text()).toContain('step 1 of 1');
  press('up', 'page-down');
  expect(text()).not.toContain('step 1 of 1\n');
});

test.each([
  [30, 10],
  [40, 24],
  [80, 24],
  [200, 60],
])('it fits a window of %i by %i, and the way out always stands there', (columns, rows) => {
  const { view, press } = open({ columns, rows });
  for (const keys of [[], ['end'], ['enter'], ['page-down']] as Key['name'][][]) {
    press(...keys);
    const { lines } = view.frame({ columns, rows });
    expect(lines.length).toBeLessThanOrEqual(rows - 2);
    const all = lines.map((line) => line.map(({ text }) => text).join(''));
    for (const line of all) expect(line.length).toBeLessThanOrEqual(columns);
    expect(all.join('\n')).toMatch(/Esc back to the (plan|figures)/);
  }
});

test('Enter pressed too often leaves nothing', () => {
  const { press } = open();
  expect(new Set(press(...Array<'enter'>(30).fill('enter')))).toEqual(new Set(['stay']));
});

test('the foot names every key that moves, and on a screen that others see the one that shows what is hidden', () => {
  const size = { columns: 120, rows: 40 };
  const { view, text, press } = open(size);
  const foot = (shared?: { open: boolean }) =>
    view
      .frame(size, shared)
      .lines.map((line) => line.map((span) => span.text).join(''))
      .join('\n');
  const moves = { up: 'Up', down: 'Down', home: 'Home', end: 'End' } as const;
  const inFigure = { ...moves, 'page-up': 'Page Up', 'page-down': 'Page Down' } as const;
  for (const [keys, enter] of [
    [moves, false],
    [inFigure, true],
  ] as const) {
    if (enter) press('enter');
    for (const [key, name] of Object.entries(keys)) {
      press(key === 'down' || key === 'page-down' || key === 'end' ? 'home' : 'end');
      const before = text();
      press(key as Key['name']);
      expect(text(), key).not.toBe(before);
      expect(text(), key).toContain(name);
    }
    expect(foot()).not.toContain('Ctrl+O');
    expect(foot({ open: false })).toContain('Ctrl+O show');
    expect(foot({ open: true })).toContain('any key hides again');
    expect(foot()).toContain('Ctrl+S leave');
  }
});
