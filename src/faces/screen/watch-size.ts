export interface Size {
  readonly columns: number;
  readonly rows: number;
}

/** Below these a screen cannot hold a question and its answers: one line says so. */
export const LEAST: Size = { columns: 30, rows: 10 };

/** The size of a terminal. One that gives no size counts as 80 by 24. */
export function sizeOf(stdout: NodeJS.WriteStream): Size {
  return { columns: stdout.columns || 80, rows: stdout.rows || 24 };
}

/** Call `onChange` once a change of the window's size has come to rest. Returns the function that stops it. */
export function watchSize(
  stdout: NodeJS.WriteStream,
  onChange: () => void,
  restMs = 40,
): () => void {
  let timer: NodeJS.Timeout | undefined;
  const onResize = () => {
    clearTimeout(timer);
    timer = setTimeout(onChange, restMs);
  };
  stdout.on('resize', onResize);
  return () => {
    clearTimeout(timer);
    stdout.off('resize', onResize);
  };
}
