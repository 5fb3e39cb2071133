import { expect, test } from 'vitest';
import { type Disk, realDisk } from '../../src/store/disk';
import { MOST_BYTES, readText } from '../../src/store/read-text';

/** A file that has grown to so many bytes since it said how many it has, read a piece at a time. */
function grownDisk(saidBytes: number, bytes: number, pieceBytes: number): Disk {
  let read = 0;
  return {
    ...realDisk,
    open: () => 1,
    stat: () => ({ kind: 'file', bytes: saidBytes }),
    read(_, into, at) {
      const more = Math.min(pieceBytes, bytes - read, into.length - at);
      for (let i = 0; i < more; i++) into[at + i] = letter(read + i);
      read += more;
      return more;
    },
    close: () => {},
  };
}

const letter = (at: number) => 97 + (at % 23);

test.each([
  [0, 0],
  [0, 1],
  [10, 10],
  [10, 11],
  [10, 5000],
  [MOST_BYTES, MOST_BYTES],
  [10, MOST_BYTES],
])('a file that said %i bytes and has %i is read to its end', (said, bytes) => {
  const expected = Buffer.from(Uint8Array.from({ length: bytes }, (_, i) => letter(i))).toString();
  for (const piece of [7, 4096, MOST_BYTES]) {
    const text = readText('kim.home.yaml', grownDisk(said, bytes, Math.max(piece, bytes / 500)));
    expect(text === expected).toBe(true);
  }
});

test('a file that grows past the limit while it is read is refused', () => {
  for (const said of [10, MOST_BYTES])
    expect(() => readText('kim.home.yaml', grownDisk(said, MOST_BYTES + 1, 50_000))).toThrow(
      /TOOLARGE/,
    );
});
