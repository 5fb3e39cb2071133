import { expect, test } from 'vitest';
import { type At, onHomesKey } from '../../../src/faces/screen/choose-home';
import { glyphsFor } from '../../../src/faces/screen/glyphs';
import { homesFrame } from '../../../src/faces/screen/homes-frame';
import { NAMES } from '../key-names';

const labels = Array.from({ length: 12 }, (_, i) => `home-${i + 1}`);

test.each([0, 5, 11])(
  'the foot of the list of homes names every key that moves in it: %i',
  (row) => {
    const at: At = { row, digits: '', error: null };
    const { lines } = homesFrame({
      ...{ title: 'Homes', hint: 'Choose.', isFirst: true },
      ...{ labels, homes: 11, row, error: null, keys: [] },
      ...{ size: { columns: 80, rows: 24 }, glyphs: glyphsFor({ LANG: 'C.UTF-8' }) },
    });
    const foot = lines
      .slice(-2)
      .map((line) => line.map(({ text }) => text).join(''))
      .join(' ');
    const moves = NAMES.filter(([key]) => onHomesKey(at, key, labels.length).row !== row);
    expect(moves.length).toBeGreaterThan(3);
    expect(moves.filter(([, name]) => !name.test(foot))).toEqual([]);
    // What chooses and leaves is heard before.
    for (const way of ['Enter choose', 'Esc leave', 'Ctrl+S leave']) expect(foot).toContain(way);
  },
);
