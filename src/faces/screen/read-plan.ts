import { planFrame } from './plan-frame';
import { planKey } from './plan-keys';
import { planLines } from './plan-lines';
import { runView } from './run-view';

export interface PlanReading {
  readonly markdown: string;
  readonly stdin: NodeJS.ReadStream;
  readonly stdout: NodeJS.WriteStream;
  readonly color: boolean;
}

/** How the reader left: to stop, or to begin with the next home. */
export type Left = 'done' | 'next';

/** Show the summary in a window that scrolls and never overflows. Resolves when the reader leaves it. */
export function readPlan({ markdown, stdin, stdout }: PlanReading): Promise<Left> {
  const linesAt = remember(markdown);
  let view = { scroll: 0, asking: false };
  let page = 1;
  return runView<Left>({
    stdin,
    stdout,
    step: () => (view.asking ? 'next home' : 'plan'),
    frame: (size) => {
      const made = planFrame(linesAt(size.columns), size, view);
      view = { ...view, scroll: Math.min(view.scroll, made.maxScroll) };
      page = made.page;
      return made;
    },
    take: (key) => {
      const means = planKey(key, view.asking, page);
      if (means === 'leave') return 'done';
      if (means === 'next') return 'next';
      const by = typeof means === 'object' ? means.scroll : 0;
      view = { scroll: Math.max(0, view.scroll + by), asking: means === 'ask-next' };
      return null;
    },
  });
}

/** Lines are made anew only when the width has changed. */
function remember(markdown: string): (columns: number) => readonly string[] {
  let made: { columns: number; lines: readonly string[] } | null = null;
  return (columns) => {
    if (made?.columns !== columns) made = { columns, lines: planLines(markdown, columns) };
    return made.lines;
  };
}
