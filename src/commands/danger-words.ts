import interview from '#compiled/questions.js';
import { actNowTexts } from '../faces/act-now-texts';
import { wrapText } from '../faces/screen/line';
import { tonightTexts } from '../faces/tonight-texts';
import type { State } from '../interview/state';

/** What to do now, once more, one instruction a line: the screen that said it is gone. */
export function dangerWords(state: State, columns = 80): string {
  const width = Math.min(columns, 80);
  const tonight = state.view === 'tonight' ? tonightTexts(interview, state) : [];
  return [...actNowTexts(interview, state), ...tonight]
    .flatMap(({ title, lines }) => [
      ...(title === null ? [] : wrapText(title, width)),
      ...lines.flatMap((line) =>
        wrapText(line, width - 2).map((part, i) => (i === 0 ? '- ' : '  ') + part),
      ),
      '',
    ])
    .join('\n');
}
