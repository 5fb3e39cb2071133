import type { Key } from '../../src/interview/keys/key';

/** How each key is named where it does something. Ctrl+C and Ctrl+Z are those of every program of a terminal. */
export const NAMES: readonly (readonly [Key, RegExp])[] = [
  [{ name: 'enter' }, /\bEnter\b/],
  [{ name: 'escape' }, /\bEsc\b/],
  [{ name: 'tab' }, /\bTab\b/],
  [{ name: 'up' }, /(?<!Page )\bUp\b/],
  [{ name: 'down' }, /(?<!Page )\bDown\b/],
  [{ name: 'left' }, /\bLeft\b/],
  [{ name: 'right' }, /\bRight\b/],
  [{ name: 'home' }, /\bHome\b/],
  [{ name: 'end' }, /\bEnd\b/],
  [{ name: 'page-up' }, /\bPage Up\b/],
  [{ name: 'page-down' }, /\bPage Down\b/],
  [{ name: 'later' }, /Ctrl\+L\b/],
  [{ name: 'ctrl-s' }, /Ctrl\+S\b/],
  [{ name: 'text', text: ' ' }, /\bSpace\b/],
  [{ name: 'text', text: '?' }, /\?/],
  [{ name: 'text', text: '1' }, /\bnumber\b/i],
];
