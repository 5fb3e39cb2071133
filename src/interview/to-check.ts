import { NO_ROW } from './keys/no-row';
import { rowsOf } from './rows';
import type { Context, State } from './state';

/** The list of answers, on the line of the question we come from. */
export function toCheck(context: Context, state: State): State {
  const list: State = { ...state, view: 'check', row: 0, error: null, unusual: null };
  const row = rowsOf(context, list).findIndex((r) => r.kind === 'answer' && r.id === state.at);
  return { ...list, row: row < 0 ? NO_ROW : row, fromCheck: false };
}
