import type { Hide } from '../../../interview/hide-words';
import type { Key } from '../../../interview/keys/key';
import type { AskAgain } from '../../../interview/what-if/what-if-state';
import type { Frame } from '../frame';
import { glyphsFor } from '../glyphs';
import { runView } from '../run-view';
import { type Size, sizeOf } from '../watch-size';
import { measurePlan, planColumns } from './measure-plan';
import type { BesideKey } from './plan-foot';
import { planFrame } from './plan-frame';
import { type Left, letterOf, onPlanKey } from './plan-keys';
import { type LaidOut, layOut } from './plan-lines';
import { PLAN_START, type PlanState } from './plan-state';

/** The reader wants to answer these again; none: to choose from the list of answers. */
export type Asked = AskAgain;

/** A view of its own over the plan, such as what if or explain. */
export interface BesideView {
  /** `shared`: others see the screen, and what is hidden on it may be open just now. */
  readonly frame: (size: Size, shared?: { readonly open: boolean }) => Frame;
  /** 'back' is the plan again, where it was left. A key too many must not end the sitting. */
  readonly take: (key: Key) => 'back' | 'stay' | Asked;
  /** What keys belong to just now, in a word. */
  readonly step: () => string;
}

/** The key that opens it from the text of the plan. Letters N, Q and signs are taken. */
export interface Beside extends BesideKey {
  readonly open: (redraw: () => void) => BesideView | Asked;
}

export interface PlanReading {
  readonly name: string;
  readonly markdown: string;
  readonly stdin: NodeJS.ReadStream;
  readonly stdout: NodeJS.WriteStream;
  readonly beside?: readonly Beside[];
  /** On a screen that others see: a text without what is private. */
  readonly hide?: Hide;
}

/** Show the plan in a window that never overflows. Resolves when the reader leaves it. */
export function readPlan(reading: PlanReading): Promise<Left | Asked> {
  const { name, markdown, stdin, stdout, beside = [], hide } = reading;
  const whole = remember(markdown);
  const hidden = hide === undefined ? whole : remember(hide(markdown));
  const glyphs = glyphsFor(process.env);
  let state: PlanState = PLAN_START;
  let over: BesideView | null = null;
  let redraw = () => {};
  const partsAt = (size: Size, open: boolean) => {
    const laidOut = open ? whole : hidden;
    const shared = hide === undefined ? null : { open };
    return { name, plan: laidOut(planColumns(size)), state, size, glyphs, beside, shared };
  };
  return runView<Left | Asked>({
    stdin,
    stdout,
    onDrawn: (draw) => {
      redraw = draw;
    },
    step: () => (over === null ? `plan ${state.view}` : `beside ${over.step()}`),
    ...(hide === undefined ? {} : { hide }),
    frame: (size, open) => {
      if (over === null) return planFrame(partsAt(size, open));
      return over.frame(size, hide === undefined ? undefined : { open });
    },
    take: (key) => {
      if (over !== null) {
        if (key.name === 'ctrl-c' || key.name === 'ctrl-s') return 'done';
        const out = over.take(key);
        if (out === 'back') over = null;
        return typeof out === 'string' ? null : out;
      }
      const opened = beside.find(({ letter }) => letter === letterOf(key));
      if (opened !== undefined && state.view === 'read') {
        const view = opened.open(() => redraw());
        if ('ask' in view) return view;
        over = view;
        return null;
      }
      const next = onPlanKey(state, key, measurePlan(partsAt(sizeOf(stdout), false)).shown);
      if (typeof next === 'string') return next;
      state = next;
      return null;
    },
  });
}

/** Lines are made anew only when the width has changed. */
function remember(markdown: string): (columns: number) => LaidOut {
  let made: { columns: number; plan: LaidOut } | null = null;
  return (columns) => {
    if (made?.columns !== columns) made = { columns, plan: layOut(markdown, columns) };
    return made.plan;
  };
}
