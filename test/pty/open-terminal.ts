import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { spawn } from '@lydell/node-pty';
import xterm from '@xterm/headless';

export interface Size {
  readonly columns: number;
  readonly rows: number;
}

export interface Beside {
  readonly folder?: string;
  readonly env?: object;
  readonly file?: string;
  /** Modes this terminal does not know, such as `?1049`: they do nothing. */
  readonly without?: readonly string[];
}

/** One limit for every wait, just short of the test's own 20 s so that the screen is told. */
const LIMIT_MS = 19_000;

/** Start a program in a pseudo-terminal of a given size, in a folder of its own, and read its screen. */
export function openTerminal(
  command: readonly string[],
  { columns, rows }: Size,
  beside: Beside = {},
) {
  const folder = beside.folder ?? mkdtempSync(join(tmpdir(), 'lampkeeper-pty-'));
  // The terminal exists in its size before the program starts.
  const screen = new xterm.Terminal({ cols: columns, rows, allowProposedApi: true });
  const { CI: _, NO_COLOR: __, FORCE_COLOR: ___, npm_lifecycle_event: ____, ...env } = process.env;
  const pty = spawn(beside.file ?? process.execPath, [...command], {
    name: 'xterm-256color',
    cols: columns,
    rows,
    cwd: folder,
    env: { ...env, TERM: 'xterm-256color', LANG: 'C.UTF-8', HOME: folder, ...beside.env },
  });
  let raw = '';
  let wake = () => {};
  const unknown = (beside.without ?? []).flatMap((mode) => [`\x1b[${mode}h`, `\x1b[${mode}l`]);
  pty.onData((data) => {
    const known = unknown.reduce((text, code) => text.replaceAll(code, ''), data);
    // Counted once the screen has taken it in, so that bytes and screen tell of the same moment.
    screen.write(known, () => {
      raw += data;
      wake();
    });
  });
  screen.onData((answer) => pty.write(answer));
  let left: { exitCode: number; signal?: number | undefined } | null = null;
  pty.onExit((exit) => {
    left = exit;
    // What the program wrote last may still be on its way through the terminal.
    screen.write('', () => wake());
  });

  const lines = () => {
    const { active } = screen.buffer;
    return Array.from(
      { length: screen.rows },
      // Cells beyond the right edge may still be stored after the window has become narrower.
      (_, y) => active.getLine(active.viewportY + y)?.translateToString(true, 0, screen.cols) ?? '',
    );
  };
  const until = <T>(what: string, look: () => T | null | false): Promise<T> =>
    new Promise((resolve, reject) => {
      const timer = setTimeout(() => {
        reject(new Error(`waited for ${what}; the screen shows:\n${lines().join('\n')}`));
      }, LIMIT_MS);
      wake = () => {
        if (left === null && isDrawing(raw)) return;
        const found = look();
        if (found === null || found === false) return;
        clearTimeout(timer);
        wake = () => {};
        resolve(found);
      };
      wake();
    });

  return {
    folder,
    pid: pty.pid,
    lines,
    text: () => lines().join('\n'),
    raw: () => raw,
    /** Lines that have scrolled off the top of the first page. */
    scrolledOff: () => screen.buffer.normal.baseY,
    cursor: () => ({ x: screen.buffer.active.cursorX, y: screen.buffer.active.cursorY }),
    press: (keys: string) => pty.write(keys),
    /** Wait until the screen shows a text. */
    shows: (text: string) => until(`"${text}"`, () => lines().join('\n').includes(text)),
    /** Wait until the screen no longer shows a text. */
    hides: (text: string) => until(`no "${text}"`, () => !lines().join('\n').includes(text)),
    until,
    resize(size: Size) {
      screen.resize(size.columns, size.rows);
      pty.resize(size.columns, size.rows);
    },
    /** Forget all that was shown and written, as a terminal that was just opened. */
    forget() {
      screen.reset();
      raw = '';
    },
    ended: () => until('the end', () => left),
    kill(signal?: string) {
      if (left === null) pty.kill(signal);
    },
  };
}

/** Synchronized output (mode 2026): what stands between the two is half a screen. */
const [BEGINS, ENDS] = ['\x1b[?2026h', '\x1b[?2026l'];

const isDrawing = (raw: string): boolean => raw.lastIndexOf(BEGINS) > raw.lastIndexOf(ENDS);

export type OpenTerminal = ReturnType<typeof openTerminal>;
