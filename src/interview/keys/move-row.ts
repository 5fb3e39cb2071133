import { questionAt } from '../questions/relevant';
import type { Row } from '../rows';
import type { Context, State } from '../state';
import type { Key } from './key';

/** The highlight moved up or down by a line or a page. */
export function moveRow(
  state: State,
  count: number,
  name: 'up' | 'down' | 'page-up' | 'page-down',
): State {
  const by = { up: -1, down: 1, 'page-up': -8, 'page-down': 8 }[name];
  // Among many answers going on past the end is handy; below a warning it could mislead.
  const far =
    Math.abs(by) > 1 ||
    state.view === 'act-now' ||
    state.view === 'tonight' ||
    state.view === 'read-back' ||
    state.view === 'compare';
  // From no line at all, Down is the first one and Up the last.
  const from = state.row < 0 && by < 0 && !far ? count : state.row;
  const next = from + by;
  const row = far ? Math.min(count - 1, Math.max(0, next)) : (next + count) % count;
  // An error was read by whoever moves on.
  return { ...state, row, error: null };
}

/** In the list of answers Left and Right go from section to section, Home and End to its ends. */
export function moveTopic(context: Context, state: State, rows: readonly Row[], key: Key): State {
  const topicAt = (row: Row | undefined) =>
    row?.kind === 'answer' ? questionAt(context, row.id).topic : '';
  const starts = rows.flatMap((row, i) => {
    return i === 0 || topicAt(row) !== topicAt(rows[i - 1]) ? [i] : [];
  });
  const moved: State = { ...state, error: null };
  switch (key.name) {
    case 'left':
      return { ...moved, row: starts.filter((start) => start < state.row).at(-1) ?? 0 };
    case 'right':
      return { ...moved, row: starts.find((start) => start > Math.max(0, state.row)) ?? state.row };
    case 'home':
      return { ...moved, row: 0 };
    case 'end':
      return { ...moved, row: rows.length - 1 };
    default:
      return state;
  }
}
