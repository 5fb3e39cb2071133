import type { Question } from '../interview/question';
import type { WalkPlace } from '../interview/walk';

/** A heading and what is asked under it. */
export interface FormPart {
  readonly title: string;
  readonly questions: readonly Question[];
}

export interface WalkForm {
  readonly title: string;
  readonly intro: readonly string[];
  readonly parts: readonly FormPart[];
  /** A unit in words, as the interview says it. */
  readonly sayUnit: (unit: string) => string;
}

/** A form to fill in with a pen: a question, how to find out, and room to write. Markdown. */
export function walkForm({ title, intro, parts, sayUnit }: WalkForm): string {
  const body = parts.flatMap(({ title: head, questions }) => [
    `## ${head}`,
    ...questions.map((question) => asked(question, sayUnit)),
  ]);
  return `${[`# ${title}`, ...intro, ...body].join('\n\n')}\n`;
}

const ROOM = '______________________';

function asked(question: Question, sayUnit: WalkForm['sayUnit']): string {
  const { ask, hint, find, choices, count, unit } = question;
  const how = find.trim().replace(/\s*\n\s*/g, ' ');
  const said = unit === undefined || BARE.includes(unit) ? '' : ` ${sayUnit(unit)}`;
  const lines =
    choices === undefined
      ? [`Answer: ${ROOM}${said}${count === undefined ? '' : ` (${count} numbers)`}`]
      : choices.map(({ label }) => `- [ ] ${label}`);
  return [`**${ask}**`, `${hint}.`, `How to find out: ${how}`, lines.join('\n')].join('\n\n');
}

/** A count needs no unit beside the room for it. */
const BARE = ['count', 'year', 'people'];

/** Places as headings on paper. */
export const formTitles: Readonly<Record<WalkPlace, string>> = {
  panel: 'At the electric panel',
  furnace: 'At the heating and cooling',
  well: 'At the pumps and the water',
  kitchen: 'In the rooms',
  outdoors: 'Outdoors and in the garage',
  papers: 'In your papers',
};
