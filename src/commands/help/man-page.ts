import { COMMANDS, commandRow, EVERYWHERE, type OptionName, optionTable } from '../command-table';
import { version } from '../version';

/** The manual page in the macros of man(7), from the table of commands. */
export function manPage(): string {
  return `.TH LAMPKEEPER 1 "" "lampkeeper ${version}" "User commands"
.SH NAME
lampkeeper \\- plan backup power for a home
.SH SYNOPSIS
.B lampkeeper
${COMMANDS.map((name) => `.br\n.B lampkeeper ${name}\n${roff(commandRow(name).operands)}`.trimEnd()).join('\n')}
.SH DESCRIPTION
Lampkeeper asks about your home in plain words and ends with a plan for power cuts.
It uses no network and sends nothing anywhere.
Answers stay in the files it names.
.SH COMMANDS
${COMMANDS.map(commandPart).join('\n')}
.SH OPTIONS OF EVERY COMMAND
${EVERYWHERE.map(optionPart).join('\n')}
.SH FILES
.TP
.I NAME.home.yaml
The answers of a home. It can be read and changed with any editor; its form is printed by
.BR "lampkeeper schema home" .
.TP
.I NAME.plan.md, NAME.plan.yaml, NAME.plan.html
The plan in plain words, as data, and to print.
.SH ENVIRONMENT
.TP
.B NO_COLOR
Draw without color.
.TP
.B TERM=dumb, CI, ACCESSIBLE
Ask line by line.
.SH EXIT STATUS
0 done, 1 failed, 2 called the wrong way, 130 interrupted.
`;
}

function commandPart(name: (typeof COMMANDS)[number]): string {
  const { operands, says, more, options, examples } = commandRow(name);
  const calls = examples.map(
    ([call, does]) => `.PP\n.B ${roff(`lampkeeper ${call}`.trim())}\n.br\n${sentence(does)}`,
  );
  return `.SS ${roff(`${name} ${operands}`.trim())}
${sentence(says)}
${roff(more)}
${options.map(optionPart).join('\n')}
${calls.join('\n')}`.replace(/\n\n+/g, '\n');
}

function optionPart(name: OptionName): string {
  const { value, letter, says } = optionTable[name];
  const typed = `--${name}${value === null ? '' : ` ${value.name}`}`;
  return `.TP\n.B ${roff(letter === undefined ? typed : `-${letter}, ${typed}`)}\n${sentence(says)}`;
}

const sentence = (text: string) => roff(`${text[0]!.toUpperCase()}${text.slice(1)}.`);

/** Dashes that can be copied, and no line that a formatter takes for a request. */
const roff = (text: string) =>
  text
    .replaceAll('\\', '\\e')
    .replaceAll('-', '\\-')
    .replace(/^([.'])/, '\\&$1');
