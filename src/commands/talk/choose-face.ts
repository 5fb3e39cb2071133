/** Why the interview cannot draw on the whole window here; null when it can. */
export function whyLines(given: {
  env: NodeJS.ProcessEnv;
  stdin: { isTTY?: boolean };
  stdout: { isTTY?: boolean; columns?: number; rows?: number };
  plain: boolean;
}): string | null {
  const { env, stdin, stdout, plain } = given;
  if (plain) return 'asked for with --plain';
  if (!stdin.isTTY || !stdout.isTTY) return 'this is no terminal';
  if (said(env.CI)) return 'CI is set';
  if (env.TERM === 'dumb') return 'the terminal is plain';
  if (said(env.ACCESSIBLE) || env.INK_SCREEN_READER === 'true')
    return 'a screen reader is asked for';
  if ((stdout.columns ?? 80) < 30 || (stdout.rows ?? 24) < 10) return 'the window is very small';
  return null;
}

function said(value: string | undefined): boolean {
  return value !== undefined && !['', '0', 'false'].includes(value);
}

/** False with NO_COLOR, a plain terminal, or --no-color. */
export function mayColor(env: NodeJS.ProcessEnv, color: boolean): boolean {
  return color && (env.NO_COLOR ?? '') === '' && env.TERM !== 'dumb';
}
