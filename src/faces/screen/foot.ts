import { NO_ROW } from '../../interview/keys/no-row';
import type { Question } from '../../interview/questions/question';
import { rowsOf } from '../../interview/rows';
import type { Context, State } from '../../interview/state';
import { placeOf } from '../../interview/walk';
import { flow, footItems, GAP } from './foot-items';
import type { FrameParts } from './frame';
import { withHidingKeys } from './hiding';
import { type Line, styled } from './line';
import { isHiddenList } from './unseen';

/** The keys that do something here, in as many lines as the width needs. */
export function footLines(parts: FrameParts, question: Question, width: number): Line[] {
  return styled(flow(footItemsOf(parts, question), width, GAP), { dim: true });
}

/**
 * The same where only so many lines are left: whole items, the first key and the way to save last given up.
 */
export function footWithin(
  parts: FrameParts,
  question: Question,
  { width, height }: { readonly width: number; readonly height: number },
): Line[] {
  if (height <= 0) return [];
  return footItems(footItemsOf(parts, question), { width, height });
}

/** On a shared screen the key that shows what is hidden stands second; keys seldom needed stand before the way out. */
function footItemsOf({ context, state, hiding, size }: FrameParts, question: Question): string[] {
  const often = footWords(context, state, question);
  const seldom = size.rows < ROOMY_FROM ? [] : seldomWords(state, question, often);
  const keys = [...often.slice(0, -1), ...seldom, ...often.slice(-1)];
  return withHidingKeys(keys, hiding, isHiddenList(context, state));
}

/** From so many rows on a line more of keys takes nothing from what is read. In lower windows help tells of them. */
const ROOMY_FROM = 30;

/** Every other key that does something here. */
function seldomWords({ view }: State, question: Question, often: readonly string[]): string[] {
  if (view === 'welcome' || view === 'wait') return [];
  const names = (words: string) => often.some((item) => item.includes(words));
  const listed = view === 'ask' && question.choices !== undefined && !names('number');
  return [
    ...(names('Up Down') ? [] : ['Up Down move']),
    ...(listed ? ['A number marks its line'] : []),
    'Page Up Page Down move far',
    ...(view === 'check' ? ['Home End first, last'] : []),
  ];
}

function footWords(context: Context, state: State, question: Question): string[] {
  switch (state.view) {
    case 'welcome':
      return ['Enter begin', 'Ctrl+S or Ctrl+C stop'];
    case 'help':
    case 'tonight-help':
      return ['Up Down read on', 'Enter or Esc back', 'Ctrl+S save and stop'];
    case 'label':
    case 'unusual':
      return [chooseOr(state, 'Enter choose'), 'Esc back', 'Ctrl+S save and stop'];
    case 'wait':
      return ['Esc back', 'Ctrl+S save and stop'];
    case 'tonight':
      return [
        'Up Down read and move',
        'Enter choose',
        '? help',
        'Esc back',
        'Ctrl+S save and stop',
      ];
    case 'walk':
    case 'enough':
    case 'first-plan':
    case 'act-now':
    case 'read-back':
    case 'compare':
      return ['Up Down read and move', 'Enter choose', 'Esc back', 'Ctrl+S save and stop'];
    case 'check':
      return [checkEnter(context, state), 'Left Right section', 'Esc back', 'Ctrl+S save and stop'];
    case 'ask':
      return askFoot(context, state, question);
  }
}

function checkEnter(context: Context, state: State): string {
  const here = rowsOf(context, state)[state.row]?.kind;
  return chooseOr(state, here === 'answer' ? 'Enter change' : 'Enter choose');
}

function askEnter(context: Context, state: State, question: Question): string {
  const row = rowsOf(context, state)[state.row];
  if (row === undefined && question.kind === 'choice') return 'Up Down or number, then Enter';
  if (row === undefined) return 'Up Down or number, Space ticks';
  if (row.kind !== 'choice') return 'Enter go on';
  return question.kind === 'choices' ? tickWords(state, row.ticked) : 'Enter choose';
}

/** A number only moves, for a second digit may follow: while its line has no tick, Space is what comes next. */
function tickWords({ digits, row }: State, ticked: boolean): string {
  return digits !== '' && !ticked ? `Space ticks line ${row + 1}` : 'Space ticks, Enter goes on';
}

/** While no line is marked Enter does nothing: how to mark one. */
function chooseOr({ row }: State, enter: string): string {
  return row === NO_ROW ? 'Up Down move, then Enter' : enter;
}

function askFoot(context: Context, state: State, question: Question): string[] {
  const later = placeOf(context.interview, question.id) === null ? [] : ['Ctrl+L look later'];
  const enter = askEnter(context, state, question);
  return [enter, '? help', 'Esc back', 'Tab not sure', ...later, 'Ctrl+S save and stop'];
}
