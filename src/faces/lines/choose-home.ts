import { visible } from '../../quantity/visible';
import { HOMES_HELP, type HomeChoice, homesList, streetsList } from '../home-choice';
import type { HomesShown } from '../screen/choose-home';
import { LineReader } from './line-reader';

/** The homes of this folder line by line, to go on with one or to begin another. */
export async function chooseHomeByLine(shown: HomesShown): Promise<HomeChoice> {
  const { homes, stdin, stdout } = shown;
  const say = (lines: readonly string[]) => stdout.write(`${visible(lines.join('\n'))}\n`);
  let list = homesList(homes);
  let isFirst = true;
  const sayList = () => {
    const back = isFirst ? '' : ', back';
    say([`${list.title.replace(/\?$/, '')}:`, ...list.labels.map((one, i) => `${i + 1}. ${one}.`)]);
    say([`Type a number, help${back}, or stop.`]);
  };
  sayList();
  const reader = new LineReader(stdin);
  try {
    for (;;) {
      const line = (await reader.next())?.trim().toLowerCase();
      if (line === undefined || line === 'stop') return { way: 'leave', interrupted: false };
      if (line === 'help' || line === '?') {
        say(HOMES_HELP);
        continue;
      }
      const named = (i: number) => i < list.homes && line === homes[i]?.name && isFirst;
      const at = list.labels.findIndex((_, i) => line === String(i + 1) || named(i));
      const chosen = list.lines[at];
      if (chosen?.way === 'which-street' || (line === 'back' && !isFirst)) {
        isFirst = chosen === undefined;
        list = isFirst ? homesList(homes) : streetsList(homes);
        sayList();
      } else if (chosen !== undefined) return chosen;
      else say([`Error: Type a number from 1 to ${list.labels.length}, or stop.`]);
    }
  } finally {
    reader.close();
  }
}
