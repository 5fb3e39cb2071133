export interface SuspensionParts {
  /** Give the terminal back as it was found. */
  readonly lend: () => void;
  /** Take it again and draw anew. */
  readonly retake: () => void;
}

export interface Suspension {
  /** Stop, as Ctrl+Z asks, until the shell brings us back. */
  suspend(): void;
  /** Heed these signals no longer. */
  close(): void;
}

/** Where nothing can stop us (no shell waits for us) we go on after this, ms. */
const NOT_STOPPED_AFTER_MS = 150;

/**
 * Stopping and coming back by the job control of POSIX.1-2017, Base Definitions, 11.1.9: in raw mode the terminal
 * sends no SIGTSTP for Ctrl+Z, so we send it, to the whole process group as the terminal would. The terminal is
 * given back first. Whatever stopped us, SIGCONT sets our modes again: the shell has used the terminal since.
 */
export function watchSuspension({ lend, retake }: SuspensionParts): Suspension {
  let away = false;
  let timer: NodeJS.Timeout | undefined;
  const stop = (whom: number) => {
    if (away) return;
    away = true;
    lend();
    // With a listener of ours the signal would not stop us.
    process.off('SIGTSTP', onStop);
    process.kill(whom, 'SIGTSTP');
    timer = setTimeout(back, NOT_STOPPED_AFTER_MS);
  };
  const onStop = () => stop(process.pid);
  const back = () => {
    clearTimeout(timer);
    if (!away) lend();
    else process.on('SIGTSTP', onStop);
    away = false;
    retake();
  };
  process.on('SIGTSTP', onStop).on('SIGCONT', back);
  return {
    suspend: () => stop(0),
    close() {
      clearTimeout(timer);
      process.off('SIGTSTP', onStop).off('SIGCONT', back);
    },
  };
}
