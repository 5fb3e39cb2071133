import type { Question } from '../interview/question';
import type { WalkPlace } from '../interview/walk';
import { sayUnit } from '../interview/words';

/** A heading and what is asked under it. */
export interface FormPart {
  readonly title: string;
  readonly questions: readonly Question[];
}

/** A form to fill in with a pen: a question, how to find out, and room to write. Markdown. */
export function walkForm(
  title: string,
  intro: readonly string[],
  parts: readonly FormPart[],
): string {
  const body = parts.flatMap(({ title: head, questions }) => [
    `## ${head}`,
    ...questions.map(asked),
  ]);
  return `${[`# ${title}`, ...intro, ...body].join('\n\n')}\n`;
}

/** How many lines twelve months take on paper. */
const ROOM = '______________________';

function asked(question: Question): string {
  const { ask, hint, find, choices, count } = question;
  const how = find.trim().replace(/\s*\n\s*/g, ' ');
  const lines =
    choices === undefined
      ? [`Answer: ${ROOM}${unitOf(question)}${count === undefined ? '' : ` (${count} numbers)`}`]
      : choices.map(({ label }) => `- [ ] ${label}`);
  return [`**${ask}**`, `${hint}.`, `How to find out: ${how}`, lines.join('\n')].join('\n\n');
}

function unitOf({ unit }: Question): string {
  if (unit === undefined || ['count', 'year', 'people'].includes(unit)) return '';
  return ` ${sayUnit(unit)}`;
}

/** Places as headings on paper. */
export const formTitles: Readonly<Record<WalkPlace, string>> = {
  panel: 'At the electric panel',
  furnace: 'At the heating and cooling',
  well: 'At the pumps and the water',
  kitchen: 'In the rooms',
  outdoors: 'Outdoors and in the garage',
  papers: 'In your papers',
};
