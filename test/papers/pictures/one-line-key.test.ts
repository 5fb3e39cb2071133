import { expect, test } from 'vitest';
import { oneLinePicture } from '../../../src/papers/pictures/one-line';
import { toSvg } from '../../../src/papers/pictures/to-svg';

const words = { title: 'One line', description: 'It.', isNew: 'brand new', head: ['a', 'b', 'c'] };
const meter = { name: 'Meter', known: '', there: true };
const pictured = (there: boolean) =>
  oneLinePicture({ spine: [meter, { name: 'Switch', known: '', there }], joins: [] }, words);

test('a key says what is new only where something is', () => {
  for (const there of [true, false]) {
    const picture = pictured(there);
    expect(toSvg(picture.drawing).includes('brand new')).toBe(!there);
    expect(picture.inTerminal(76, 'ascii').join('\n').includes('brand new')).toBe(!there);
  }
});
