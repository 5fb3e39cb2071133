import { hangUp } from '../hang-up';

/** Another screen page, a clear window, pastes marked as such. */
const ENTER = '\x1b[?1049h\x1b[2J\x1b[H\x1b[?2004h';
/** Pastes unmarked, cursor shown, colors off, the first page back. */
const LEAVE = '\x1b[?2004l\x1b[?25h\x1b[0m\x1b[?1049l';
export const CLEAR_WINDOW = '\x1b[2J\x1b[H';
export const HIDE_CURSOR = '\x1b[?25l';

/** Signals that mean an end, and the code a shell gives each. */
const DEADLY = { SIGINT: 130, SIGQUIT: 131, SIGTERM: 143, SIGHUP: 129 } as const;
const SIGNALS = Object.keys(DEADLY) as (keyof typeof DEADLY)[];

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
  /** The terminal was closed: end at once. */
  gone(): void;
}

/**
 * Take the terminal for a while. When the process is told to end, `beforeDeath` runs before it is given back; where it
 * gives false there is still something to say, and the process ends by itself. A terminal that is gone is told nothing.
 */
export function takeTerminal(
  { stdin, stdout }: TerminalParts,
  beforeDeath: (gone: boolean) => Promise<boolean> = async () => true,
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
    for (const signal of SIGNALS) process.off(signal, onSignal);
    lend();
  };
  let dying = false;
  const onSignal = (signal: NodeJS.Signals) => {
    if (dying) return;
    dying = true;
    const gone = signal === 'SIGHUP';
    const die = () => {
      leave();
      if (gone) hangUp();
      else process.exit(DEADLY[signal as keyof typeof DEADLY]);
    };
    beforeDeath(gone).then((now) => now && die(), die);
  };
  process.on('exit', leave).on('uncaughtExceptionMonitor', leave);
  for (const signal of SIGNALS) process.on(signal, onSignal);
  return { leave, lend, retake: () => stdout.write(ENTER), gone: () => onSignal('SIGHUP') };
}
