import { type Instance, render } from 'ink';
import { Drawing } from './drawing';
import type { Frame } from './frame';
import { isSmall, smallLine } from './small-window';
import { silentKeyboard, surfaceFor } from './surface';
import { CLEAR_WINDOW, HIDE_CURSOR } from './terminal-modes';
import { sizeOf } from './watch-size';

export interface Canvas {
  draw(make: () => Frame): void;
  /** Forget what stands on the screen and draw on a clear window. */
  redraw(make: () => Frame): void;
  close(): void;
}

/** Frames a second: a key is on the screen within a sixtieth of a second. */
const MAX_FPS = 120;

/**
 * Ink on the whole window, drawing frames and nothing else. In a window too small for a frame none is made: one line
 * of our own says so.
 */
export function openCanvas(stdout: NodeJS.WriteStream): Canvas {
  const start = (frame: Frame): Instance => {
    stdout.write(CLEAR_WINDOW);
    return render(<Drawing frame={frame} />, {
      stdout: surfaceFor(stdout),
      stdin: silentKeyboard(),
      exitOnCtrlC: false,
      patchConsole: false,
      maxFps: MAX_FPS,
    });
  };
  let ink: Instance | null = null;
  let small: string | null = null;
  const close = () => {
    ink?.clear();
    ink?.unmount();
    ink = null;
    small = null;
  };
  const saySmall = () => {
    const line = smallLine(sizeOf(stdout));
    if (line === small) return;
    close();
    stdout.write(CLEAR_WINDOW + HIDE_CURSOR + line);
    small = line;
  };
  return {
    draw(make) {
      if (isSmall(sizeOf(stdout))) return saySmall();
      small = null;
      if (ink === null) ink = start(make());
      else ink.rerender(<Drawing frame={make()} />);
    },
    redraw(make) {
      close();
      if (isSmall(sizeOf(stdout))) return saySmall();
      ink = start(make());
    },
    close,
  };
}
