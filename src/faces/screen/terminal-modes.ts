/** Another screen page, a clear window, pastes marked as such. */
const ENTER = '\x1b[?1049h\x1b[2J\x1b[H\x1b[?2004h';
/** Pastes unmarked, cursor shown, colors off, the first page back. */
const LEAVE = '\x1b[?2004l\x1b[?25h\x1b[0m\x1b[?1049l';
export const CLEAR_WINDOW = '\x1b[2J\x1b[H';
export const HIDE_CURSOR = '\x1b[?25l';

const DEADLY = ['SIGTERM', 'SIGHUP'] as const;

export interface TerminalParts {
  readonly stdin: NodeJS.ReadStream;
  readonly stdout: NodeJS.WriteStream;
}

/** The terminal while it is ours. */
export interface Taken {
  /** Give it back for good; also done when the process ends, crashes or is told to end. May be called twice. */
  leave(): void;
  /** Give it back for a while, and take it again. */
  lend(): void;
  retake(): void;
}

/** Take the terminal for a while. When the process is told to end, `beforeDeath` runs before it is given back. */
export function takeTerminal(
  { stdin, stdout }: TerminalParts,
  beforeDeath: () => Promise<void> = async () => {},
): Taken {
  stdout.write(ENTER);
  let taken = true;
  const lend = () => {
    try {
      stdin.setRawMode?.(false);
      stdout.write(LEAVE);
    } catch {
      // The terminal itself is gone: there is nobody left to give it back to.
    }
  };
  const leave = () => {
    if (!taken) return;
    taken = false;
    process.off('exit', leave).off('uncaughtExceptionMonitor', leave);
    for (const signal of DEADLY) process.off(signal, onSignal);
    lend();
  };
  const onSignal = (signal: NodeJS.Signals) => {
    const die = () => {
      leave();
      process.kill(process.pid, signal);
    };
    beforeDeath().then(die, die);
  };
  process.on('exit', leave).on('uncaughtExceptionMonitor', leave);
  for (const signal of DEADLY) process.on(signal, onSignal);
  return { leave, lend, retake: () => stdout.write(ENTER) };
}
