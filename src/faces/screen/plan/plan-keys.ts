import type { Key } from '../../../interview/keys/key';
import { rowOfDigits } from '../../../interview/keys/row-of-digits';
import { editField, fieldOf } from '../../../interview/keys/text-field';
import { rowAfterKey } from '../list-row';
import { findIn, type Hit } from './find-in-plan';
import { BEGINNING, lineOf, passageAt } from './passage';
import type { LaidOut } from './plan-lines';
import type { PlanState } from './plan-state';

/** How the reader left: to stop, or for the homes of this folder. */
export type Left = 'done' | 'homes';

/** The plan as it was drawn last. */
export interface Shown {
  readonly plan: LaidOut;
  /** First line in sight, and how many are. */
  readonly top: number;
  readonly page: number;
  readonly maxScroll: number;
  /** How far the list of all keys scrolls. */
  readonly keysScroll: number;
}

export const LOOKED = {
  none: (sought: string) => `"${sought}" is nowhere in this plan. Type another word, or press Esc.`,
  empty: 'Type a word to find, or press Esc.',
  noSection: (digit: string) => `No section here has the number ${digit}.`,
} as const;

/** The plan after a key, or how the reader left it. Pure. */
export function onPlanKey(state: PlanState, key: Key, shown: Shown): PlanState | Left {
  if (key.name === 'ctrl-c' || key.name === 'ctrl-s') return 'done';
  const still: PlanState = { ...state, says: null };
  switch (state.view) {
    case 'leaving':
      // Nothing but the letter named leaves, and anything else comes back.
      return letterOf(key) === 'y' ? 'done' : { ...still, view: 'read' };
    case 'homes':
      return letterOf(key) === 'y' ? 'homes' : { ...still, view: 'read' };
    case 'keys':
      return inKeys(still, key, shown);
    case 'sections':
      return inSections(still, key, shown.plan);
    case 'find':
      return inFind(still, key, shown);
    case 'found':
      return inFound(still, key, shown);
    case 'read':
      return inText(still, key, shown);
  }
}

/** A letter pressed, small; a paste is none. */
export function letterOf(key: Key): string {
  return key.name === 'text' && key.pasted !== true ? key.text.toLowerCase() : '';
}

function inText(state: PlanState, key: Key, shown: Shown): PlanState {
  const { plan, top } = shown;
  const here = sectionAt(plan, top);
  switch (letterOf(key)) {
    case 'n':
      return { ...state, view: 'homes' };
    case 'q':
      return { ...state, view: 'leaving' };
    case '/':
      return { ...state, view: 'find', field: fieldOf('') };
    case '?':
      return { ...state, view: 'keys', row: 0 };
    default:
      break;
  }
  switch (key.name) {
    case 'enter':
      return { ...state, view: 'sections', row: here, digits: '' };
    case 'escape':
      return here === 0
        ? { ...state, view: 'leaving' }
        : { ...state, view: 'sections', row: here, digits: '' };
    case 'left':
      // First to the head of what is read, as one turns back a page.
      return toSection(state, plan, top > sectionLine(plan, here) ? here : here - 1);
    case 'right':
      return toSection(state, plan, here + 1);
    default:
      return scrolled(state, key, shown);
  }
}

/** The list of all keys scrolls where it is longer than the window; any other key leaves it. */
function inKeys(state: PlanState, key: Key, { keysScroll, page }: Shown): PlanState {
  const by = steps(key, Math.max(1, page - 1));
  if (by === 0) return { ...state, view: 'read' };
  return { ...state, row: Math.max(0, Math.min(keysScroll, state.row + by)) };
}

