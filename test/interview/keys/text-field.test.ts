import { expect, test } from 'vitest';
import { begin } from '../../../src/interview/begin';
import type { Key } from '../../../src/interview/keys/key';
import {
  editField,
  eraseLeft,
  fieldOf,
  graphemes,
  insertText,
  isFull,
  LONGEST_FIELD,
  moveCursor,
} from '../../../src/interview/keys/text-field';
import { smallInterview } from '../../faces/small-interview';

test('letters go in at the cursor', () => {
  expect(insertText(moveCursor(fieldOf('ac'), -1), 'b')).toEqual({ text: 'abc', cursor: 2 });
});

test('an emoji of several parts is one letter, typed and erased whole', () => {
  const family = '👨‍👩‍👧';
  const field = insertText(fieldOf('a'), family);
  expect(field).toEqual({ text: `a${family}`, cursor: 2 });
  expect(eraseLeft(field)).toEqual({ text: 'a', cursor: 1 });
});

test('a letter joined to the one before it moves the cursor by whole letters', () => {
  const field = insertText(fieldOf('e'), '\u0301');
  expect(graphemes(field.text)).toHaveLength(1);
  expect(field.cursor).toBe(1);
});

test('control characters and line ends become one space', () => {
  expect(insertText(fieldOf(''), 'a\r\n\u0007b').text).toBe('a b');
});

test('the cursor stops at either end, and erasing at the start does nothing', () => {
  expect(moveCursor(fieldOf('abc'), 9).cursor).toBe(3);
  const start = moveCursor(fieldOf('abc'), -9);
  expect(start.cursor).toBe(0);
  expect(eraseLeft(start)).toBe(start);
});

test('a field holds so many letters; the rest is left out, and nothing is cut in two', () => {
  const full = insertText(fieldOf('ab'), 'x'.repeat(1_000_000));
  expect(full.text).toHaveLength(LONGEST_FIELD);
  expect(isFull(full)).toBe(true);
  expect(insertText(full, 'y')).toBe(full);
  const wide = insertText(fieldOf('a'), '\u{1f50b}'.repeat(1000));
  expect(isFull(wide)).toBe(true);
  expect(wide.text).toMatch(/^a(\u{1f50b})+$/u);
  expect(isFull(eraseLeft(eraseLeft(full)))).toBe(false);
});

test('the keys people have in their fingers edit by letter, by word and by line', () => {
  const context = {
    interview: smallInterview,
    short: false,
    nameProblem: () => null,
    spareName: () => 'home-1',
  };
  const blank = begin(context, {});
  const after = (text: string, cursor: number, ...names: Exclude<Key['name'], 'text'>[]) => {
    const { text: left, cursor: at } = names.reduce(
      (field, name) => editField({ ...blank, field }, { name }),
      { text, cursor },
    );
    return `${left}@${at}`;
  };
  expect(after('208/230 V 14 A', 14, 'erase-word', 'erase-word')).toBe('208/230 V @10');
  expect(after('208/230 V', 9, 'word-left')).toBe('208/230 V@8');
  expect(after('208/230 V', 9, 'word-left', 'word-left', 'word-left')).toBe('208/230 V@0');
  expect(after('208/230 V', 0, 'word-right')).toBe('208/230 V@7');
  expect(after('208/230 V', 3, 'erase-right')).toBe('208@3');
  expect(after('208', 0, 'delete')).toBe('08@0');
  expect(after('208', 3, 'delete')).toBe('208@3');
  expect(after('208', 1, 'end', 'home', 'delete', 'ctrl-u')).toBe('@0');
});
