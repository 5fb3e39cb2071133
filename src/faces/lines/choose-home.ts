import { visible } from '../../quantity/visible';
import { HOMES_TITLE, type HomeChoice, homesChoice } from '../home-choice';
import type { HomesShown } from '../screen/choose-home';
import { LineReader } from './line-reader';

/** The homes of this folder line by line, to go on with one or to begin another. */
export async function chooseHomeByLine(shown: HomesShown): Promise<HomeChoice> {
  const { homes, stdin, stdout } = shown;
  const say = (lines: readonly string[]) => stdout.write(`${visible(lines.join('\n'))}\n`);
  const { labels, choices } = homesChoice(homes);
  say([`${HOMES_TITLE}:`, ...labels.map((label, i) => `${i + 1}. ${label}.`)]);
  say(['Type a number, or stop.']);
  const reader = new LineReader(stdin);
  try {
    for (;;) {
      const line = (await reader.next())?.trim().toLowerCase();
      if (line === undefined || line === 'stop') return { way: 'leave', interrupted: false };
      const at = labels.findIndex((_, i) => line === String(i + 1) || line === homes[i]?.name);
      const choice = choices[at];
      if (choice !== undefined) return choice;
      say([`Error: Type a number from 1 to ${labels.length}, or stop.`]);
    }
  } finally {
    reader.close();
  }
}
