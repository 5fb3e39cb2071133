import type { Key } from '../../interview/keys/key';

/** Rows of a list that Page Up and Page Down go over. */
const PAGE = 8;

/** The row of a list a key leads to, from its end on to its other end; null where the key moves nothing. */
export function rowAfterKey(key: Key, row: number, count: number): number | null {
  const last = count - 1;
  switch (key.name) {
    case 'up':
      return row <= 0 ? last : row - 1;
    case 'down':
      return row >= last ? 0 : row + 1;
    case 'page-up':
      return Math.max(0, row - PAGE);
    case 'page-down':
      return Math.min(last, row + PAGE);
    case 'home':
      return 0;
    case 'end':
      return last;
    default:
      return null;
  }
}
