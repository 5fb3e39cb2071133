import type { CeilingNote } from '../../../plan/money/between-outages';

/** Why the most that could be saved was left out, or is not exact. */
export function sayCeilingNote(of: CeilingNote): string {
  switch (of.code) {
    case 'nothing-to-earn':
      return 'with one price at all hours and no solar there is nothing to earn';
    case 'one-route-only':
      return 'the most that could be saved is worked out for one battery route only';
    case 'demand-charge':
      return 'the most that could be saved is left out where a demand charge is paid, for it takes long to work out';
    case 'not-exact':
      return of.why;
  }
}
