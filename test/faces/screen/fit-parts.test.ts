import { expect, test } from 'vitest';
import { cutLines } from '../../../src/faces/screen/fit-parts';
import type { Line } from '../../../src/faces/screen/line';

const line = (text: string): Line => [{ text }];
const said = (lines: readonly Line[]) => lines.map((one) => one.map((span) => span.text).join(''));

test('a sentence that does not fit ends in the mark, so that half a figure is never read as a whole one', () => {
  const lines = [line('A battery would last about 2'), line('days 5 h.')];
  expect(said(cutLines(lines, 1, '…'))).toEqual(['A battery would last about…']);
  expect(said(cutLines(lines, 2, '…'))).toEqual(['A battery would last about 2', 'days 5 h.']);
  expect(cutLines(lines, 0, '…')).toEqual([]);
});
