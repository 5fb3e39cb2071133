import type { AskAgain } from '../../interview/what-if/what-if-state';
import { visible } from '../../quantity/visible';
import { layOut } from '../screen/plan/plan-lines';
import { FRONT_PAGE } from '../screen/plan/sections-list';
import type { afterPlan } from './after-plan';
import { LineReader } from './line-reader';
import { printLines } from './print-lines';

/** A section of the plan as lines to be read aloud. */
interface Part {
  readonly title: string;
  readonly lines: readonly string[];
}

export interface PlanByLine {
  readonly markdown: string;
  readonly stdin: NodeJS.ReadStream;
  readonly stdout: NodeJS.WriteStream;
  /** Words that lead beside the plan, such as what if. */
  readonly beside?: ReturnType<typeof afterPlan>;
}

const HOW = 'Type next, the number of a section, sections for their list, or stop.';
const HOW_BESIDE =
  'Type next, the number of a section, sections for their list, what if to try something, change to change an answer, or stop.';

/**
 * The plan a section at a time, its front page first. It stays in its files, so nothing is lost by stopping. Questions to
 * ask again, or null to stop.
 */
export async function readPlanByLine(reading: PlanByLine): Promise<AskAgain | null> {
  const { markdown, stdin, stdout, beside } = reading;
  const how = beside === undefined ? HOW : HOW_BESIDE;
  const parts = partsOf(markdown, stdout.columns ?? 80);
  const print = (lines: readonly string[]) => printLines(stdout, lines);
  // Laid out already, with its indents.
  const tell = (lines: readonly string[]) => stdout.write(`${visible(lines.join('\n'))}\n`);
  const reader = new LineReader(stdin);
  process.once('SIGINT', reader.stop);
  let at = 0;
  // Lines typed while the plan was made are not meant for it.
  await reader.dropEarly();
  tell(['', ...parts[0]!.lines]);
  print([how]);
  try {
    for (;;) {
      const typed = await reader.next();
      const line = typed?.trim().toLowerCase();
      if (typed === null || line === undefined || line === 'stop') return null;
      const heard = await beside?.hear(typed);
      if (heard !== undefined && heard !== null) {
        if ('ask' in heard) return heard;
        print(heard.print);
        continue;
      }
      if (line === 'sections') {
        print(parts.map(({ title }, i) => `${i + 1}. ${title}.`));
        continue;
      }
      const wanted = line === '' || line === 'next' ? at + 1 : Number(line) - 1;
      const part = parts[wanted];
      if (part !== undefined) {
        at = wanted;
        tell(['', ...part.lines]);
        print([at === parts.length - 1 ? `That was the last section. ${how}` : how]);
      } else if (wanted === parts.length) print([`That was the last section. ${how}`]);
      else print([`Error: Type a number from 1 to ${parts.length}, next, sections, or stop.`]);
    }
  } finally {
    process.off('SIGINT', reader.stop);
    reader.close();
  }
}

/** The front page, and each section with its title. No colors, and tables told row by row. */
function partsOf(markdown: string, columns: number): Part[] {
  const { lines, sections } = layOut(markdown, columns, 'told');
  const bare = lines.map((line) => line.replace(/\x1b\[[0-9;]*m/g, ''));
  const starts = [0, ...sections.map(({ line }) => line)];
  const titles = [FRONT_PAGE, ...sections.map(({ title }) => title)];
  return titles.map((title, i) => ({ title, lines: bare.slice(starts[i], starts[i + 1]) }));
}
