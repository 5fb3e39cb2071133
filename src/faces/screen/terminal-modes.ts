/** Another screen page, a clear window, pastes marked as such. */
const ENTER = '\x1b[?1049h\x1b[2J\x1b[H\x1b[?2004h';
/** Pastes unmarked, cursor shown, colours off, the first page back. */
const LEAVE = '\x1b[?2004l\x1b[?25h\x1b[0m\x1b[?1049l';
export const CLEAR_WINDOW = '\x1b[2J\x1b[H';

const DEADLY = ['SIGTERM', 'SIGHUP'] as const;

export interface TerminalParts {
  readonly stdin: NodeJS.ReadStream;
  readonly stdout: NodeJS.WriteStream;
}

/**
 * Take the terminal for a while. Returns the function that gives it back, which also runs
 * by itself when the process ends, crashes or is told to end; then `beforeDeath` runs first. It may be called twice.
 */
export function takeTerminal(
  { stdin, stdout }: TerminalParts,
  beforeDeath: () => Promise<void> = async () => {},
): () => void {
  stdout.write(ENTER);
  let taken = true;
  const leave = () => {
    if (!taken) return;
    taken = false;
    process.off('exit', leave).off('uncaughtExceptionMonitor', leave);
    for (const signal of DEADLY) process.off(signal, onSignal);
    try {
      stdin.setRawMode?.(false);
      stdout.write(LEAVE);
    } catch {
      // The terminal itself is gone: there is nobody left to give it back to.
    }
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
  return leave;
}
