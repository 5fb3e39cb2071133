import { type Instance, render } from 'ink';
import { Drawing } from './drawing';
import type { Frame } from './frame';
import { silentKeyboard, surfaceFor } from './surface';
import { CLEAR_WINDOW } from './terminal-modes';

export interface Canvas {
  draw(frame: Frame): void;
  /** Forget what stands on the screen and draw on a clear window. */
  redraw(frame: Frame): void;
  close(): void;
}

/** Frames a second: a key is on the screen within a sixtieth of a second. */
const MAX_FPS = 120;

/** Ink on the whole window, drawing frames and nothing else. */
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
  const close = () => {
    ink?.clear();
    ink?.unmount();
    ink = null;
  };
  return {
    draw(frame) {
      if (ink === null) ink = start(frame);
      else ink.rerender(<Drawing frame={frame} />);
    },
    redraw(frame) {
      close();
      ink = start(frame);
    },
    close,
  };
}