function inSections(state: PlanState, key: Key, plan: LaidOut): PlanState {
  const count = plan.sections.length + 1;
  const letter = letterOf(key);
  if (letter === '/') return { ...state, view: 'find', field: fieldOf('') };
  if (/^[0-9]$/.test(letter)) return toDigit(state, letter, count);
  const row = rowAfterKey(key, state.row, count);
  if (row !== null) return { ...state, row, digits: '' };
  switch (key.name) {
    case 'enter':
    case 'right':
      // Whoever only looked at the list goes on where they read.
      return sectionAt(plan, lineOf(plan, state.passage)) === state.row
        ? { ...state, view: 'read' }
        : { ...toSection(state, plan, state.row), view: 'read' };
    case 'escape':
      return { ...state, view: 'read', passage: BEGINNING };
    default:
      return state;
  }
}

function toDigit(state: PlanState, digit: string, count: number): PlanState {
  const named = rowOfDigits(state.digits, digit, count);
  if (named === null) return { ...state, digits: '', says: LOOKED.noSection(digit) };
  return { ...state, ...named };
}

function inFind(state: PlanState, key: Key, shown: Shown): PlanState {
  if (key.name === 'escape') return { ...state, view: 'read' };
  if (key.name !== 'enter') return { ...state, field: editField({ field: state.field }, key) };
  const sought = state.field.text.trim();
  if (sought === '') return { ...state, says: LOOKED.empty };
  const hits = findIn(shown.plan.lines, sought);
  if (hits.length === 0) return { ...state, says: LOOKED.none(sought) };
  const onward = hits.findIndex(({ line }) => line >= shown.top);
  return toHit({ ...state, view: 'found', sought }, shown, hits, Math.max(0, onward));
}

function inFound(state: PlanState, key: Key, shown: Shown): PlanState {
  const hits = findIn(shown.plan.lines, state.sought);
  const letter = letterOf(key);
  if (letter === '/') return { ...state, view: 'find', field: fieldOf('') };
  if (letter === '?') return { ...state, view: 'keys', row: 0 };
  switch (key.name) {
    case 'right':
    case 'enter':
      return toHit(state, shown, hits, (state.hit + 1) % hits.length);
    case 'left':
      return toHit(state, shown, hits, (state.hit - 1 + hits.length) % hits.length);
    case 'escape':
      return { ...state, view: 'read' };
    default:
      return scrolled(state, key, shown);
  }
}

/** Lines left above what was found, so that one sees what it stands in. */
const ABOVE_HIT = 3;

function toHit(state: PlanState, shown: Shown, hits: readonly Hit[], hit: number): PlanState {
  const { line } = hits[hit]!;
  const inSight = line >= shown.top && line < shown.top + shown.page;
  const top = inSight ? shown.top : Math.max(0, line - Math.min(ABOVE_HIT, shown.page - 1));
  return { ...state, hit, passage: passageAt(shown.plan, Math.min(top, shown.maxScroll)) };
}

/** 0 for the front page, else the section a line stands in, counted from 1. */
export function sectionAt({ sections }: LaidOut, line: number): number {
  return sections.findLastIndex((section) => section.line <= line) + 1;
}

/** The line a section begins with. */
export function sectionLine({ sections }: LaidOut, section: number): number {
  return section <= 0 ? 0 : sections[Math.min(section, sections.length) - 1]!.line;
}

function toSection(state: PlanState, plan: LaidOut, section: number): PlanState {
  return { ...state, passage: passageAt(plan, sectionLine(plan, section)) };
}

function scrolled(state: PlanState, key: Key, { plan, top, page, maxScroll }: Shown): PlanState {
  const by = steps(key, Math.max(1, page - 1));
  // A key that moves nothing keeps the passage: a smaller window may have moved it out of reach for a while.
  if (by === 0) return state;
  return { ...state, passage: passageAt(plan, Math.min(maxScroll, Math.max(0, top + by))) };
}

function steps(key: Key, page: number): number {
  switch (key.name) {
    case 'up':
      return -1;
    case 'down':
      return 1;
    case 'page-up':
      return -page;
    case 'page-down':
      return page;
    case 'home':
      return Number.NEGATIVE_INFINITY;
    case 'end':
      return Number.POSITIVE_INFINITY;
    case 'text':
      return key.text === ' ' ? page : 0;
    default:
      return 0;
  }
}
