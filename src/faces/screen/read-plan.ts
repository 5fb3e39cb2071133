import type { Key } from '../../interview/key';
import { openKeyboard } from './keys/open-keyboard';
import { openCanvas } from './open-canvas';
import { planFrame } from './plan-frame';
import { planKey } from './plan-keys';
import { planLines } from './plan-lines';
import { isSmall } from './small-window';
import { Standing } from './standing';
import { watchSuspension } from './suspension';
import { takeTerminal } from './terminal-modes';
import { sizeOf, watchSize } from './watch-size';
import { isAlwaysHeard } from './whose-key';

export interface PlanReading {
  readonly markdown: string;
  readonly stdin: NodeJS.ReadStream;
  readonly stdout: NodeJS.WriteStream;
  readonly color: boolean;
}

/** How the reader left: to stop, or to begin with the next home. */
export type Left = 'done' | 'next';

/** Show the summary in a window that scrolls and never overflows. Resolves when the reader leaves it. */
export async function readPlan({ markdown, stdin, stdout }: PlanReading): Promise<Left> {
  const terminal = takeTerminal({ stdin, stdout });
  const standing = new Standing();
  const linesAt = remember(markdown);
  let view = { scroll: 0, asking: false };
  let page = 1;
  const stepNow = () => (view.asking ? 'next home' : 'plan');
  const canvas = openCanvas(stdout);
  const frame = () => {
    const made = planFrame(linesAt(sizeOf(stdout).columns), sizeOf(stdout), view);
    view = { ...view, scroll: Math.min(view.scroll, made.maxScroll) };
    page = made.page;
    return made;
  };
  let left = false;
  const draw = (how: 'over' | 'anew' = 'over') => {
    const now = () => {
      if (left) return;
      if (!isSmall(sizeOf(stdout))) standing.set(stepNow());
      if (how === 'anew') canvas.redraw(frame);
      else canvas.draw(frame);
    };
    if (standing.is(stepNow())) now();
    else standing.whenQuiet(now);
  };
  const way = await new Promise<Left>((done) => {
    const take = (key: Key): Left | null => {
      const means = planKey(key, view.asking, page);
      if (means === 'leave') return 'done';
      if (means === 'next') return 'next';
      const by = typeof means === 'object' ? means.scroll : 0;
      view = { scroll: Math.max(0, view.scroll + by), asking: means === 'ask-next' };
      return null;
    };
    const keyboard = openKeyboard({
      stdin,
      onGone: () => terminal.gone(),
      onKeys: (keys) => {
        standing.hear();
        for (const key of keys) {
          if (key.name === 'ctrl-z') {
            suspension.suspend();
            return;
          }
          // Enter pressed once too often while the plan was made would leave it unread.
          if (!isAlwaysHeard(key) && !standing.is(stepNow())) continue;
          const out = take(key);
          if (out === null) continue;
          left = true;
          keyboard.close();
          stop();
          suspension.close();
          done(out);
          return;
        }
        draw();
      },
    });
    const suspension = watchSuspension({
      lend: () => {
        canvas.close();
        keyboard.rest();
        terminal.lend();
      },
      retake: () => {
        terminal.retake();
        keyboard.wake();
        draw();
      },
    });
    const stop = watchSize(stdout, () => draw('anew'));
    draw();
  });
  canvas.close();
  terminal.leave();
  return way;
}

/** Lines are made anew only when the width has changed. */
function remember(markdown: string): (columns: number) => readonly string[] {
  let made: { columns: number; lines: readonly string[] } | null = null;
  return (columns) => {
    if (made?.columns !== columns) made = { columns, lines: planLines(markdown, columns) };
    return made.lines;
  };
}
