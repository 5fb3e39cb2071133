import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutKeys, NOTHING_PENDING, settleKeys } from '../../../../src/faces/screen/keys/cut-keys';
import type { Key } from '../../../../src/interview/keys/key';
import { anyText } from '../../../any-text';

/** Every chunk in turn, then a silence. */
function keysOf(...chunks: string[]): Key[] {
  let pending = NOTHING_PENDING;
  const keys: Key[] = [];
  for (const chunk of chunks) {
    const cut = cutKeys(pending, chunk);
    keys.push(...cut.keys);
    pending = cut.pending;
  }
  return [...keys, ...settleKeys(pending).keys];
}

/** Keys as short words: a letter stands for itself. */
function said(...chunks: string[]): string[] {
  return keysOf(...chunks).map((key) => (key.name === 'text' ? key.text : `<${key.name}>`));
}

describe('cutting a chunk into keys', () => {
  it('types letters and enters when they come at once', () => {
    expect(said('abc\r')).toEqual(['a', 'b', 'c', '<enter>']);
  });

  it('reads \\r, \\n and \\r\\n each as one Enter', () => {
    expect(said('\r')).toEqual(['<enter>']);
    expect(said('\n')).toEqual(['<enter>']);
    expect(said('\r\n')).toEqual(['<enter>']);
    expect(said('\r', '\n')).toEqual(['<enter>']);
    expect(said('\r\r\n\n')).toEqual(['<enter>', '<enter>', '<enter>']);
  });

  it('reads a line feed after a silence as an Enter of its own', () => {
    const { pending } = cutKeys(NOTHING_PENDING, '\r');
    expect(cutKeys(settleKeys(pending).pending, '\n').keys).toEqual([{ name: 'enter' }]);
  });

  it('reads the keys people have in their fingers', () => {
    expect(said('\x01\x05\x17\x0b\x15')).toEqual([
      '<home>',
      '<end>',
      '<erase-word>',
      '<erase-right>',
      '<ctrl-u>',
    ]);
    expect(said('\x1bb\x1bf')).toEqual(['<word-left>', '<word-right>']);
    expect(said('\x1b[1;5D\x1b[1;3C')).toEqual(['<word-left>', '<word-right>']);
  });

  it('reads a held backspace as many, and Delete as one', () => {
    expect(said('\x7f\x7f\x7f\b')).toEqual(Array(4).fill('<backspace>'));
    expect(said('\x1b[3~')).toEqual(['<delete>']);
  });

  // Key sequences: "XTerm Control Sequences", tables "PC-Style Function Keys" and "VT220-Style".
  it.each([
    ['\x1b[A', '<up>'],
    ['\x1bOA', '<up>'],
    ['\x1b[B', '<down>'],
    ['\x1b[C', '<right>'],
    ['\x1b[D', '<left>'],
    ['\x1b[H', '<home>'],
    ['\x1b[1~', '<home>'],
    ['\x1bOF', '<end>'],
    ['\x1b[4~', '<end>'],
    ['\x1b[5~', '<page-up>'],
    ['\x1b[6~', '<page-down>'],
  ])('reads %j as %s, whole or cut anywhere', (sequence, name) => {
    expect(said(sequence)).toEqual([name]);
    expect(said(...sequence)).toEqual([name]);
    expect(said(`a${sequence}b`)).toEqual(['a', name, 'b']);
  });

  it.each([
    ['Ctrl+F1', '\x1b[1;5P'],
    ['F5', '\x1b[15~'],
    ['Shift+Tab', '\x1b[Z'],
    ['focus in', '\x1b[I'],
    ['focus out', '\x1b[O'],
    ['a mouse report', '\x1b[<0;12;7M'],
    ['an old mouse report', '\x1b[M !!'],
    ['a cursor report', '\x1b[24;80R'],
    ['a color answer ended by BEL', '\x1b]11;rgb:0000/0000/0000\x07'],
    ['a color answer ended by ST', '\x1b]11;rgb:0000/0000/0000\x1b\\'],
    ['a device control string', '\x1bP1$r0m\x1b\\'],
    ['a Linux console function key', '\x1b[[A'],
    ['Alt and a letter', '\x1bx'],
    ['control characters without a meaning', '\x00\x04\x07\x0e\x1c'],
  ])('drops %s', (_, sequence) => {
    expect(said(`a${sequence}b`)).toEqual(['a', 'b']);
    expect(said('a', ...sequence, 'b')).toEqual(['a', 'b']);
  });

  it('hears Ctrl+C in the middle of anything', () => {
    expect(said('abc\x03')).toEqual(['a', 'b', 'c', '<ctrl-c>']);
    expect(said('\x1b[1;\x03')).toEqual(['<ctrl-c>']);
    expect(said('\x1b]11;rgb\x03')).toEqual(['<ctrl-c>']);
    expect(said('\x1b[200~half a paste\x03')).toEqual(['<ctrl-c>']);
  });

  it('reads a lone ESC as Esc only after a silence', () => {
    const cut = cutKeys(NOTHING_PENDING, '\x1b');
    expect(cut.keys).toEqual([]);
    expect(settleKeys(cut.pending).keys).toEqual([{ name: 'escape' }]);
  });

  it('reads ESC and a control key as Esc and that key', () => {
    expect(said('\x1b\r')).toEqual(['<escape>', '<enter>']);
    expect(said('\x1b\x1b')).toEqual(['<escape>', '<escape>']);
    expect(said('\x1b\x1b[A')).toEqual(['<escape>', '<up>']);
  });

  it('lets a silence end a sequence that never finishes', () => {
    const { pending } = cutKeys(NOTHING_PENDING, '\x1b]');
    const settled = settleKeys(pending);
    expect(settled.keys).toEqual([]);
    expect(cutKeys(settled.pending, 'a').keys).toEqual([{ name: 'text', text: 'a' }]);
  });

  it('hands on a paste as one text that does not enter', () => {
    const key = { name: 'text', text: 'two\nlines', pasted: true };
    const paste = '\x1b[200~two\nlines\n\x1b[201~';
    expect(keysOf(paste)).toEqual([key]);
    expect(keysOf(...paste)).toEqual([key]);
    expect(said(`${paste}\r`)).toEqual(['two\nlines', '<enter>']);
  });

  it('keeps an emoji with its joiners whole', () => {
    expect(said('👩‍🌾')).toEqual(['👩‍🌾']);
  });

  it('gives the same named keys however the bytes are cut', () => {
    const piece = fc.constantFrom(
      'a', '7', ' ', '?', '\r', '\n', '\t', '\x7f', '\x03', '\x13', '\x15', '\x1b[A', '\x1bOB',
      '\x1b[3~', '\x1b[1;5P', '\x1b[200~x\ry\x1b[201~', '\x1b[I', '\x1b]0;t\x07',
    ); // biome-ignore format: one row of keys
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 12 }), (pieces) => {
        const text = pieces.join('');
        expect(said(...text)).toEqual(said(text));
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });

  it('takes more letters at once than anybody types for a paste that was not marked', () => {
    const run = 'x'.repeat(4000);
    expect(keysOf(`${run}\r`)).toEqual([
      { name: 'text', text: run, pasted: true },
      { name: 'enter' },
    ]);
    expect(keysOf('x'.repeat(200))).toHaveLength(200);
  });

  it('never throws and never hands on a control character as text', () => {
    const chunk = anyText(40);
    const noise = fc.array(fc.oneof(chunk, fc.constantFrom('\x1b', '\x1b[', '\x1b[200~', '\x1bO')));
    fc.assert(
      fc.property(noise, (chunks) => {
        for (const key of keysOf(...chunks)) {
          if (key.name === 'text' && !key.pasted) {
            expect(key.text).not.toMatch(/[\x00-\x1f\x7f-\x9f]/);
          }
        }
      }),
      // The soak types 5,000 streams of noise (part keys).
      { seed: 20261125, numRuns: 200 },
    );
  });
});
