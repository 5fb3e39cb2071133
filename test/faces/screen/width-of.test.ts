import stringWidth from 'string-width';
import { expect, test } from 'vitest';
import { widthOf } from '../../../src/faces/screen/line';

test('a text takes as many columns as the library of terminal widths says, letter by letter', () => {
  const wrong: string[] = [];
  const codes = (from: number, to: number) => Array.from({ length: to - from }, (_, n) => from + n);
  for (const code of [...codes(0x20, 0x200), ...codes(0x2000, 0x2060), ...codes(0x2190, 0x2680)]) {
    for (const text of [String.fromCodePoint(code), `a${String.fromCodePoint(code)}│`]) {
      if (widthOf(text) !== stringWidth(text)) wrong.push(`U+${code.toString(16)}`);
    }
  }
  expect(wrong).toEqual([]);
  for (const text of ['', '家', '👨‍👩‍👧', 'e\u0301', '── 家 ──'])
    expect(widthOf(text)).toBe(stringWidth(text));
});
