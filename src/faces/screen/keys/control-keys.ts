import type { Key } from '../../../interview/keys/key';

type Named = Exclude<Key['name'], 'text'>;

/** Control characters that mean something. Every other one is dropped. */
export const CONTROL_KEYS: Readonly<Record<string, Named>> = {
  '\r': 'enter',
  '\n': 'enter',
  '\t': 'tab',
  '\b': 'backspace',
  '\x7f': 'backspace',
  '\x01': 'home',
  '\x02': 'left',
  '\x05': 'end',
  '\x06': 'right',
  '\x0b': 'erase-right',
  '\x17': 'erase-word',
  '\x0c': 'later',
  '\x0f': 'show',
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
  '[3~': 'delete',
  // Alt with a letter, and Ctrl or Alt with an arrow, as most terminals send them.
  b: 'word-left',
  f: 'word-right',
  '[1;5D': 'word-left',
  '[1;5C': 'word-right',
  '[1;3D': 'word-left',
  '[1;3C': 'word-right',
};
