import type { Hide } from '../../interview/hide-words';
import type { Key } from '../../interview/keys/key';
import { NO_ROW } from '../../interview/keys/no-row';
import { rowOfDigits } from '../../interview/keys/row-of-digits';
import { words } from '../../interview/words';
import {
  type HomeChoice,
  type HomeHere,
  type HomesList,
  homesList,
  streetsList,
} from '../home-choice';
import { glyphsFor } from './glyphs';
import { hidingKeys } from './hiding';
import { homesFrame, homesHelpFrame } from './homes-frame';
import { rowAfterKey } from './list-row';
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

const UNMARKED: At = { row: NO_ROW, digits: '', error: null };

/** The homes of this folder on the window, to go on with one or to begin another. */
export function chooseHome({ homes, stdin, stdout, hide }: HomesShown): Promise<HomeChoice> {
  const first = homesList(homes);
  const glyphs = glyphsFor(process.env);
  let list = first;
  let at = UNMARKED;
  let helps = false;
  const open = (next: HomesList) => {
    list = next;
    at = UNMARKED;
    return null;
  };
  return runView<HomeChoice>({
    stdin,
    stdout,
    step: () => (helps ? 'homes help' : list.title),
    ...(hide === undefined ? {} : { hide }),
    frame: (size, isOpen) => {
      if (helps) return homesHelpFrame(size, glyphs);
      const labels = hide === undefined || isOpen ? list.labels : list.labels.map(hide);
      const keys = hidingKeys(hide === undefined ? undefined : { open: isOpen });
      const { row, error } = at;
      const isFirst = list === first;
      return homesFrame({ ...list, labels, isFirst, row, error, keys, size, glyphs });
    },
    take: (key) => {
      if (key.name === 'ctrl-c' || key.name === 'ctrl-s')
        return { way: 'leave', interrupted: key.name === 'ctrl-c' };
      if (helps) {
        helps = key.name !== 'escape' && key.name !== 'enter';
        return null;
      }
      if (key.name === 'escape')
        return list === first ? { way: 'leave', interrupted: false } : open(first);
      if (key.name === 'text' && key.text === '?') helps = true;
      const chosen = key.name === 'enter' ? list.lines[at.row] : undefined;
      if (chosen?.way === 'which-street') return open(streetsList(homes));
      if (chosen !== undefined) return chosen;
      at = onHomesKey(at, key, list.labels.length);
      return null;
    },
  });
}

/** The list after a key that chooses nothing and leaves nothing. */
export function onHomesKey(given: At, key: Key, count: number): At {
  const row = rowAfterKey(key, given.row, count);
  if (row !== null) return { row, digits: '', error: null };
  if (key.name === 'enter') return { ...given, error: words.moveFirst };
  return key.name === 'text' && /^[0-9]$/.test(key.text) ? toDigit(given, key.text, count) : given;
}

function toDigit(given: At, digit: string, count: number): At {
  const named = rowOfDigits(given.digits, digit, count);
  if (named === null) return { ...given, digits: '', error: words.noSuchLine(digit) };
  return { ...named, error: null };
}
