import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { type Frame, frameHeight } from '../../../src/faces/screen/frame';
import { glyphsFor } from '../../../src/faces/screen/glyphs';
import { lineWidth } from '../../../src/faces/screen/line';
import { type WhatIfParts, whatIfFrame } from '../../../src/faces/screen/views/what-if';
import { reduceWhatIf } from '../../../src/interview/what-if/reduce-what-if';
import { beginWhatIf } from '../../../src/interview/what-if/what-if-state';
import { changesBetween } from '../../../src/plan/changes/changes-between';
import { sayChanges } from '../../../src/words/en/changes/say-changes';
import { answersOf } from '../../households/read-household';
import { madeUp } from '../../plan/changes/facts';

const after = madeUp({
  drawnYears: 5,
  usd: { low: 2000, likely: 2400, high: 4000 },
  goalHours: 36,
  cautions: [{ id: 'co-signs', severity: 5, careful: false }],
});
const said = sayChanges(changesBetween(madeUp({ drawnYears: 5, cautions: [] }), after));
const begun = beginWhatIf(interview, answersOf('mill-lane'));
const moved = reduceWhatIf(begun, { type: 'key', key: { name: 'right' } });

const draw = (columns: number, rows: number, changed: Partial<WhatIfParts> = {}): Frame =>
  whatIfFrame({
    name: 'oak-house',
    state: moved,
    said,
    isCurrent: true,
    size: { columns, rows },
    glyphs: glyphsFor({ LANG: 'C.UTF-8' }),
    ...changed,
  });
const texts = ({ lines }: Frame) => lines.map((line) => line.map(({ text }) => text).join(''));

describe('what if on the window', () => {
  test.each([
    [80, 24],
    [40, 24],
    [30, 10],
    [120, 40],
    [200, 60],
  ])('%i x %i: no line is wider, no frame taller, title and way out are seen', (columns, rows) => {
    for (const state of [
      begun,
      moved,
      { ...moved, at: 3, says: 'This line goes no further that way.' },
    ]) {
      const frame = draw(columns, rows, { state });
      expect(frame.lines.length).toBeLessThanOrEqual(frameHeight(rows));
      for (const line of frame.lines) expect(lineWidth(line)).toBeLessThanOrEqual(columns);
      const text = texts(frame).join('\n');
      expect(text).toMatch(/^What if/);
      expect(text).toContain('Esc plan');
      expect(text).toContain('> ');
    }
  });

  test('what is moved stands with where it stood, and both plans beside each other', () => {
    const lines = texts(draw(80, 24));
    expect(lines[1]).toBe('> Time to manage at home: < 36 h > (now 24 h)');
    expect(lines.join('\n')).toMatch(
      /Price +\$900 to \$1,500, likely \$1,200\. +\$2,000 to \$4,000, likely/,
    );
    expect(lines.join('\n')).toContain('Left out, the same: Nothing that must keep running.');
  });

  test('in 40 columns one stands below the other, each with its side', () => {
    const lines = texts(draw(40, 44));
    expect(lines).toContain('Price:');
    expect(lines.some((line) => line.startsWith('  Now: $900'))).toBe(true);
    expect(lines.some((line) => line.startsWith('  What if: $2,000'))).toBe(true);
  });

  test('in a low window the line that is marked is seen, and which of how many', () => {
    const lines = texts(draw(30, 10));
    expect(lines.join('\n')).toContain('> 1 of 7. Time to manage at');
  });

  test('Page Down reaches the last line: a caution that can kill is said whole', () => {
    const frame = draw(80, 24);
    const end = draw(80, 24, { state: { ...moved, scroll: frame.maxScroll } });
    const all = `${texts(frame).join(' ')} ${texts(end).join(' ')}`;
    expect(all).toContain('not even to stop the generator.');
    expect(all).toContain('the end');
  });

  test('before anything is moved the plan stands there in the same figures', () => {
    const text = texts(draw(80, 24, { state: begun })).join('\n');
    expect(text).toContain('Price: $900 to $1,500, likely $1,200.');
    expect(text).not.toContain('(now');
  });

  test('while figures are worked out it says so, and the older ones stay', () => {
    const text = texts(draw(80, 30, { isCurrent: false })).join('\n');
    expect(text).toContain('Working out the figures ...');
    expect(text).toContain('$2,000');
    expect(texts(draw(80, 24, { said: 'no-size' })).join(' ')).toContain('no such size');
  });
});

test('on a screen that others see the foot names the key that shows what is hidden, at every width', () => {
  for (const [columns, rows] of [
    [120, 40],
    [80, 24],
    [40, 24],
  ] as const) {
    const foot = (shared?: { open: boolean }) => texts(draw(columns, rows, { shared })).join('\n');
    expect(foot()).not.toContain('Ctrl+O');
    expect(foot({ open: false })).toContain('Ctrl+O show');
    expect(foot({ open: true })).toContain('any key hides again');
  }
  expect(texts(draw(120, 40)).join('\n')).toContain('Ctrl+S leave');
});
