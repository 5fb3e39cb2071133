import {
  COMMANDS,
  type CommandName,
  commandRow,
  EVERYWHERE,
  type OptionName,
  optionTable,
} from '../command-table';
import { version } from '../version';

/** Column at which what something does begins. */
const COLUMN = 27;

/** All commands and how to ask for more. */
export function allHelp(): string {
  return `Lampkeeper asks about your home in plain words.
It ends with a plan for power cuts.

${lines([
  ['lampkeeper', 'start the interview; where homes are begun in this folder, choose one'],
  ['lampkeeper kim', 'go on with the home in kim.home.yaml'],
])}

Commands
${lines(COMMANDS.map((name) => [`${name} ${commandRow(name).operands}`.trim(), commandRow(name).says]))}

Options of every command
${lines(EVERYWHERE.map(optionLine))}

Help for one command, with its options and examples: lampkeeper help plan
It uses no network and sends nothing anywhere.
Answers stay in the files it names.
${EXITS}
`;
}

export const EXITS = 'Exit: 0 done, 1 failed, 2 called the wrong way, 130 interrupted.';

/** One command: how it is called, what it does, its options, examples. */
export function helpFor(name: CommandName): string {
  const { operands, says, more, options, examples } = commandRow(name);
  const own = options.length === 0 ? '' : `\nOptions\n${lines(options.map(optionLine))}\n`;
  const calls = examples.flatMap(([call, does]) => [
    `  ${`lampkeeper ${call}`.trim()}`,
    `      ${does}`,
  ]);
  return `lampkeeper ${name} ${operands}`
    .trim()
    .concat(`\n  ${says}\n\n${wrapped(more)}\n${own}\nExamples\n${calls.join('\n')}\n`);
}

export function versionLine(): string {
  return `lampkeeper ${version}\n`;
}

/** An option as it is typed, and what it does. */
export function optionLine(name: OptionName): readonly [string, string] {
  const { value, letter, says } = optionTable[name];
  const typed = value === null ? `--${name}` : `--${name} ${value.name}`;
  return [letter === undefined ? typed : `-${letter}, ${typed}`, says];
}

function lines(rows: readonly (readonly [string, string])[]): string {
  return rows
    .map(([left, right]) => {
      const start = `  ${left}`;
      const pad = ' '.repeat(COLUMN);
      if (start.length + 2 > COLUMN) return `${start}\n${wrapped(right, COLUMN)}`;
      return `${start.padEnd(COLUMN)}${wrapped(right, COLUMN).slice(pad.length)}`;
    })
    .join('\n');
}

/** Text in lines of at most 80 columns, each begun at a column. */
function wrapped(text: string, column = 0): string {
  const out: string[] = [];
  let line = ' '.repeat(column);
  for (const word of text.split(' ')) {
    if (line.length + word.length + 1 > 80 && line.trim() !== '') {
      out.push(line.trimEnd());
      line = ' '.repeat(column);
    }
    line += `${word} `;
  }
  return [...out, line.trimEnd()].join('\n');
}
