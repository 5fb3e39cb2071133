import { graphemes } from '../../interview/keys/text-field';
import type { Question } from '../../interview/questions/question';
import type { Row } from '../../interview/rows';
import type { State } from '../../interview/state';
import { sayUnit } from '../../interview/words';
import { HIDDEN, UNSEEN } from './hiding';
import { type Line, type Span, takeWidth, widthOf, wrapText } from './line';

/** Rows as lines, with the lines of the highlighted row and the column of the cursor in it. */
export interface Block {
  readonly lines: readonly Line[];
  /** First line of each row. */
  readonly starts: readonly number[];
  /** First and last line of the highlighted row. */
  readonly from: number;
  readonly to: number;
  /** Lines of the question's own rows, before "I'm not sure" and the like. */
  readonly own: number;
  /** Cursor column when a field is highlighted. */
  readonly cursorX: number | null;
}

export interface RowParts {
  readonly rows: readonly Row[];
  readonly state: State;
  readonly question: Question;
  readonly width: number;
  /** What is chosen or typed is not to be seen. */
  readonly hidden?: boolean;
  /** The last key would have chosen a hidden line. */
  readonly unseen?: boolean;
  /** No blank line before "I'm not sure" and the like. */
  readonly tight?: boolean;
}

const MARK = '> ';
const NO_MARK = '  ';

/** Lay out the rows of a question, the highlighted one marked. */
export function rowLines(parts: RowParts): Block {
  const { rows, state, question, width, hidden = false, unseen = false, tight = false } = parts;
  const lines: Line[] = [];
  const starts: number[] = [];
  let from = 0;
  let to = 0;
  let own = 0;
  let cursorX: number | null = null;
  rows.forEach((row, i) => {
    const here = i === state.row;
    if (row.kind === 'act' && i > 0 && rows[i - 1]!.kind !== 'act') {
      own = lines.length;
      if (!tight) lines.push([]);
    }
    const start = lines.length;
    starts.push(start);
    if (hidden && row.kind === 'choice') {
      // One line for all of them: which one is marked or ticked is nobody's business.
      if (i === 0)
        lines.push(...labelLines('', unseen ? UNSEEN : HIDDEN, isOwn(rows, state.row), width));
      else starts[starts.length - 1] = 0;
      if (here) [from, to] = [0, lines.length - 1];
      return;
    }
    if (row.kind === 'field') {
      const field = fieldLine(hidden ? dotted(state) : state, question, here, width);
      lines.push(...field.lines);
      if (here) cursorX = field.cursorX;
    } else {
      lines.push(...labelLines(lead(row, i, question), labelOf(row), here, width));
    }
    if (here) [from, to] = [start, lines.length - 1];
  });
  return { lines, starts, from, to, own: own || lines.length, cursorX };
}

function isOwn(rows: readonly Row[], marked: number): boolean {
  return rows[marked]?.kind === 'choice';
}

/** Each letter typed as a sign of its own, so that one sees that keys arrive. */
function dotted(state: State): State {
  const text = '*'.repeat(graphemes(state.field.text).length);
  return { ...state, field: { ...state.field, text } };
}

function labelOf(row: Row): string {
  if (row.kind === 'field') return '';
  return row.kind === 'answer' ? `${row.label}: ${row.said}` : row.label;
}

/** Number, and a tick box where several answers can be chosen. */
function lead(row: Row, i: number, question: Question): string {
  if (row.kind !== 'choice') return '';
  const number = `${i + 1}. `;
  return question.kind === 'choices' ? `${number}${row.ticked ? '[x]' : '[ ]'} ` : number;
}

/** A label under its lead, later lines indented to stand below the first. */
export function labelLines(before: string, label: string, here: boolean, width: number): Line[] {
  const indent = ' '.repeat(MARK.length + before.length);
  const look: Omit<Span, 'text'> = here ? { bold: true, tone: 'accent' } : {};
  return wrapText(label, width - indent.length).map((text, i) => [
    { text: (i === 0 ? (here ? MARK : NO_MARK) + before : indent) + text, ...look },
  ]);
}

const WIDEST_FIELD = 40;
/** Twelve numbers of four digits stand in one line; of a sentence as much as fits is seen. */
const WIDEST_LIST = 64;

/** The typed text between brackets with its unit, scrolled so that the cursor stays in sight. */
function fieldLine(state: State, question: Question, here: boolean, width: number) {
  const unit = question.unit === undefined ? '' : unitBeside(question.unit);
  const isList = question.kind === 'numbers';
  const beside = unit !== '' && !isList && width - widthOf(unit) - 8 >= 12;
  const widest = Math.min(
    isList || question.kind === 'text' ? WIDEST_LIST : WIDEST_FIELD,
    width - 6 - (beside ? widthOf(unit) + 1 : 0),
  );
  // The cursor needs a column of its own, or no letter could be scrolled into sight.
  const room = Math.max(1, widest);
  const letters = graphemes(state.field.text);
  let first = 0;
  const before = () => widthOf(letters.slice(first, state.field.cursor).join(''));
  while (before() > room - 1) first += 1;
  const shown = takeWidth(letters.slice(first).join(''), room);
  const mark = here ? MARK : NO_MARK;
  // Once a unit is typed, ours beside it would contradict it.
  const ours = beside && !/[a-z%$]/i.test(state.field.text) ? ` ${unit}` : '';
  const after = `${' '.repeat(room - widthOf(shown))} ]${ours}`;
  const look: Omit<Span, 'text'> = here ? { bold: true, tone: 'accent' } : {};
  const line: Line = [
    { text: `${mark}[ `, ...look },
    { text: shown, field: true },
    { text: after, ...look },
  ];
  const lines = unit !== '' && !beside ? [line, [{ text: `  in ${unit}` }]] : [line];
  return { lines, cursorX: mark.length + 2 + before() };
}

/** A count needs no unit beside the field. */
function unitBeside(unit: string): string {
  return unit === 'count' || unit === 'year' ? '' : sayUnit(unit);
}
