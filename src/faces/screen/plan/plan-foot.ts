import { withHidingKeys } from '../hiding';
import type { PlanState } from './plan-state';

/** What leads from the plan to a view of its own: the letter, and what it does. */
export interface BesideKey {
  readonly letter: string;
  readonly says: string;
}

/** The keys that do something in a view of the plan, the most used first, the way out last. */
export function planFoot(state: PlanState, around: Around): string[] {
  return withHidingKeys(keysOf(state, around), around.shared ?? undefined);
}

/** What the keys depend on besides the view. */
export interface Around {
  readonly atFront: boolean;
  readonly beside: readonly BesideKey[];
  readonly shared?: { readonly open: boolean } | null | undefined;
}

function keysOf({ view }: PlanState, { atFront, beside }: Around): string[] {
  switch (view) {
    case 'read':
      return [
        'Up Down Space read on',
        'Enter sections',
        ...beside.map(said),
        '/ find',
        '? all keys',
        'N homes',
        'Left Right section',
        atFront ? 'Esc leave' : 'Esc back',
      ];
    case 'sections':
      return [
        'Up Down or number',
        'Enter or Right open',
        '/ find',
        'Page Up Page Down Home End',
        'Ctrl+S leave',
        'Esc front page',
      ];
    case 'find':
      return ['Enter find', 'Ctrl+S leave', 'Esc back'];
    case 'found':
      return [
        'Right or Enter next hit',
        'Left hit before',
        '/ other word',
        'Up Down Space read on',
        '? all keys',
        'Esc back',
      ];
    case 'keys':
      return ['Up Down Space read on', 'Any other key back'];
    case 'leaving':
      return ['Y leave', 'Ctrl+S leave', 'Any other key back'];
    case 'homes':
      return ['Y go there', 'Ctrl+S leave', 'Any other key back'];
  }
}

/** What stands there where a key asks before it acts. */
export const ASKED = {
  leaving: 'Leave this plan? It stays in its files.',
  homes: 'Leave this plan and go to the homes of this folder? It stays in its files.',
} as const;

/** Every key of the plan, one a line: what it is, and what it does. */
export function allKeys({ beside, shared }: Pick<Around, 'beside' | 'shared'>): string[] {
  return [
    'Up and Down: a line on or back',
    'Space, Page Down and Page Up: a page on or back',
    'Home and End: to the front page, to the end',
    'Enter: the list of sections; Enter there opens one',
    'Left and Right: the section before, the next one',
    '/: find a word; then Right and Left go from hit to hit',
    ...beside.map(({ letter, says }) => `${letter.toUpperCase()}: ${says}`),
    'N: the homes of this folder, and another home',
    ...(shared === undefined || shared === null
      ? []
      : ['Ctrl+O: show what is hidden until the next key']),
    'Q: leave; it asks first',
    'Esc: back to the list of sections, to the front page, and out (it asks first)',
    'Ctrl+S or Ctrl+C: leave at once; the plan is in its files',
  ];
}

function said({ letter, says }: BesideKey): string {
  return `${letter.toUpperCase()} ${says}`;
}
