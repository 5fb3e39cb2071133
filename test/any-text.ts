import fc from 'fast-check';

/** The first half of a pair of UTF-16, and the first code point after the second halves: alone neither is text. */
const [HALVES, AFTER_HALVES] = [0xd800, 0xe000];

const any = fc
  .nat({ max: 0x10ffff - (AFTER_HALVES - HALVES) })
  .map((n) => (n < HALVES ? n : n + AFTER_HALVES - HALVES));
/** Letters, marks and control characters, which among a million others would hardly be met. */
const plain = fc.nat({ max: 0xff });

const character = fc.oneof(any, plain).map((code) => String.fromCodePoint(code));

/**
 * Text of any characters, up to so many of them; now and then a word that every object has. What `fc.string` does with
 * its unit `binary` takes a table of a million characters first, over a second of the processor.
 */
export function anyText(maxLength: number): fc.Arbitrary<string> {
  const characters = fc.array(character, { maxLength }).map((all) => all.join(''));
  return fc.oneof({ weight: 9, arbitrary: characters }, fc.string({ maxLength }));
}
