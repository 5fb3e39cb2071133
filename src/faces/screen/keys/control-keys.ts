import type { Key } from '../../../interview/key';

type Named = Exclude<Key['name'], 'text'>;

/** Control characters that mean something. Every other one is dropped. */
export const CONTROL_KEYS: Readonly<Record<string, Named>> = {
  '\r': 'enter',
  '\n': 'enter',
  '\t': 'tab',
  '\b': 'backspace',
  '\x7f': 'backspace',
  '\x03': 'ctrl-c',
  '\x13': 'ctrl-s',
  '\x15': 'ctrl-u',
  '\x1a': 'ctrl-z',
};

/** Escape sequences that mean something, without their leading ESC. Every other one is dropped. */
export const SEQUENCE_KEYS: Readonly<Record<string, Named>> = {
  '[A': 'up',
  '[B': 'down',
  '[C': 'right',
  '[D': 'left',
  '[H': 'home',
  '[F': 'end',
  OA: 'up',
  OB: 'down',
  OC: 'right',
  OD: 'left',
  OH: 'home',
  OF: 'end',
  OM: 'enter',
  '[1~': 'home',
  '[7~': 'home',
  '[4~': 'end',
  '[8~': 'end',
  '[5~': 'page-up',
  '[6~': 'page-down',
  // Backspace and Delete cannot be told apart on every keyboard: both erase to the left.
  '[3~': 'backspace',
};
