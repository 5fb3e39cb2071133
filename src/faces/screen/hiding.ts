import type { Hide } from '../../interview/hide-words';
import { isHidden, tellsOfHidden } from '../../interview/questions/is-hidden';
import type { Interview } from '../../interview/questions/question';
import { questionAt } from '../../interview/questions/relevant';
import type { State } from '../../interview/state';
import type { Frame } from './frame';
import { type Span, shorten, widthOf } from './line';

/** A screen that others see: what is private is hidden until a key opens it for a moment. */
export interface Hiding {
  /** Open until the next key; a list, while one chooses in it. */
  readonly open: boolean;
  /** The last key would have chosen what nobody could see, and was not used. */
  readonly unseen?: boolean;
  /** A text without what is private, wherever it comes from. */
  readonly hide: Hide;
}

export const HIDDEN = 'Hidden on a shared screen. Ctrl+O shows it while you choose.';
export const UNSEEN = 'Nothing is chosen unseen. Press Ctrl+O, then choose.';
export const HIDDEN_ANSWER = 'hidden';

/** What to do with a text just now; nothing where the screen is not shared or is open. */
export function hideOf(hiding: Hiding | undefined): Hide {
  return hiding === undefined || hiding.open ? (text) => text : hiding.hide;
}

/** Whether the answers to a question are hidden just now. */
export function hidesAnswer(
  hiding: Hiding | undefined,
  interview: Pick<Interview, 'private'>,
  id: string,
): boolean {
  return hiding !== undefined && !hiding.open && isHidden(interview, id);
}

/** The key that opens, or what closes again. `inList`: it stays open while one chooses. */
export function hidingKeys(hiding: Pick<Hiding, 'open'> | undefined, inList = false): string[] {
  if (hiding === undefined) return [];
  if (!hiding.open) return ['Ctrl+O show'];
  return [inList ? 'Ctrl+O hide' : 'any key hides again'];
}

/** The keys of a screen, with the one that opens behind the first. */
export function withHidingKeys(
  [first = '', ...rest]: readonly string[],
  hiding: Pick<Hiding, 'open'> | undefined,
  inList = false,
): string[] {
  return [first, ...hidingKeys(hiding, inList), ...rest];
}

/** What is said beside the question, without what is private. What was typed may stand in it. */
export function hiddenState(state: State, interview: Interview, hiding: Hiding | undefined): State {
  if (hiding === undefined || hiding.open) return state;
  const { hide } = hiding;
  const personal = isHidden(interview, state.at);
  const said = (text: string | null) => (text === null ? null : hide(text));
  const told = (text: string | null) => (personal && text !== null ? HIDDEN_MESSAGE : said(text));
  const { next, unusual, trail } = state;
  const before = trail.at(-1);
  // A notice tells of the question on the screen or of the one just answered.
  const ofOther = before !== undefined && isHidden(interview, before);
  return {
    ...state,
    error: told(state.error),
    notice: state.notice === null ? null : personal || ofOther ? NOTED : hide(state.notice),
    unsaved: said(state.unsaved),
    next: next?.code === 'ask' ? { ...next, why: hide(next.why) } : next,
    unusual: unusual === null || !personal ? unusual : { ...unusual, said: HIDDEN_ANSWER },
  };
}

const NOTED = 'Noted. Ctrl+O shows what.';
const HIDDEN_MESSAGE = 'There is something to mend here. Ctrl+O shows what.';

/** A frame without what is private, every word kept as wide as it was: what no view has hidden by itself. */
export function hiddenFrame(frame: Frame, hiding: Hiding | undefined): Frame {
  if (hiding === undefined || hiding.open) return frame;
  const { hide } = hiding;
  return { ...frame, lines: frame.lines.map((line) => line.map((span) => hiddenSpan(span, hide))) };
}

function hiddenSpan(span: Span, hide: Hide): Span {
  if (span.common === true) return span;
  // Between colors nothing can be padded; the plan was hidden before it was laid out.
  const text = span.painted === true ? hide(span.text) : keepingWidth(hide, span.text);
  return { ...span, text };
}

/** Whether a view holds nothing of this home, or what must be read at once: then no word of it is hidden. */
export function isCommon({ view, at }: State, interview: Interview): boolean {
  if (['welcome', 'act-now', 'tonight', 'tonight-help'].includes(view)) return true;
  return view === 'help' && !tellsOfHidden(interview, questionAt({ interview }, at));
}

/** The text hidden word by word, each padded or cut to the width it had. */
function keepingWidth(hide: Hide, text: string): string {
  const hidden = hide(text);
  if (hidden === text) return text;
  return shorten(hidden, widthOf(text), '').padEnd(text.length);
}
