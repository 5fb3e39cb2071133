import type { Hide } from '../../interview/hide-words';
import type { Key } from '../../interview/keys/key';
import { isAlwaysHeard } from './event-for';
import type { Frame } from './frame';
import { hiddenFrame } from './hiding';
import { openKeyboard } from './keys/open-keyboard';
import { openCanvas } from './open-canvas';
import { isSmall } from './small-window';
import { Standing } from './standing';
import { watchSuspension } from './suspension';
import { takeTerminal } from './terminal-modes';
import { type Size, sizeOf, watchSize } from './watch-size';

/** A screen of its own beside the interview: what stands on it, and what a key does there. */
export interface ViewParts<Left> {
  readonly stdin: NodeJS.ReadStream;
  readonly stdout: NodeJS.WriteStream;
  /** `open`: what a shared screen hides is to be seen until the next key. */
  readonly frame: (size: Size, open: boolean) => Frame;
  /** A screen that others see: a text without what is private. */
  readonly hide?: Hide;
  /** What keys belong to just now. */
  readonly step: () => string;
  /** Handed what draws anew, for what is found while nobody presses a key. */
  readonly onDrawn?: (redraw: () => void) => void;
  /** How the reader left, or null to stay. */
  readonly take: (key: Key) => Left | null;
}

/** Show a screen until the reader leaves it. A key belongs to what stood there when it was pressed. */
export async function runView<Left>(parts: ViewParts<Left>): Promise<Left> {
  const { stdin, stdout, step, take, hide } = parts;
  const terminal = takeTerminal({ stdin, stdout });
  const standing = new Standing();
  const canvas = openCanvas(stdout);
  let open = false;
  const frame = () => {
    const made = parts.frame(sizeOf(stdout), open);
    return hide === undefined ? made : hiddenFrame(made, { open, hide });
  };
  let left = false;
  const draw = (how: 'over' | 'anew' = 'over') => {
    const now = () => {
      if (left) return;
      if (!isSmall(sizeOf(stdout))) standing.set(step());
      if (how === 'anew') canvas.redraw(frame);
      else canvas.draw(frame);
    };
    if (standing.is(step())) now();
    else standing.whenQuiet(now);
  };
  parts.onDrawn?.(() => {
    if (!left) draw();
  });
  const way = await new Promise<Left>((done) => {
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
          // Enter pressed once too often while this was made ready would leave it unread.
          if (!isAlwaysHeard(key) && !standing.is(step())) continue;
          open = key.name === 'show' && hide !== undefined;
          const out = key.name === 'show' ? null : take(key);
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
