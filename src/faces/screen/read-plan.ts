import type { Key } from '../../interview/key';
import { flow } from './foot';
import { type Frame, frameHeight } from './frame';
import { openKeyboard } from './keys/open-keyboard';
import { widthOf } from './line';
import { openCanvas } from './open-canvas';
import { planLines } from './plan-lines';
import { scrollLines } from './scroll-lines';
import { takeTerminal } from './terminal-modes';
import { sizeOf, watchSize } from './watch-size';

export interface PlanReading {
  readonly markdown: string;
  readonly stdin: NodeJS.ReadStream;
  readonly stdout: NodeJS.WriteStream;
  readonly color: boolean;
}

/** How the reader left: to stop, or to begin with the next home. */
export type Left = 'done' | 'next';

/** Show the summary in a window that scrolls and never overflows. Resolves when the reader leaves it. */
export async function readPlan({ markdown, stdin, stdout }: PlanReading): Promise<Left> {
  const leave = takeTerminal({ stdin, stdout });
  const canvas = openCanvas(stdout);
  const linesAt = remember(markdown);
  let scroll = 0;
  let page = 1;
  const draw = (anew: boolean) => {
    const made = planFrame(linesAt(sizeOf(stdout).columns), sizeOf(stdout), scroll);
    scroll = Math.min(scroll, made.maxScroll);
    page = made.page;
    if (anew) canvas.redraw(made);
    else canvas.draw(made);
  };
  const left = await new Promise<Left>((done) => {
    const keyboard = openKeyboard({
      stdin,
      onKeys: (keys) => {
        for (const key of keys) {
          const way = leaves(key);
          if (way !== null) {
            keyboard.close();
            stop();
            done(way);
            return;
          }
          scroll = Math.max(0, scrolled(key, scroll, page));
        }
        draw(false);
      },
    });
    const stop = watchSize(stdout, () => draw(true));
    draw(false);
  });
  canvas.close();
  leave();
  return left;
}

/** Lines are made anew only when the width has changed. */
function remember(markdown: string): (columns: number) => readonly string[] {
  let made: { columns: number; lines: readonly string[] } | null = null;
  return (columns) => {
    if (made?.columns !== columns) made = { columns, lines: planLines(markdown, columns) };
    return made.lines;
  };
}

function leaves(key: Key): Left | null {
  const letter = key.name === 'text' ? key.text.toLowerCase() : '';
  if (letter === 'n') return 'next';
  return letter === 'q' || ['enter', 'escape', 'ctrl-c', 'ctrl-s'].includes(key.name)
    ? 'done'
    : null;
}

function scrolled(key: Key, scroll: number, page: number): number {
  switch (key.name) {
    case 'up':
      return scroll - 1;
    case 'down':
      return scroll + 1;
    case 'page-up':
      return scroll - page;
    case 'page-down':
      return scroll + page;
    case 'home':
      return 0;
    case 'end':
      return Number.MAX_SAFE_INTEGER;
    case 'text':
      return key.text === ' ' ? scroll + page : scroll;
    default:
      return scroll;
  }
}

/** The plan in a window: its lines, where we are, and the keys. */
export function planFrame(
  text: readonly string[],
  size: { columns: number; rows: number },
  scroll: number,
): Frame {
  const foot = flow(KEYS, size.columns, '   ');
  const height = frameHeight(size.rows) - foot.length - 1;
  const lines = text.map((line) => [{ text: line }]);
  const { lines: shown, place, maxScroll } = scrollLines({ lines, height, scroll });
  return {
    lines: [
      ...shown,
      [{ text: clip(place ?? '', size.columns), dim: true }],
      ...foot.map((text) => [{ text, dim: true }]),
    ],
    cursor: null,
    maxScroll,
    page: shown.length,
  };
}

function clip(text: string, columns: number): string {
  return widthOf(text) <= columns ? text : text.slice(0, columns);
}

const KEYS = [
  'Up Down Space read on',
  'Enter or Esc leave',
  'N next home',
  '(the plan stays in its files)',
];
