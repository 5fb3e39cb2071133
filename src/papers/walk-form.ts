import type { MeasuredRow } from '../interview/measured-rows';
import type { Question } from '../interview/questions/question';
import type { Words } from '../words/words';

/** A heading and what is asked under it. */
export interface FormPart {
  readonly title: string;
  readonly questions: readonly Question[];
}

export interface WalkForm {
  readonly title: string;
  readonly intro: readonly string[];
  readonly parts: readonly FormPart[];
  /** What a meter could read, each with room for its readings. */
  readonly measured: readonly MeasuredRow[];
  /** A unit in words, as the interview says it. */
  readonly sayUnit: (unit: string) => string;
}

/** A form to fill in with a pen: a question, how to find out, and room to write. Markdown. */
export function walkForm(
  { title, intro, parts, measured, sayUnit }: WalkForm,
  words: Words,
): string {
  const body = parts.flatMap(({ title: head, questions }) => [
    `## ${head}`,
    ...questions.map((question) => asked(question, sayUnit, words)),
  ]);
  return `${[`# ${title}`, ...intro, ...body, ...readings(measured, words)].join('\n\n')}\n`;
}

/** A row a thing, with a blank for each number that a meter may show of it. */
function readings(rows: readonly MeasuredRow[], words: Words): string[] {
  if (rows.length === 0) return [];
  const { title, intro, head } = words.form.measured;
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  const table = [
    line(head),
    line(head.map(() => '---')),
    ...rows.map(({ label, start, day }) =>
      line([label, BLANK, start ? BLANK : '', day ? BLANK : '']),
    ),
  ];
  return [`## ${title}`, intro, table.join('\n')];
}

const BLANK = '________';
const ROOM = '______________________';

function asked(question: Question, sayUnit: WalkForm['sayUnit'], words: Words): string {
  const { ask, hint, find, choices, count, unit } = question;
  const how = find.trim().replace(/\s*\n\s*/g, ' ');
  const said = unit === undefined || BARE.includes(unit) ? '' : ` ${sayUnit(unit)}`;
  const lines =
    choices === undefined
      ? [`${words.form.answer(ROOM)}${said}${count === undefined ? '' : words.form.numbers(count)}`]
      : choices.map(({ label }) => `- [ ] ${label}`);
  return [`**${ask}**`, `${hint}.`, words.form.how(how), lines.join('\n')].join('\n\n');
}

/** A count needs no unit beside the room for it. */
const BARE = ['count', 'year', 'people'];
