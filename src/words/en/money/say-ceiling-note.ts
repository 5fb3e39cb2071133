import type { NotExact } from '../../../bill/dispatch/ceiling-year';
import type { CeilingNote } from '../../../plan/money/between-outages';

/** Why a better schedule than the best one found may exist. */
export const sayNotExact: Readonly<Record<NotExact, string>> = {
  'price-falls-with-use': 'the price falls as more is used, so a better schedule may exist',
  'first-demand-charge-only': 'only the first of several demand charges is limited',
  'peaks-of-later-months': 'what a peak costs in later months is left out',
  'export-by-its-hour': 'export is valued at the price of its hour',
  'least-bill': 'a least bill is reached in some month',
};

/** Why the most that could be saved was left out, or is not exact. */
export function sayCeilingNote(note: CeilingNote): string {
  switch (note.code) {
    case 'nothing-to-earn':
      return 'with one price at all hours and no solar there is nothing to earn';
    case 'one-route-only':
      return 'the most that could be saved is worked out for one battery route only';
    case 'demand-charge':
      return 'the most that could be saved is left out where a demand charge is paid, for it takes long to work out';
    case 'not-exact':
      return sayNotExact[note.why];
  }
}
