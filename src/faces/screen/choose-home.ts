import type { Hide } from '../../interview/hide-words';
import type { Key } from '../../interview/keys/key';
import { NO_ROW } from '../../interview/keys/no-row';
import { words } from '../../interview/words';
import { type HomeChoice, type HomeHere, homesChoice } from '../home-choice';
import { glyphsFor } from './glyphs';
import { hidingKeys } from './hiding';
import { homesFrame } from './homes-frame';
import { runView } from './run-view';

export interface HomesShown {
  readonly homes: readonly HomeHere[];
  readonly stdin: NodeJS.ReadStream;
  readonly stdout: NodeJS.WriteStream;
  /** On a screen that others see: a text without what is private. */
  readonly hide?: Hide;
}

/** Where the mark stands, the digits typed, and what to say about the last key. */
export interface At {
  readonly row: number;
  readonly digits: string;
  readonly error: string | null;
}

/** The homes of this folder on the window, to go on with one or to begin another. */
export function chooseHome({ homes, stdin, stdout, hide }: HomesShown): Promise<HomeChoice> {
  const { labels: whole, choices } = homesChoice(homes);
  const glyphs = glyphsFor(process.env);
  let at: At = { row: NO_ROW, digits: '', error: null };
  return runView<HomeChoice>({
    stdin,
    stdout,
    step: () => 'homes',
    ...(hide === undefined ? {} : { hide }),
    frame: (size, open) => {
      const labels = hide === undefined || open ? whole : whole.map(hide);
      const keys = hidingKeys(hide === undefined ? undefined : { open });
      const { row, error } = at;
      return homesFrame({ labels, homes: homes.length, row, error, keys, size, glyphs });
    },
    take: (key) => {
      if (['escape', 'ctrl-c', 'ctrl-s'].includes(key.name)) {
        return { way: 'leave', interrupted: key.name === 'ctrl-c' };
      }
      if (key.name === 'enter' && at.row !== NO_ROW) {
        return choices[at.row]!;
      }
      at = onHomesKey(at, key, whole.length);
      return null;
    },
  });
}

/** The list after a key that chooses nothing and leaves nothing. */
export function onHomesKey(given: At, key: Key, count: number): At {
  const to = (row: number): At => ({ row, digits: '', error: null });
  const last = count - 1;
  switch (key.name) {
    case 'up':
      return to(given.row <= 0 ? last : given.row - 1);
    case 'down':
      return to(given.row >= last ? 0 : given.row + 1);
    case 'page-up':
      return to(Math.max(0, given.row - 8));
    case 'page-down':
      return to(Math.min(last, given.row + 8));
    case 'home':
      return to(0);
    case 'end':
      return to(last);
    case 'enter':
      return { ...given, error: words.moveFirst };
    case 'text':
      return /^[0-9]$/.test(key.text) ? toDigit(given, key.text, count) : given;
    default:
      return given;
  }
}

function toDigit(given: At, digit: string, count: number): At {
  const both = Number(given.digits + digit);
  const number = both <= count ? both : Number(digit);
  if (number < 1 || number > count) return { ...given, digits: '', error: words.noSuchLine(digit) };
  return { row: number - 1, digits: String(number), error: null };
}
